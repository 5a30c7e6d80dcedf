import { atMost } from '../../../base/compare.ts'
import { conductorAmps } from '../../../domain/codebook/conductor-amps.ts'
import type { Job } from '../../../domain/job.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import type { PlantPart, PlantTerminal, Solved } from '../../../domain/wiring/plant.ts'
import { throughAmps } from '../../../domain/wiring/plant.ts'
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

function ratedPart({ part, name, element }: PlantPart): readonly Rated[] {
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
    case 'pole':
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
  ...plant.parts.flatMap(ratedPart),
  ...plant.terminals.flatMap(ratedTerminal),
  ...plant.jumpers.map(({ name, label, rated, element }) => ({
    name,
    label,
    kind: 'jumper',
    rated,
    amps: (solved: Solved) => solved.amps(element),
  })),
]

/** Motors count with their plate amps where they have fewer volts: they do not draw less for it. */
const mostAmps = (thing: Rated, { solved, atPlate }: Observation): number =>
  Math.max(thing.amps(solved), thing.amps(atPlate))

/**
 * Nothing carries more than its rating where no protection certainly clears it.
 *
 * Read from the solved states, never from a sum of plates: outputs that the box interlocks are in
 * no common state.
 */
export const rating: Rule = {
  id: 'VERIFY-1',
  title: 'Terminals, contacts, jumpers, windings and conductors within their rating',
  source: COMMON_PRACTICE,
  check: evidence =>
    worst(standing(evidence), ratedThings(evidence), mostAmps)
      .filter(({ thing, value }) => !atMost(value, thing.rated))
      .map(({ thing, value, at }) => ({
        rule: rating.id,
        message: 'above-rating',
        verdict: 'breaks',
        severity: 'danger',
        subjects: [thing.name],
        params: { kind: thing.kind, label: thing.label, amps: value, rated: thing.rated },
        on: commandsOf(at.state),
      })),
}
