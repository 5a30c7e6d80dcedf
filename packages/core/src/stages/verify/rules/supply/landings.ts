import type { FeedFunction } from '../../../../domain/board/board.ts'
import { isEarth, LINES } from '../../../../domain/board/board.ts'
import { ownFunction } from '../../../../domain/supply/circuits.ts'
import type { SupplyDevice } from '../../../../domain/supply/supply.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { Segment, SupplyEvidence } from '../../supply/evidence.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, fact } from '../../supply/rule.ts'

const nodeOf = ({ board }: SupplyDevice, terminal: string | undefined): string | undefined =>
  board.terminals.find(each => each.id === terminal)?.node

/** Where a conductor belongs on a device: what leaves it towards the tub, or what arrives from the panel. */
const belongs = (
  device: SupplyDevice,
  side: 'leaves' | 'arrives',
  does: FeedFunction,
): string | undefined =>
  side === 'leaves' ? nodeOf(device, device.lands[does]) : device.fedAt[does]

/** One end of one conductor on a device: where it sits, and where it belongs. */
interface Landing {
  readonly device: string
  readonly label: string
  readonly conductor: string
  readonly terminal: string
  readonly expected: string
  /** Undefined where nobody wrote down where it sits, or it belongs nowhere in particular. */
  readonly isRight: boolean | undefined
}

function landingsAt(
  { devices, survey }: SupplyEvidence,
  { cable }: Segment,
  side: 'leaves' | 'arrives',
): readonly Landing[] {
  const id = side === 'leaves' ? cable.from : cable.to
  const device = devices.get(id)
  if (!device) return []
  const label = survey.supply.devices.find(each => each.id === id)?.label ?? device.label
  const placed = cable.conductors.map(each => {
    const does = ownFunction(each.function)
    const terminal = side === 'leaves' ? each.from : each.to
    return {
      conductor: each.id,
      isLine: LINES.some(line => line === does),
      terminal,
      expected: belongs(device, side, does),
      is: nodeOf(device, terminal),
    }
  })
  const lines = placed.filter(each => each.isLine)
  return placed.map(({ conductor, terminal, expected, is, isLine }) => {
    const shown = device.board.terminals.find(each => each.node === expected)
    // Which line is on which pole is all one, as long as each has its own.
    const isExchanged =
      isLine &&
      lines.some(each => each.expected === is) &&
      lines.filter(each => each.is === is).length === 1
    return {
      device: id,
      label,
      conductor,
      terminal: terminal ?? '',
      expected: shown?.label ?? shown?.id ?? expected ?? '',
      isRight:
        expected === undefined || is === undefined ? undefined : is === expected || isExchanged,
    }
  })
}

function landed(evidence: SupplyEvidence, segment: Segment): readonly CodeFinding[] {
  const { cable } = segment
  const found = [
    ...landingsAt(evidence, segment, 'leaves'),
    ...landingsAt(evidence, segment, 'arrives'),
  ]
  const about = { rule: landings.id, subjects: [cable.id], severity: 'danger' } as const
  if (found.length > 0 && found.every(each => each.isRight))
    return [
      conclude({ ...about, params: { cable: cable.label } }, {}, () =>
        fact(true, { message: 'landed-right' }),
      ),
    ]
  return found
    .filter(each => each.isRight === false)
    .map(({ device, label, conductor, terminal, expected }) =>
      conclude(
        {
          ...about,
          topic: `${device}.${conductor}`,
          params: { cable: cable.label, conductor, device: label, terminal, expected },
        },
        {},
        () => fact(false, { message: 'landed-elsewhere' }),
      ),
    )
}

/** Two of a kind from one place to another, thinner than may be: a fault or a loose one loads the other. */
function parallel({ cable }: Segment, all: readonly Segment[]): readonly CodeFinding[] {
  // A second earth is one path more, such as the armour of a cable beside its core.
  const carried = cable.conductors.map(each => each.function).filter(each => !isEarth(each))
  const isTwice = carried.some((each, index) => carried.indexOf(each) < index)
  const twin = all.find(
    ({ cable: other }) =>
      other.id !== cable.id && other.from === cable.from && other.to === cable.to,
  )
  return isTwice || twin
    ? [
        conclude(
          {
            rule: landings.id,
            subjects: [cable.id],
            topic: 'parallel',
            severity: 'danger',
            params: { cable: cable.label },
          },
          {},
          () => fact(false, { message: 'parallel' }),
        ),
      ]
    : []
}

/** Every conductor of the run sits where its device has a place for it. */
export const landings: SupplyRule = {
  id: 'SUPPLY-19',
  title: 'Every conductor on its own terminal',
  about: 'segment',
  source: `${COMMON_PRACTICE}; NEC 310.10(G), nothing under 1/0 AWG in parallel (from memory)`,
  check: evidence =>
    evidence.circuits.flatMap(({ segments }) =>
      segments.flatMap(segment => [...landed(evidence, segment), ...parallel(segment, segments)]),
    ),
}
