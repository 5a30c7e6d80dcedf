import * as z from 'zod'
import { chosen, id, known, label, quantity, REGIONS } from '../../domain/described.ts'
import { load } from '../../domain/load/load.ts'
import { supplyReading, touch } from '../../domain/supply/readings.ts'
import { supply } from '../../domain/supply/supply.ts'
import { service, yard } from '../../domain/supply/yard.ts'

export const CODE_EDITIONS = ['2017', '2020', '2023'] as const

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
  /** The edition of the code that is adopted here. */
  codeEdition: chosen(CODE_EDITIONS).optional(),
  /** What the plate of the tub, or of the box it gets, asks of its supply. */
  plate: z
    .strictObject({
      draws: known('A').optional(),
      minimumCircuit: known('A').optional(),
      maximumProtection: known('A').optional(),
    })
    .optional(),
  yard: yard.optional(),
  service: service.optional(),
  /** What a meter showed at the tub's terminals. */
  readings: z.array(supplyReading).optional(),
  touch: touch.optional(),
})
export type Survey = z.output<typeof survey>
