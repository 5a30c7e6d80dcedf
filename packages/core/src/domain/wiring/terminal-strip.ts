import type { FeedFunction } from '../board/board.ts'
import { isEarth } from '../board/board.ts'
import type { ControlBox } from '../box/control-box.ts'
import type { Region } from '../described.ts'
import { entered } from './bare-source.ts'

/** The node of a conductor on the strip: both earths of a tub are one piece of metal. */
export const stripNode = (name: FeedFunction): string => (isEarth(name) ? 'earth' : name)

/** A control box with nothing in it but a terminal for each conductor that arrives. */
export function terminalStrip(names: readonly FeedFunction[], region: Region): ControlBox {
  const nothing = entered<'m'>(0, '0 mm')
  return {
    schema: 'control-box/1',
    id: 'strip',
    label: 'terminal strip',
    maker: 'nobody',
    regions: [region],
    frequencies: [],
    size: { width: nothing, height: nothing, depth: nothing },
    largestBreaker: entered<'A'>(1000, '1000 A'),
    board: {
      size: { width: nothing, height: nothing },
      earth: 'earth',
      terminals: names.map(each => ({
        id: each,
        node: stripNode(each),
        class: isEarth(each) ? 'earth' : 'mains',
        kind: 'screw',
        rated: entered<'A'>(1000, '1000 A'),
        conductors: 1,
        at: [nothing, nothing],
      })),
      connectors: [],
      parts: [],
      jumpers: [],
    },
    feeds: [],
    places: [],
    commands: [],
    exclusive: [],
    heat: '',
    profiles: [],
    profileFactory: '',
    currentLimit: {
      offered: [],
      factory: entered<'A'>(0, '0 A'),
      names: 'draw',
      entered: '',
    },
    sensors: [],
    flowProof: 'pressure-switch',
    supplied: [],
  }
}
