import * as z from 'zod'
import { conductorSize } from '../conductor.ts'
import { chosen, id, known, label, YES_NO } from '../described.ts'

const thing = { id, label }

/** What stands around the tub, and how far from the inside wall of the tub each thing is. */
export const yard = z.strictObject({
  setting: chosen(['indoors', 'outdoors']).optional(),
  dwelling: chosen(['one-family', 'other']).optional(),
  /** A listed tub in one piece that stands above ground. */
  selfContained: chosen(YES_NO).optional(),
  /** The rim over the highest surface near the tub, a deck built later included. */
  rimHeight: known('m').optional(),
  /** Whether ground and deck near the tub are joined to its bonding. */
  groundBonded: chosen(YES_NO).optional(),
  disconnect: z
    .strictObject({
      distance: known('m').optional(),
      inSight: chosen(YES_NO).optional(),
      /** Round a fixed barrier that one would have to walk. */
      reach: known('m').optional(),
    })
    .optional(),
  receptacles: z
    .array(
      z.strictObject({
        ...thing,
        distance: known('m').optional(),
        groundFault: chosen(YES_NO).optional(),
        /** The one that the tub's own cord goes into. */
        feedsTub: chosen(YES_NO).optional(),
      }),
    )
    .optional(),
  lights: z
    .array(
      z.strictObject({
        ...thing,
        distance: known('m').optional(),
        /** Over the highest water. */
        height: known('m').optional(),
        groundFault: chosen(YES_NO).optional(),
      }),
    )
    .optional(),
  switches: z.array(z.strictObject({ ...thing, distance: known('m').optional() })).optional(),
  metal: z
    .array(
      z.strictObject({
        ...thing,
        distance: known('m').optional(),
        bonded: chosen(YES_NO).optional(),
      }),
    )
    .optional(),
  bond: z
    .strictObject({
      size: conductorSize.optional(),
      strands: chosen(['solid', 'stranded']).optional(),
    })
    .optional(),
})
export type Yard = z.output<typeof yard>

export const SERVICE_LOADS = [
  'range',
  'dryer',
  'water-heater',
  'heating',
  'cooling',
  'vehicle',
  'tub',
  'other',
] as const

/** What the whole house may draw: asked where a demand calculation is wanted. */
export const service = z.strictObject({
  /** The main breaker. */
  main: known('A').optional(),
  /** Living area. */
  area: known('m²').optional(),
  /** Whether every fixed load of the house is in the list. */
  complete: chosen(YES_NO).optional(),
  loads: z
    .array(z.strictObject({ ...thing, kind: z.enum(SERVICE_LOADS), power: known('W') }))
    .optional(),
})
export type Service = z.output<typeof service>
