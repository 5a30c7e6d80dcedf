import * as z from 'zod'
import type { Entered } from '../../base/entered.ts'
import { conductorSize } from '../conductor.ts'
import { id, known, label, quantity } from '../described.ts'

/**
 * What an installer can land on, and what lies behind it: terminals, connectors, parts, jumpers.
 *
 * Control boxes and supply devices (breaker, disconnect, cord plug) share this shape, so one
 * compiler serves both. A node is named by use: two things on one node are joined by copper.
 */
export const node = z
  .string()
  .max(40)
  .regex(/^[A-Za-z0-9][A-Za-z0-9+-]*$/u, 'letters, digits, + or -, 40 at most')

const pair = z.tuple([node, node])

export const TERMINAL_CLASSES = ['mains', 'earth', 'low-voltage', 'sensor'] as const
export const TERMINAL_KINDS = ['screw', 'stud', 'tab', 'pin'] as const

/** A place on the board: from its upper left corner, in lengths, or as a pin on its photo. */
const place = z.union([
  z.tuple([quantity('m'), quantity('m')]),
  z.strictObject({ pin: z.tuple([z.number().min(0), z.number().min(0)]) }),
])

const rawTerminal = z.strictObject({
  id,
  label: label.optional(),
  node,
  class: z.enum(TERMINAL_CLASSES),
  kind: z.enum(TERMINAL_KINDS),
  holds: z.strictObject({ from: conductorSize, to: conductorSize }).optional(),
  torque: quantity('N·m').optional(),
  rated: quantity('A'),
  /** How many conductors it takes; more than one only where its maker says so. */
  conductors: z.number().int().min(1).max(12).default(1),
  /** Where the eye finds it. */
  at: place,
})

/** A socket that takes a whole plug: its shape decides what fits, its pins which terminals. */
export const connector = z.strictObject({
  id,
  shape: label,
  pins: z.record(z.string().max(8), id),
})
export type Connector = z.output<typeof connector>

const contactRating = z.strictObject({ resistive: quantity('A'), motor: quantity('A').optional() })

export const part = z.discriminatedUnion('kind', [
  z.strictObject({ id, kind: z.literal('fuse'), across: pair, rated: quantity('A') }),
  z.strictObject({
    id,
    kind: z.literal('contact'),
    across: pair,
    rated: contactRating,
    /** A limit contact is closed in normal running and opens when the limit acts. */
    role: z.enum(['command', 'limit']).default('command'),
    type: z.enum(['relay', 'contactor', 'triac']).default('relay'),
    /** Where it stands with nothing commanded: the other side of a changeover relay rests closed. */
    rest: z.enum(['open', 'closed']).default('open'),
    /** What a triac lets through while off, at the volts of one leg. */
    leakage: quantity('A').optional(),
    /** Below this a triac neither turns on nor off for certain. */
    leastLoad: quantity('A').optional(),
  }),
  /** One pole of the breaker whose rating the survey gives; `rated` only where it is fixed. */
  z.strictObject({ id, kind: z.literal('pole'), across: pair, rated: quantity('A').optional() }),
  /** One pole of a switch without a trip. */
  z.strictObject({ id, kind: z.literal('switch'), across: pair, rated: quantity('A') }),
  /** Watches the sum of the currents through the named parts and opens them all. */
  z.strictObject({
    id,
    kind: z.literal('ground-fault'),
    sums: z.array(id).min(2),
    trip: z.strictObject({ from: quantity('A'), to: quantity('A') }),
    /** Between which nodes its own electronics sit; absent when it needs no supply. */
    poweredFrom: pair.optional(),
    seesNeutralEarth: z.boolean(),
  }),
  z.strictObject({
    id,
    kind: z.literal('transformer'),
    primary: pair,
    secondary: pair,
    volts: z.strictObject({ primary: quantity('V'), secondary: quantity('V') }),
    rated: quantity('VA'),
    /** An auto-transformer does not isolate: its secondary is mains. */
    isolating: z.boolean().default(true),
    /** Primary volts by the position of the jumper that picks the tap. */
    taps: z.strictObject({ jumper: id, volts: z.record(id, quantity('V')) }).optional(),
    /** Resistance of the primary to an ohmmeter. */
    primaryOhms: known('Ω').optional(),
  }),
  /** What the board itself draws. */
  z.strictObject({
    id,
    kind: z.literal('electronics'),
    across: pair,
    volts: quantity('V'),
    power: quantity('W'),
  }),
])
export type Part = z.output<typeof part>

