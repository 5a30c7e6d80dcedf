import * as z from 'zod'
import { FUNCTIONS } from '../board/board.ts'
import { conductorSize } from '../conductor.ts'
import { COLOURS, id, known, label, quantity } from '../described.ts'

/** A thermistor's curve by its resistance at 25 °C and its beta. */
export const CURVES = {
  '10k': { ohmsAt25: 10_000, beta: 3950 },
  '30k': { ohmsAt25: 30_700, beta: 3994 },
} as const
export const curveName = z.enum(['10k', '30k'])
export type CurveName = z.output<typeof curveName>

const lead = z.strictObject({
  id,
  function: z.enum(FUNCTIONS),
  size: conductorSize,
  colour: z.enum(COLOURS),
})

/** What draws current between two leads: a winding, an element, an input. */
const circuit = z.strictObject({
  id,
  /** Two lead ids. */
  across: z.tuple([id, id]),
  amps: known('A').optional(),
  power: known('W').optional(),
  powerFactor: z.number().min(0.05).max(1).default(1),
  /** What an ohmmeter reads across it, cold; of an element it follows from volts and watts. */
  ohms: known('Ω').optional(),
  /** At the start, where its maker says so. */
  inrush: known('A').optional(),
})

const capacitor = z.strictObject({
  id,
  use: z.enum(['start', 'run']),
  capacitance: quantity('F'),
  /** Where it is found. */
  place: z.enum(['on the motor', 'in a box of its own', 'in the control box']),
})

const strap = z.strictObject({
  volts: quantity('V'),
  /** Amps of each circuit in this position, by circuit id. */
  amps: z.record(id, known('A')),
})

/** A plug already on the load: pins by the lead's id. */
const plug = z.strictObject({ shape: label, pins: z.record(z.string().max(8), id) })

const common = {
  id,
  label,
  leads: z.array(lead).min(2),
  plug: plug.optional(),
  condition: label.optional(),
  /** Marks of heat were found on its plug, leads or lugs. */
  heatMark: z.boolean().optional(),
  /** Plate frequency, where it is printed. */
  frequency: quantity('Hz').optional(),
}

const powered = {
  ...common,
  volts: quantity('V').optional(),
  /** No metal that a fault could make live. A mains load without an earth lead has to say. */
  doubleInsulated: z.boolean().optional(),
  circuits: z.array(circuit).min(1),
  /** A dual-voltage load: what each strap position means, and the one found. */
  straps: z.strictObject({ found: id, positions: z.record(id, strap) }).optional(),
}

/** Which circuits, when they run, push water through the heater. */
const movesWater = { movesWaterThroughHeater: z.array(id).default([]) }

const motor = {
  capacitors: z.array(capacitor).default([]),
  startSwitch: z.enum(['centrifugal', 'relay', 'none']).optional(),
  /** A thermal cut-out in the winding: it opens when hot and closes again by itself. */
  thermalCutOut: z.boolean().optional(),
  /** The circuit on which it has to start, where only one gives the torque. */
  startsOn: id.optional(),
}

export const load = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('pump'), ...powered, ...movesWater, ...motor }),
  z.strictObject({ kind: z.literal('circulation-pump'), ...powered, ...movesWater, ...motor }),
  z.strictObject({ kind: z.literal('heater'), ...powered }),
  z.strictObject({ kind: z.literal('ozonator'), ...powered }),
  z.strictObject({ kind: z.literal('blower'), ...powered }),
  z.strictObject({
    kind: z.literal('light'),
    ...powered,
    /** What it needs; either where its plate says so. */
    current: z.enum(['ac', 'dc', 'either']).default('either'),
  }),
  z.strictObject({ kind: z.literal('audio'), ...powered }),
  z.strictObject({ kind: z.literal('sanitiser'), ...powered }),
  z.strictObject({ kind: z.literal('keypad'), ...powered }),
  z.strictObject({
    kind: z.literal('probe'),
    ...common,
    curve: curveName,
    /** Where it sits: the water of the tub, or the heater tube's inlet or outlet end. */
    place: z.enum(['water', 'heater-inlet', 'heater-outlet']),
  }),
])
export type Load = z.output<typeof load>
export type LoadKind = Load['kind']
export type PoweredLoad = Exclude<Load, { kind: 'probe' }>
export type Probe = Extract<Load, { kind: 'probe' }>
export type Circuit = PoweredLoad['circuits'][number]
export type Lead = Load['leads'][number]

export const isPowered = (each: Load): each is PoweredLoad => each.kind !== 'probe'
/** Extra-low voltage, alternating [V]. @source [IEC-61140] (from memory) */
export const EXTRA_LOW_VOLTS = 50

/** Whether any plate of the load is above extra-low voltage; plates are in `volts` or in the straps. */
export const isMains = (each: PoweredLoad): boolean =>
  [each.volts, ...Object.values(each.straps?.positions ?? {}).map(strap => strap.volts)].some(
    volts => volts !== undefined && volts.si > EXTRA_LOW_VOLTS,
  )

/** A mains load with neither an earth lead nor double insulation: a fault makes its metal live. */
export const isUnearthed = (each: Load): boolean =>
  isPowered(each) &&
  isMains(each) &&
  each.doubleInsulated !== true &&
  !each.leads.some(lead => lead.function === 'earth')

export const isMotor = (each: Load): boolean =>
  each.kind === 'pump' || each.kind === 'circulation-pump' || each.kind === 'blower'
