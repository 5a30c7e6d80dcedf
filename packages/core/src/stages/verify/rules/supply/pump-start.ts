import type { Possible } from '../../../../base/possible.ts'
import type { PoweredLoad } from '../../../../domain/load/load.ts'
import { isMotor } from '../../../../domain/load/load.ts'
import { LIMITS } from '../../../../domain/wiring/limits.ts'
import { LOAD_OFF } from '../../../../domain/wiring/supply-alone.ts'
import { isOnSupply, loadSpan, placeOfLoad } from '../../../../domain/wiring/supply-loads.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import { metalInputs, metalsAt } from '../../supply/metals.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, within } from '../../supply/rule.ts'
import { arrivingOf, START_TIMES, spreadOf, startOf, startTimesOf } from '../../supply/solved.ts'

function timesOf(load: PoweredLoad): Possible<number> {
  const plate = startTimesOf(load)
  const { from, to } = plate ?? START_TIMES
  // The more it takes the more is lost: the ends decide.
  return {
    values: from === to ? [from] : [from, to],
    kind: plate === undefined ? 'unknown' : from === to ? 'known' : 'range',
    at: `loads.${load.id}.circuits`,
  }
}

function judge(
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  load: PoweredLoad,
): readonly CodeFinding[] {
  const amps = loadSpan(load)?.to
  const volts = load.straps?.positions[load.straps.found]?.volts.si ?? load.volts?.si
  const pair = volts === undefined ? undefined : placeOfLoad(volts, arrivingOf(circuit))
  if (amps === undefined || volts === undefined || !pair) return []
  const alone = evidence.network()
  if (!alone) return []
  const about = {
    rule: pumpStart.id,
    subjects: [circuit.circuit.device],
    topic: load.id,
    severity: 'caution' as const,
    params: { load: load.label },
  }
  return [
    conclude(about, { ...metalInputs(circuit), times: timesOf(load) }, point => {
      const metals = metalsAt(point)
      // The motor that starts takes its place; the others run.
      const loads = new Map([
        [load.id, LOAD_OFF],
        [startOf(load.id), 1 / point.times],
      ])
      const { before, after } = spreadOf(alone, pair, metals, loads)
      const lost = before - after
      return within(lost / volts, 1 - LIMITS.leastMotor, {
        message: 'pump-start',
        params: { volts: lost, amps: amps * point.times },
      })
    }),
  ]
}

/** A pump that starts leaves itself the volts it needs to get away. */
export const pumpStart: SupplyRule = {
  id: 'SUPPLY-10',
  title: 'Volts left when a pump starts',
  about: 'circuit',
  source: `${COMMON_PRACTICE}; IEEE 399, 15 % at the motor (page: a guide that quotes it)`,
  check: evidence =>
    evidence.circuits.flatMap(circuit =>
      evidence.survey.loads.flatMap(load =>
        isOnSupply(load) && isMotor(load) ? judge(evidence, circuit, load) : [],
      ),
    ),
}
