import * as z from 'zod'
import { id, label, quantity, REGIONS } from '../../domain/described.ts'
import { load } from '../../domain/load/load.ts'
import { supply } from '../../domain/supply/supply.ts'

/** What was found at the tub. */
export const survey = z.strictObject({
  schema: z.literal('survey/1'),
  id,
  title: label,
  note: z.string().max(2000).optional(),
  region: z.enum(REGIONS),
  supply,
  loads: z.array(load).min(1),
  /** The room for the box in the equipment bay. */
  bay: z
    .strictObject({ width: quantity('m'), height: quantity('m'), depth: quantity('m') })
    .optional(),
  /** The hole the old keypad leaves. */
  keypadHole: z.strictObject({ width: quantity('m'), height: quantity('m') }).optional(),
})
export type Survey = z.output<typeof survey>
