import { atMost } from '../../../base/compare.ts'
import { conductorAmps } from '../../../domain/codebook/conductor-amps.ts'
import type { Job } from '../../../domain/job.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import type { Plant, PlantPart, PlantTerminal, Solved } from '../../../domain/wiring/plant.ts'
import { ratedOf, throughAmps } from '../../../domain/wiring/plant.ts'
import { elementOfEnd } from '../../../domain/wiring/wire.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing, worst } from '../rule.ts'

interface Rated {
  readonly name: string
  readonly label: string
  readonly kind: string
  readonly rated: number
  readonly amps: (solved: Solved) => number
}

function ratedPart(plant: Plant, each: PlantPart): readonly Rated[] {
  const { part, name, element } = each
  const amps = (solved: Solved) => solved.amps(element)
  switch (part.kind) {
    case 'contact': {
      const { resistive, motor } = part.rated
      const rated = Math.min(resistive.si, motor?.si ?? resistive.si)
      return [{ name, label: part.id, kind: 'contact', rated, amps }]
    }
    case 'switch':
      return [{ name, label: part.id, kind: 'switch', rated: part.rated.si, amps }]
    case 'transformer':
      return [
        {
          name,
          label: part.id,
          kind: 'transformer',
          rated: part.rated.si / part.volts.secondary.si,
          amps: solved => solved.secondaryAmps(element),
        },
        {
          name,
          label: part.id,
          kind: 'transformer',
          rated: part.rated.si / part.volts.primary.si,
          amps,
        },
      ]
    case 'fuse':
    case 'pole': {
      const rated = ratedOf(plant.job, each)
      return rated === undefined ? [] : [{ name, label: part.id, kind: part.kind, rated, amps }]
    }
    case 'ground-fault':
    case 'electronics':
      return []
  }
}

const ratedTerminal = (landed: PlantTerminal): readonly Rated[] =>
  landed.ends.length === 0
    ? []
    : [
        {
          name: landed.name,
          label: landed.terminal.label ?? landed.terminal.id,
          kind: 'terminal',
          rated: landed.terminal.rated.si,
          amps: solved => throughAmps(landed, solved),
        },
      ]

/** A conductor with two ends is named once. */
function ratedConductors({ ends }: Job): readonly Rated[] {
  const sizes = new Map(ends.map(end => [elementOfEnd(end), end.size] as const))
  return [...sizes].flatMap(([element, size]) => {
    const rated = conductorAmps(size)?.carries
    if (rated === undefined) return []
    const name = element.slice(element.indexOf(':') + 1)
    return [
      {
        name,
        label: name,
        kind: 'conductor',
        rated,
        amps: (solved: Solved) => solved.amps(element),
      },
    ]
  })
}

const ratedThings = ({ plant, job }: Evidence): readonly Rated[] => [
  ...ratedConductors(job),
  ...plant.parts.flatMap(each => ratedPart(plant, each)),
  ...plant.terminals.flatMap(ratedTerminal),
  ...plant.jumpers.map(({ name, label, rated, element }) => ({
    name,
    label,
    kind: 'jumper',
    rated,
    amps: (solved: Solved) => solved.amps(element),
  })),
]

const CLEARS: readonly string[] = ['fuse', 'pole']

// What motors draw more at their plate amps goes through a part once at most; 2 % for what it moves.
const EXTRA_SLACK = 1.02

/** Motors count with their plate amps where they have fewer volts: they do not draw less for it. */
function mostAmps(thing: Rated, at: Observation): number {
  const amps = thing.amps(at.solved)
  return amps + EXTRA_SLACK * at.plateExtra <= thing.rated
    ? amps
    : Math.max(amps, thing.amps(at.atPlate))
}

/**
 * Nothing carries more than its rating where no protection certainly clears it.
 *
 * Read from the solved states, never from a sum of plates: outputs that the box interlocks are in
 * no common state.
 */
export const rating: Rule = {
  id: 'VERIFY-1',
  title: 'Every part within its rating',
  source: COMMON_PRACTICE,
  check: evidence =>
    worst(standing(evidence), ratedThings(evidence), mostAmps)
      .filter(({ thing, value }) => !atMost(value, thing.rated))
      .map(({ thing, value, at }) => ({
        rule: rating.id,
        // What clears for certain has cleared; what is left opens at a time that nobody knows.
        message: CLEARS.includes(thing.kind) ? 'protection-overloaded' : 'above-rating',
        verdict: 'breaks',
        severity: 'danger',
        subjects: [thing.name],
        params: { kind: thing.kind, label: thing.label, amps: value, rated: thing.rated },
        on: commandsOf(at.state),
      })),
}