const rawJumper = z.strictObject({
  id,
  label,
  /** Each position joins pairs of nodes; an empty list is "left out". */
  positions: z.array(z.strictObject({ id, label: label.optional(), joins: z.array(pair) })).min(2),
  factory: id,
  rated: quantity('A'),
  at: place.optional(),
})

const rawBoard = z.strictObject({
  size: z.strictObject({ width: quantity('m'), height: quantity('m') }),
  /** A photo of the whole board, square on: pins are counted in its pixels. */
  photo: z
    .strictObject({ file: label, pixels: z.tuple([z.number().min(1), z.number().min(1)]) })
    .optional(),
  /** The node of its metal and of its earth bar. */
  earth: node,
  terminals: z.array(rawTerminal).min(1),
  connectors: z.array(connector).default([]),
  parts: z.array(part).default([]),
  jumpers: z.array(rawJumper).default([]),
})

type RawBoard = z.output<typeof rawBoard>
type RawPlace = z.output<typeof place>
/** A place on the board, from its upper left corner. */
export type BoardPlace = readonly [x: Entered<'m'>, y: Entered<'m'>]
export type Terminal = Omit<RawBoard['terminals'][number], 'at'> & { readonly at: BoardPlace }
export type Jumper = Omit<RawBoard['jumpers'][number], 'at'> & {
  readonly at?: BoardPlace | undefined
}
export type Board = Omit<RawBoard, 'terminals' | 'jumpers'> & {
  readonly terminals: readonly Terminal[]
  readonly jumpers: readonly Jumper[]
}

/** A pin of the photo as lengths on the board; the text stays what was written. */
function placed(at: RawPlace, { size, photo }: RawBoard): BoardPlace {
  if (!('pin' in at)) return at
  const [x, y] = at.pin
  const [across, down] = photo?.pixels ?? [1, 1]
  return [
    { si: ((x / across) * size.width.si) as Entered<'m'>['si'], text: `${x} px` },
    { si: ((y / down) * size.height.si) as Entered<'m'>['si'], text: `${y} px` },
  ]
}

export const board = rawBoard.transform((raw, context): Board => {
  raw.terminals.forEach(({ at }, index) => {
    if ('pin' in at && !raw.photo)
      context.addIssue({
        code: 'custom',
        input: at,
        path: ['terminals', index, 'at'],
        message: 'two lengths; or board.photo, whose pixels the pin counts',
        params: { is: 'a pin without a photo' },
      })
  })
  return {
    ...raw,
    terminals: raw.terminals.map(each => ({ ...each, at: placed(each.at, raw) })),
    jumpers: raw.jumpers.map(({ at, ...each }) =>
      at === undefined ? each : { ...each, at: placed(at, raw) },
    ),
  }
})

export const FUNCTIONS = ['hot', 'high', 'low', 'common', 'earth', 'signal', 'data'] as const
export type LeadFunction = (typeof FUNCTIONS)[number]

/** Lines of a source. */
export const LINES = ['leg1', 'leg2', 'leg3'] as const
export type Line = (typeof LINES)[number]

/** What arrives by one circuit, and by a second one where a tub has two. */
export const FEED_FUNCTIONS = [
  'leg1',
  'leg2',
  'leg3',
  'neutral',
  'earth',
  'second-leg1',
  'second-leg2',
  'second-neutral',
  'second-earth',
] as const
export type FeedFunction = (typeof FEED_FUNCTIONS)[number]

export const isEarth = (name: LeadFunction | FeedFunction): boolean =>
  name === 'earth' || name === 'second-earth'

export const surveyedAmps = known('A')
