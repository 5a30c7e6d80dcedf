import type { Job } from '../../domain/job.ts'
import type { Cold } from '../../domain/wiring/cold.ts'
import type { EarthPath } from '../../domain/wiring/cold-earth.ts'
import type { ColdReading } from '../../domain/wiring/cold-meter.ts'
import { ohmsBetween } from '../../domain/wiring/cold-meter.ts'
import type { ColdPart } from '../../domain/wiring/cold-ohms.ts'
import type { NodeId } from '../../engines/circuit/network.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'

/** A part of the cold network as a person calls it. */
export function partText({ kind, of, name }: ColdPart): SheetText {
  switch (kind) {
    case 'element':
    case 'probe':
    case 'load-electronics':
      return text(`named.${kind}`, { of })
    default:
      return text(`named.${kind}`, { of, name })
  }
}

/** A reading that a meter shows as good as 0 has no least: the most is what is told [Ω]. */
const upwards = (ohms: number): number => Math.ceil(ohms * 100) / 100

function valueText(reading: ColdReading): SheetText {
  switch (reading.kind) {
    case 'open':
      return text('expect.open')
    case 'above':
      return text('expect.above', { low: reading.low, expected: reading.expected })
    case 'not-shown':
      return text('expect.not-shown', { parts: reading.asks.map(partText) })
    case 'ohms': {
      const { expected, low, high } = reading
      return low > 0
        ? text('expect.ohms', { ohms: expected, low, high })
        : text('expect.joined', { ohms: upwards(high) })
    }
  }
}

const loadLabels = ({ loads }: Job, ids: readonly string[]): readonly string[] =>
  [...new Set(ids)].map(id => loads.find(each => each.id === id)?.label ?? id)

/** What an ohmmeter reads between two nodes, as the sheet says it. */
export function coldText(cold: Cold, a: NodeId, b: NodeId): SheetText {
  const reading = ohmsBetween(cold, a, b)
  const value = valueText(reading)
  return reading.charges.length === 0 || reading.kind === 'open'
    ? value
    : text('expect.charges', { reading: value, loads: loadLabels(cold.job, reading.charges) })
}

/** The limit of a path of earth, beside what the model makes of it; the highest of several. */
export function earthText(paths: readonly EarthPath[]): SheetText | undefined {
  const [first] = paths
  if (!first) return undefined
  const expected = Math.max(...paths.map(each => each.expected ?? Number.POSITIVE_INFINITY))
  return text(first.kind === 'run' ? 'expect.run' : 'expect.earth', {
    ohms: first.limit,
    expected,
  })
}
