import * as z from 'zod'
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

export const terminal = z.strictObject({
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
  /** Where the eye finds it, from the upper left corner of the board. */
  at: z.tuple([quantity('m'), quantity('m')]),
})
export type Terminal = z.output<typeof terminal>

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

export const jumper = z.strictObject({
  id,
  label,
  /** Each position joins pairs of nodes; an empty list is "left out". */
  positions: z.array(z.strictObject({ id, label: label.optional(), joins: z.array(pair) })).min(2),
  factory: id,
  rated: quantity('A'),
  at: z.tuple([quantity('m'), quantity('m')]).optional(),
})
export type Jumper = z.output<typeof jumper>

export const board = z.strictObject({
  size: z.strictObject({ width: quantity('m'), height: quantity('m') }),
  /** The node of its metal and of its earth bar. */
  earth: node,
  terminals: z.array(terminal).min(1),
  connectors: z.array(connector).default([]),
  parts: z.array(part).default([]),
  jumpers: z.array(jumper).default([]),
})
export type Board = z.output<typeof board>

export const FUNCTIONS = ['hot', 'high', 'low', 'common', 'earth', 'signal'] as const
export type LeadFunction = (typeof FUNCTIONS)[number]

export const FEED_FUNCTIONS = ['leg1', 'leg2', 'neutral', 'earth'] as const
export type FeedFunction = (typeof FEED_FUNCTIONS)[number]

export const surveyedAmps = known('A')
