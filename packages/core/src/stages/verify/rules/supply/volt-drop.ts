import type { SupplyAlone } from '../../../../domain/wiring/supply-alone.ts'
import { placeOfLoad } from '../../../../domain/wiring/supply-loads.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import { metalInputs, metalsAt } from '../../supply/metals.ts'
import { lengthUnit } from '../../supply/place.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, within } from '../../supply/rule.ts'
import { arrivingOf, spreadOf } from '../../supply/solved.ts'

const LANDED_LEAST = 0.5 // of nominal; common practice, no source
const TINY = 1e-9 // [V]

function judge(
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  alone: SupplyAlone,
): readonly CodeFinding[] {
  const { book } = evidence
  const pair = placeOfLoad(circuit.volts, arrivingOf(circuit))
  const summed = circuit.demand.everything.to
  if (!pair || summed <= 0) return []
  const metres = circuit.segments.reduce((sum, { cable }) => sum + cable.length.si, 0)
  const about = {
    rule: voltDrop.id,
    subjects: [circuit.circuit.device],
    severity: book?.drop?.isLaw === true ? ('warning' as const) : ('caution' as const),
    params: { metres, unit: lengthUnit(evidence) },
  }
  return [
    conclude(about, { ...metalInputs(circuit), draws: circuit.draws }, point => {
      const limit = book?.drop
      const draws = Number(point.draws)
      const { before, after } = spreadOf(alone, pair, metalsAt(point))
      // Far from nominal before the run it is no drop: something is landed elsewhere.
      if (!limit || !(before > LANDED_LEAST * circuit.volts)) return notCovered('drop')
      // An impedance takes less as its volts fall; a plate says what is taken at its own.
      const whole = ((before - after) * circuit.volts) / Math.max(after, TINY)
      const volts = Math.min(circuit.volts, (whole * draws) / summed)
      return within(volts / circuit.volts, limit.value, {
        message: limit.isLaw ? 'volt-drop' : 'volt-drop-advice',
        clause: limit.by,
        params: { volts, amps: draws },
      })
    }),
  ]
}

/** What the run takes, out and back, with everything on: solved with the loads' own power factors. */
export const voltDrop: SupplyRule = {
  id: 'SUPPLY-9',
  title: 'Volts lost on the way',
  about: 'circuit',
  source: 'NEC 210.19 note; BS 7671 table 4Ab; HD 60364-5-52 table G.52.1; AS/NZS 3000 3.6.2',
  check: evidence =>
    evidence.circuits.flatMap(circuit => {
      const alone = evidence.network()
      return alone ? judge(evidence, circuit, alone) : []
    }),
}
