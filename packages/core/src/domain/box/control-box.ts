import * as z from 'zod'
import { board, FEED_FUNCTIONS, FUNCTIONS, LINES } from '../board/board.ts'
import { id, label, quantity, REGIONS, SYSTEMS } from '../described.ts'
import { curveName, load } from '../load/load.ts'

/** A supply the box accepts, and the jumper positions it then needs. */
const feed = z.strictObject({
  id,
  label,
  system: z.enum(SYSTEMS),
  /** Terminals for what arrives; a box that needs no neutral names none. */
  lands: z.partialRecord(z.enum(FEED_FUNCTIONS), id),
  jumpers: z.record(id, id).default({}),
  /** Commands that make the heater wait, on this feed. */
  heatYieldsTo: z.array(id).default([]),
  /** Assumed amps by command: how most boxes count. Absent: the box does not shed by sum. */
  assumes: z.record(id, quantity('A')).optional(),
  /** Where the sum is made line by line: which line each command hangs on; one not named, on every. */
  assumesOn: z.record(id, z.enum(LINES)).optional(),
})

/** Where one load goes: its terminals by lead function, and which command energises which lead. */
const place = z.strictObject({
  id,
  label,
  takes: z.array(
    z.enum([
      'pump',
      'circulation-pump',
      'heater',
      'ozonator',
      'blower',
      'light',
      'audio',
      'sanitiser',
      'keypad',
      'probe',
    ]),
  ),
  lands: z.partialRecord(z.enum(FUNCTIONS), id),
  /** By lead function; a function without a command is always on. */
  commands: z.partialRecord(z.enum(FUNCTIONS), id).default({}),
  connector: id.optional(),
  /** What a low-voltage output gives. */
  gives: z.enum(['ac', 'dc']).optional(),
})

const command = z.strictObject({
  id,
  label,
  closes: z.array(id).default([]),
  /** Contacts at rest closed that it opens: one side of a changeover. */
  opens: z.array(id).default([]),
})

/** How a setting gets into the box. */
export const SET_BY = ['small-switches', 'keypad', 'jumper'] as const

const profile = z.strictObject({
  id,
  label,
  entered: z.string().min(1).max(200),
  by: z.enum(SET_BY).optional(),
  commands: z.array(id).min(1),
  /** Heat is called only while one of these commands is on. */
  heatsWith: z.array(id),
  filtersWith: z.array(id).default([]),
  /** Command → the command it goes on and off with. */
  follows: z.record(id, id).default({}),
})

const sensorInput = z.strictObject({
  id,
  label,
  /** Two terminals: signal and common. */
  terminals: z.tuple([id, id]),
  curve: curveName,
  reads: z.enum(['water', 'heater-inlet', 'heater-outlet']),
  duty: z.enum(['control', 'limit', 'flow-inlet', 'flow-outlet']),
  /** A limit input opens these contacts at this temperature. */
  opens: z.array(id).default([]),
  at: quantity('K').optional(),
})

export const controlBox = z.strictObject({
  schema: z.literal('control-box/1'),
  id,
  label,
  maker: label,
  note: z.string().max(600).optional(),
  regions: z.array(z.enum(REGIONS)).min(1),
  frequencies: z.array(quantity('Hz')).min(1),
  size: z.strictObject({
    width: quantity('m'),
    height: quantity('m'),
    depth: quantity('m'),
  }),
  largestBreaker: quantity('A'),
  board,
  feeds: z.array(feed).min(1),
  places: z.array(place).min(1),
  commands: z.array(command),
  /** Sets of commands that the box never runs together. */
  exclusive: z.array(z.array(id).min(2)).default([]),
  heat: id,
  profiles: z.array(profile).min(1),
  profileFactory: id,
  currentLimit: z.strictObject({
    offered: z.array(quantity('A')).min(1),
    factory: quantity('A'),
    /** Whether the setting names what may be drawn or the breaker upstream. */
    names: z.enum(['draw', 'breaker']),
    entered: z.string().min(1).max(200),
    by: z.enum(SET_BY).optional(),
  }),
  afterReset: z.string().max(200).optional(),
  /** What the box falls back to by itself at a reset or power cut; what is left out stays. */
  resetsTo: z
    .strictObject({ profile: id.optional(), currentLimit: quantity('A').optional() })
    .optional(),
  sensors: z.array(sensorInput).default([]),
  flowProof: z.enum(['pressure-switch', 'flow-switch', 'probe-pair']),
  /** What comes in the carton: heater, probes, keypad. */
  supplied: z.array(load).default([]),
  keypadHole: z.strictObject({ width: quantity('m'), height: quantity('m') }).optional(),
})
export type ControlBox = z.output<typeof controlBox>
export type Feed = ControlBox['feeds'][number]
export type Place = ControlBox['places'][number]
export type Profile = ControlBox['profiles'][number]
export type SensorInput = ControlBox['sensors'][number]
