import * as z from 'zod'
import { id, label, quantity } from '../described.ts'

/** An end off its terminal: capped, or hanging bare. */
export const OFF = ['insulated', 'loose'] as const

/**
 * Which conductor end sits on which terminal, where each jumper and strap sits, what is set.
 *
 * Ends: `load.lead`, `cable.conductor@device` or `cable.conductor@box`, `device.tail`.
 * Terminals: `box.X1-1`, `device.L1`; or `insulated`, or `loose` (off and bare).
 * Planned and as-built are the same type.
 */
export const landing = z.strictObject({
  schema: z.literal('landing/1'),
  survey: id,
  box: id,
  note: z.string().max(400).optional(),
  ends: z.record(z.string().max(90), z.string().max(90)),
  jumpers: z.record(id, id),
  straps: z.record(id, id).default({}),
  settings: z.strictObject({ profile: id, currentLimit: quantity('A') }),
  /** Loads whose plug is replaced by an adapter, by load id: what is made. */
  adapters: z.record(id, label).default({}),
})
export type Landing = z.output<typeof landing>
