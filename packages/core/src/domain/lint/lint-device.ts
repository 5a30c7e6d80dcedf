import type { Part } from '../board/board.ts'
import type { SupplyDevice } from '../supply/supply.ts'
import { joins, nodeOfTerminal, reachesAny } from './board-graph.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'
import { lintDeadEnds, lintSpots } from './lint-board.ts'

type Pair = readonly [string, string]

/** The device's own tails, each where it belongs. */
const tailPairs = ({ tails, board }: SupplyDevice): readonly Pair[] =>
  tails.map(({ node, lands }) => [node, nodeOfTerminal(board, lands)])

const pairsWith = (device: SupplyDevice, keeps: (part: Part) => boolean): readonly Pair[] => [
  ...joins(device.board, {}, keeps),
  ...tailPairs(device),
]

const all = () => true

function lintLines(device: SupplyDevice): readonly LintFinding[] {
  const { board, fedAt, lands } = device
  const pairs = pairsWith(device, all)
  const fed = Object.entries(fedAt)
  const dead = Object.entries(lands).flatMap(([does, terminal]) => {
    const node = fedAt[does as keyof typeof fedAt]
    return terminal !== undefined &&
      node !== undefined &&
      !reachesAny(nodeOfTerminal(board, terminal), new Set([node]), pairs)
      ? [finding('line-never-arrives', ['lands', does], { function: does, terminal })]
      : []
  })
  const joined = fed.flatMap(([does, node], index) => {
    const other = fed
      .slice(0, index)
      .find(([, before]) => reachesAny(node, new Set([before]), pairs))
    return other
      ? [finding('lines-joined', ['fedAt', does], { function: does, other: other[0] })]
      : []
  })
  return [...dead, ...joined]
}

/** Lines and neutral that pass beside a ground-fault device: what flows there it never sees. */
function lintGroundFaults(device: SupplyDevice): readonly LintFinding[] {
  const { board, fedAt, lands } = device
  return board.parts.flatMap((part, index) => {
    if (part.kind !== 'ground-fault') return []
    const pairs = pairsWith(device, each => !part.sums.includes(each.id))
    return Object.entries(lands).flatMap(([does, terminal]) => {
      const node = fedAt[does as keyof typeof fedAt]
      return !does.endsWith('earth') &&
        node !== undefined &&
        reachesAny(nodeOfTerminal(board, terminal), new Set([node]), pairs)
        ? [
            finding('ground-fault-misses-line', ['board', 'parts', index, 'sums'], {
              part: part.id,
              function: does,
            }),
          ]
        : []
    })
  })
}

function lintPoles(device: SupplyDevice): readonly LintFinding[] {
  const { board, fedAt, lands } = device
  const fed = new Set(Object.values(fedAt))
  const landed = new Set(Object.values(lands).map(id => nodeOfTerminal(board, id)))
  return board.parts.flatMap((part, index) => {
    if (part.kind !== 'pole' && part.kind !== 'switch' && part.kind !== 'fuse') return []
    const pairs = pairsWith(device, each => each !== part)
    const [a, b] = part.across
    const leads = (from: string, to: string) =>
      reachesAny(from, fed, pairs) && reachesAny(to, landed, pairs)
    return a !== b && (leads(a, b) || leads(b, a))
      ? []
      : [finding('fuse-in-no-path', ['board', 'parts', index], { part: part.id, kind: part.kind })]
  })
}

/** What looks wrong in a supply device whose names are right, with an ohmmeter from end to end. */
export const lintDevice = (device: SupplyDevice): readonly LintFinding[] => [
  ...lintSpots(device.board),
  ...lintDeadEnds(device.board, [], Object.values(device.fedAt)),
  ...lintLines(device),
  ...lintPoles(device),
  ...lintGroundFaults(device),
]
