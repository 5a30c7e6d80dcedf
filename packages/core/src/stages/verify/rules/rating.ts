import { atMost } from '../../../base/compare.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import type { PlantPart, PlantTerminal } from '../../../domain/wiring/plant.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing, worst } from '../rule.ts'

interface Rated {
  readonly name: string
  readonly label: string
  readonly kind: string
  readonly rated: number
  readonly amps: (at: Observation) => number
}

function ratedPart({ part, name, element }: PlantPart): readonly Rated[] {
  const amps = (at: Observation) => at.solved.amps(element)
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
          amps: at => at.solved.secondaryAmps(element),
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

const ratedTerminal = ({ name, terminal, elements }: PlantTerminal): readonly Rated[] =>
  elements.length === 0
    ? []
    : [
        {
          name,
          label: terminal.label ?? terminal.id,
          kind: 'terminal',
          rated: terminal.rated.si,
          amps: at => elements.reduce((sum, each) => sum + at.solved.amps(each), 0),
        },
      ]

const ratedThings = ({ plant }: Evidence): readonly Rated[] => [
  ...plant.parts.flatMap(ratedPart),
  ...plant.terminals.flatMap(ratedTerminal),
  ...plant.jumpers.map(({ name, label, rated, element }) => ({
    name,
    label,
    kind: 'jumper',
    rated,
    amps: (at: Observation) => at.solved.amps(element),
  })),
]

/**
 * Nothing carries more than its rating where no protection certainly clears it.
 *
 * Read from the solved states, never from a sum of plates: outputs that the box interlocks are in
 * no common state.
 */
export const rating: Rule = {
  id: 'VERIFY-1',
  title: 'Terminals, contacts, jumpers and windings within their rating',
  source: COMMON_PRACTICE,
  check: evidence =>
    worst(standing(evidence), ratedThings(evidence), (thing, at) => thing.amps(at))
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
