import { atLeast } from '../../../base/compare.ts'
import { magnitude, subtract, ZERO } from '../../../base/complex.ts'
import type { Finding } from '../../../base/verdict.ts'
import { isEarth } from '../../../domain/board/board.ts'
import type { Place } from '../../../domain/box/control-box.ts'
import { findTerminal, placeOf } from '../../../domain/job.ts'
import type { PoweredLoad } from '../../../domain/load/load.ts'
import { EMFS, WITHOUT_NEUTRAL } from '../../../domain/wiring/figures.ts'
import { terminalFor } from '../../../domain/wiring/fits.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { PlantCircuit } from '../../../domain/wiring/plant.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, plateShare, standing } from '../rule.ts'

/**
 * The place that a load is on: by node the one that is for it, since two terminals on one node serve
 * alike; else the one whose terminals it is on.
 */
function servedBy({ job, landing }: Evidence, load: PoweredLoad): Place | undefined {
  const nodeOf = (id: string | undefined) =>
    job.box.board.terminals.find(each => each.id === id)?.node
  const isOn = (place: Place): boolean =>
    load.leads.every(lead => {
      if (isEarth(lead.function)) return true
      const wanted = nodeOf(terminalFor(place, lead))
      const at = findTerminal(job, landing.ends[`${load.id}.${lead.id}`] ?? '')
      return wanted !== undefined && at?.node === wanted
    })
  const own = job.box.places.find(each => each.takes.includes(load.kind) && isOn(each))
  return own ?? placeOf(job, landing, load)
}

/** The command that the circuit's place gives its hot lead; undefined where it is always on. */
export function commandFor(evidence: Evidence, each: PlantCircuit): string | undefined {
  const place = servedBy(evidence, each.load)
  if (!place) return undefined
  const hot = each.circuit.across
    .map(id => each.load.leads.find(lead => lead.id === id))
    .find(lead => lead && lead.function !== 'common')
  if (!hot) return undefined
  const { commands } = place
  return commands[hot.function] ?? (hot.function === 'hot' ? commands.high : undefined)
}

const finding = (
  message: string,
  { load, name }: PlantCircuit,
  params: Finding['params'] = {},
  on?: readonly string[],
): Finding => ({
  rule: loadServed.id,
  message,
  verdict: 'breaks',
  severity: 'caution',
  subjects: [load.id, name],
  params: { load: load.label, ...params },
  ...(on ? { on } : {}),
})

/** On one leg a heater made for two gives a quarter of its power, at 208 V three quarters: said. */
const reduced = (circuit: PlantCircuit, best: number): Finding => ({
  ...finding('heater-reduced', circuit, { share: best, power: best * best }),
  verdict: 'holds',
  severity: 'notice',
})

/** The most volts that this supply has between any two of its conductors [V]. */
function mostVolts({ job }: Evidence): number {
  const { system } = job.tub.supply
  const all = [...Object.values(EMFS[system]), ...(WITHOUT_NEUTRAL.includes(system) ? [] : [ZERO])]
  return Math.max(0, ...all.flatMap(a => all.map(b => magnitude(subtract(a, b)))))
}

/** Whether nothing here could give a heater its plate volts: less heat is then what there is. */
const isMeant = (evidence: Evidence, { load, draw }: PlantCircuit): boolean =>
  load.kind === 'heater' && !atLeast(mostVolts(evidence), LIMITS.weak * draw.volts)

function judge(evidence: Evidence, circuit: PlantCircuit): readonly Finding[] {
  const states = standing(evidence)
  const shares = states.map(at => plateShare(circuit, at))
  const best = Math.max(0, ...shares)
  if (best < LIMITS.energised) return [finding('load-dead', circuit)]
  if (!atLeast(best, LIMITS.weak)) {
    const weak = finding('load-weak', circuit, { share: best })
    return isMeant(evidence, circuit) ? [reduced(circuit, best)] : [weak]
  }
  const place = servedBy(evidence, circuit.load)
  if (place && !place.takes.includes(circuit.load.kind))
    return [finding('load-elsewhere', circuit, { place: place.label })]
  const command = commandFor(evidence, circuit)
  const wrong = states.find(
    (at, index) =>
      command !== undefined &&
      at.state.commands.has(command) !== (shares[index] ?? 0) >= LIMITS.energised,
  )
  return wrong ? [finding('load-on-wrong-command', circuit, {}, commandsOf(wrong.state))] : []
}

/** Each load can be energised, with its volts, by its own command, and de-energised. */
export const loadServed: Rule = {
  id: 'VERIFY-14',
  title: 'Each load answers its command',
  source: COMMON_PRACTICE,
  // Where every state trips, that is what is said: that nothing runs only follows from it.
  check: evidence =>
    standing(evidence).length === 0
      ? []
      : evidence.plant.circuits.flatMap(each => judge(evidence, each)),
}
