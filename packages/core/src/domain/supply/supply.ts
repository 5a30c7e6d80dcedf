import * as z from 'zod'
import { board, FEED_FUNCTIONS, LINES, node } from '../board/board.ts'
import { conductorSize } from '../conductor.ts'
import { COLOURS, chosen, id, known, label, quantity, SYSTEMS } from '../described.ts'
import {
  ALONGSIDE,
  BREAKER_TYPES,
  CONDUITS,
  EARTHINGS,
  MATERIALS,
  RATED_TEMPERATURES,
  SURROUNDINGS,
  TRADE_SIZES,
  WIRING_METHODS,
} from './run-words.ts'

/** A breaker, disconnect or cord plug between the panel and the tub, described as a board. */
export const supplyDevice = z.strictObject({
  schema: z.literal('supply-device/1'),
  id,
  label,
  note: z.string().max(400).optional(),
  board,
  /** The nodes that the incoming supply is joined to, by what arrives there. */
  fedAt: z.partialRecord(z.enum(FEED_FUNCTIONS), node),
  /** Where the conductors towards the tub belong, by what they carry. */
  lands: z.partialRecord(z.enum(FEED_FUNCTIONS), id).default({}),
  /** Leads of the device itself that the installer lands, such as a breaker's white tail. */
  tails: z.array(z.strictObject({ id, node, colour: z.enum(COLOURS), lands: id })).default([]),
})
export type SupplyDevice = z.output<typeof supplyDevice>

const cableConductor = z.strictObject({
  id,
  function: z.enum(FEED_FUNCTIONS),
  size: conductorSize,
  colour: z.enum(COLOURS),
  /** The colour of tape that marks it at its ends. */
  taped: z.enum(COLOURS).optional(),
  /** What was found at the tub's end where it is not the same conductor: a joint lies between. */
  otherEnd: z
    .strictObject({ size: conductorSize.optional(), colour: z.enum(COLOURS).optional() })
    .optional(),
  /** The terminal found at the end nearer the panel. */
  from: id,
  /** The terminal found at the end nearer the tub; absent where that end is for the box. */
  to: id.optional(),
})

export const cable = z.strictObject({
  id,
  label,
  /** A device of this supply. */
  from: id,
  /** A later device of this supply, or `box`. */
  to: id,
  length: quantity('m'),
  where: chosen(SURROUNDINGS).optional(),
  material: chosen(MATERIALS).optional(),
  /** What its insulation is made for. */
  insulation: chosen(RATED_TEMPERATURES).optional(),
  method: chosen(WIRING_METHODS).optional(),
  /** The hottest air around it. */
  ambient: known('K').optional(),
  conduit: z
    .strictObject({
      kind: chosen(CONDUITS).optional(),
      /** Trade size in inches. */
      size: chosen(TRADE_SIZES).optional(),
    })
    .optional(),
  alongside: chosen(ALONGSIDE).optional(),
  /** A moulded end cannot be re-landed. */
  moulded: z.boolean().default(false),
  /** Marks of heat were found on it: insulation hard or brown, copper dull. */
  heatMark: z.boolean().optional(),
  conductors: z.array(cableConductor).min(1),
})
export type Cable = z.output<typeof cable>

export const supply = z.strictObject({
  system: z.enum(SYSTEMS),
  frequency: quantity('Hz'),
  /** Of the first circuit. */
  breaker: known('A'),
  /** Tripping characteristic, outside North America. */
  breakerType: chosen(BREAKER_TYPES).optional(),
  earthing: chosen(EARTHINGS).optional(),
  /** Line to earth and back, at the start of the run. */
  earthLoop: known('Ω').optional(),
  /** Of one line conductor, from the transformer to the first device. */
  sourceImpedance: quantity('Ω').optional(),
  /** Copper between there and the first device, where it is not in the impedance already. */
  feeder: z.strictObject({ length: quantity('m'), size: conductorSize }).optional(),
  /** A plug that goes in both ways round: line and neutral may be exchanged. */
  turnable: z.boolean().default(false),
  devices: z
    .array(
      z.strictObject({
        id,
        device: id,
        label: label.optional(),
        /** On the first device of a second circuit: which line of the source arrives at which node. */
        fedBy: z.partialRecord(z.enum(LINES), z.enum(LINES)).optional(),
        /** Of that circuit. */
        breaker: known('A').optional(),
        /** What its terminals are made for. */
        terminals: chosen(RATED_TEMPERATURES).optional(),
        /** What its enclosure or switch may carry. */
        enclosure: known('A').optional(),
        /** Marks of heat were found on it. */
        heatMark: z.boolean().optional(),
      }),
    )
    .min(1),
  cables: z.array(cable).min(1),
})
export type Supply = z.output<typeof supply>
