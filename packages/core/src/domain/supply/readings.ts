import * as z from 'zod'
import { chosen, id, quantity, YES_NO } from '../described.ts'

/** What is on while the supply is measured at the tub. */
export const SITUATIONS = ['loads-off', 'idle', 'heating'] as const
export type Situation = (typeof SITUATIONS)[number]

/** A meter shows 0 V. */
const shown = quantity('V', 0).optional()

/** Six readings at the tub's own terminals, in one situation. */
export const supplyReading = z.strictObject({
  id,
  situation: z.enum(SITUATIONS),
  leg1ToLeg2: shown,
  leg1ToNeutral: shown,
  leg2ToNeutral: shown,
  leg1ToEarth: shown,
  leg2ToEarth: shown,
  neutralToEarth: shown,
  /** What the heater draws then. */
  heaterAmps: quantity('A', 0).optional(),
})
/** What somebody felt at the tub, and what a meter showed between things that a person touches at once. */
export const touch = z.strictObject({
  /** A shock or tingle, however small, at any time. */
  felt: chosen(YES_NO).optional(),
  readings: z
    .array(
      z.strictObject({
        id,
        from: z.enum(['water', 'metal']),
        /** Against what: the tub's own earth is the same metal, and says nothing of the ground. */
        to: z.enum(['soil-spike', 'wet-slab', 'tub-earth']),
        volts: quantity('V', 0),
        /** With every load of the tub unplugged. */
        unplugged: chosen(YES_NO).optional(),
      }),
    )
    .optional(),
})
export type Touch = z.output<typeof touch>

export type SupplyReading = z.output<typeof supplyReading>
