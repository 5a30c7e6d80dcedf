import type { Possible } from '../../../../base/possible.ts'
import { given } from '../../../../base/possible.ts'
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

/** How much all of them take, from the least to the greatest that is known; the ends decide. */
type Extent = 'from' | 'to'

function extentOf(loads: readonly PoweredLoad[]): Possible<Extent> {
  const open = loads.find(each => {
    const span = loadSpan(each)
    return span && span.from < span.to
  })
  return open
    ? { values: ['from', 'to'], kind: 'range', at: `loads.${open.id}.circuits` }
    : given('to')
}

/** By load, what its ohms are times those of its greatest draw. */
const sharesAt = (loads: readonly PoweredLoad[], extent: Extent): Map<string, number> =>
  new Map(
    loads.flatMap(each => {
      const span = loadSpan(each)
      if (!span || extent === 'to') return []
      return [[each.id, span.from > 0 ? span.to / span.from : LOAD_OFF] as const]
    }),
  )

function judge(
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  load: PoweredLoad,
): readonly CodeFinding[] {
  const span = loadSpan(load)
  const volts = load.straps?.positions[load.straps.found]?.volts.si ?? load.volts?.si
  const pair = volts === undefined ? undefined : placeOfLoad(volts, arrivingOf(circuit))
  if (span === undefined || volts === undefined || !pair) return []
  const alone = evidence.network()
  if (!alone) return []
  const about = {
    rule: pumpStart.id,
    subjects: [circuit.circuit.device],
    topic: load.id,
    severity: 'caution' as const,
    params: { load: load.label },
  }
  const own = evidence.survey.loads.filter(isOnSupply)
  const asked = { ...metalInputs(circuit), times: timesOf(load), extent: extentOf(own) }
  return [
    conclude(about, asked, point => {
      const metals = metalsAt(point)
      const extent: Extent = point.extent === 'from' ? 'from' : 'to'
      // The motor that starts takes its place; the others run.
      const loads = sharesAt(own, extent)
      const running = loads.get(load.id) ?? 1
      loads.set(load.id, LOAD_OFF)
      loads.set(startOf(load.id), running / Number(point.times))
      const { before, after } = spreadOf(alone, pair, metals, loads)
      const lost = before - after
      return within(lost / volts, 1 - LIMITS.leastMotor, {
        message: 'pump-start',
        params: { volts: lost, amps: span[extent] * Number(point.times) },
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
