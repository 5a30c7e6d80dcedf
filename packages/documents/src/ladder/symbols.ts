import type { LadderPart, LadderStyle, LadderSymbol } from '@tubwright/core'

/** A sign about its middle: pins at -4 and 4, three to each side of the line at most [mm]. */
interface Sign {
  /** Lines. */
  readonly d: string
  /** Filled. */
  readonly filled?: string
  readonly circle?: number
  readonly letter?: string
}

type Signs = Readonly<Record<LadderSymbol, Sign>>

const ZIGZAG = 'M-4 0H-3L-2.5 -1.6L-1.5 1.6L-0.5 -1.6L0.5 1.6L1.5 -1.6L2.5 1.6L3 0H4'
const BOX = 'M-4 0H-3.2M3.2 0H4M-3.2 -2H3.2V2H-3.2Z'
const COIL =
  'M-4 0H-3.2A0.8 0.9 0 0 1 -1.6 0A0.8 0.9 0 0 1 0 0A0.8 0.9 0 0 1 1.6 0A0.8 0.9 0 0 1 3.2 0H4'
const TRIAC = 'M-4 0H-1.3M1.3 0H4M-1.3 -2.6V2.6M1.3 -2.6V2.6M1.3 1.3L3 2.9'
const TRIAC_FILLED = 'M-1.3 -2.5L1.3 -1.25L-1.3 0ZM1.3 0L-1.3 1.25L1.3 2.5Z'
const JUMPER = 'M-4 0H-3M3 0H4M-3 0H3'
const JUMPER_ENDS =
  'M-3.6 0A0.9 0.9 0 1 1 -1.8 0A0.9 0.9 0 1 1 -3.6 0ZM1.8 0A0.9 0.9 0 1 1 3.6 0A0.9 0.9 0 1 1 1.8 0Z'

const COMMON = {
  motor: { d: 'M-4 0H-2.9M2.9 0H4', circle: 2.9, letter: 'M' },
  electronics: { d: BOX, letter: 'U' },
  'ground-fault': { d: `${BOX}M-1.6 -1.1V1.1M-0.4 1.1L0.9 -1.1L2.2 1.1Z` },
  apparatus: { d: BOX },
  jumper: { d: JUMPER, filled: JUMPER_ENDS },
  triac: { d: TRIAC, filled: TRIAC_FILLED },
  primary: { d: `${COIL}M-3.2 1H3.2M-3.2 1.6H3.2` },
  secondary: { d: `${COIL}M-3.2 -1.5H3.2M-3.2 -2.1H3.2` },
} as const

const BARS = 'M-4 0H-1.1M1.1 0H4M-1.1 -2.4V2.4M1.1 -2.4V2.4'

/** Ladder signs of North America. @source [LADDER-SIGNS] (from memory) */
const AMERICAN: Signs = {
  ...COMMON,
  fuse: { d: 'M-4 0H-3M3 0H4M-3 0A1.5 1.7 0 0 1 0 0A1.5 1.7 0 0 0 3 0' },
  contact: { d: BARS },
  contactor: { d: `${BARS}M-1.5 -2.4H-0.7M0.7 -2.4H1.5M-1.5 2.4H-0.7M0.7 2.4H1.5` },
  limit: { d: BARS },
  pole: {
    d: 'M-4 0H-3M3 0H4M-2.4 -0.8A2.7 2.4 0 0 1 2.4 -0.8',
    filled:
      'M-3 0A0.6 0.6 0 1 1 -1.8 0A0.6 0.6 0 1 1 -3 0ZM1.8 0A0.6 0.6 0 1 1 3 0A0.6 0.6 0 1 1 1.8 0Z',
  },
  switch: {
    d: 'M-4 0H-3M3 0H4M-2.4 0L2 -2.2',
    filled:
      'M-3 0A0.6 0.6 0 1 1 -1.8 0A0.6 0.6 0 1 1 -3 0ZM1.8 0A0.6 0.6 0 1 1 3 0A0.6 0.6 0 1 1 1.8 0Z',
  },
  element: { d: ZIGZAG },
  lamp: {
    d: 'M-4 0H-2M2 0H4M-1.4 -1.4L-2.3 -2.3M1.4 -1.4L2.3 -2.3M-1.4 1.4L-2.3 2.3M1.4 1.4L2.3 2.3',
    circle: 2,
  },
  probe: { d: `${ZIGZAG}M-2.6 2.7H-1.6L2 -2.7` },
}

const ARM = 'M-4 0H-2M2 0H4M-2 0L1.7 -2.3'

/** Signs in the manner of IEC 60617. @source [IEC-60617] (from memory) */
const IEC: Signs = {
  ...COMMON,
  fuse: { d: 'M-4 0H4M-3.2 -1.4H3.2V1.4H-3.2Z' },
  contact: { d: ARM },
  contactor: { d: `${ARM}M2 -1.3A1.3 1.3 0 0 1 2 0` },
  limit: { d: ARM },
  pole: { d: `${ARM}M1.4 -0.6L2.6 0.6M2.6 -0.6L1.4 0.6` },
  switch: { d: `${ARM}M2 -0.9V0.9` },
  element: { d: `${BOX}M-1.6 -2V2M0 -2V2M1.6 -2V2` },
  lamp: { d: 'M-4 0H-2.5M2.5 0H4M-1.77 -1.77L1.77 1.77M-1.77 1.77L1.77 -1.77', circle: 2.5 },
  probe: { d: `${BOX}M-2.8 2.9H-1.8L2 -2.9` },
}

/** A contact that rests closed: a bar across it, or an arm that touches. */
const CLOSED: Readonly<Record<LadderStyle, Sign>> = {
  american: { d: `${BARS}M-2.2 2.4L2.2 -2.4` },
  iec: { d: 'M-4 0H-2M2 0H4M-2 0L2.4 -1.9M2 0V-2.4' },
}

const HEAVY: readonly LadderSymbol[] = ['jumper', 'contactor']

/** The sign of a part about the middle of its place, as SVG. */
export function ladderSymbol({ symbol, restsClosed }: LadderPart, style: LadderStyle): string {
  const own = restsClosed ? CLOSED[style] : (style === 'american' ? AMERICAN : IEC)[symbol]
  const width = HEAVY.includes(symbol) ? '0.7' : '0.4'
  return [
    own.circle === undefined
      ? ''
      : `<circle r="${own.circle}" fill="#fff" stroke="#000" stroke-width="0.4"/>`,
    `<path d="${own.d}" fill="none" stroke="#000" stroke-width="${width}"/>`,
    own.filled === undefined ? '' : `<path d="${own.filled}" fill="#000" stroke="none"/>`,
    own.letter === undefined
      ? ''
      : `<text y="1.1" font-size="3.1" text-anchor="middle" stroke="none" fill="#000">${own.letter}</text>`,
  ].join('')
}
