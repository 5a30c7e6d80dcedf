import type {
  SituatedLoad,
  SupplyCircumstances,
} from '../../../src/stages/diagnose/supply/artifact.ts'
import { demoDevices, demoTub } from '../../support/demo.ts'

const RUNNING = ['idle', 'heating'] as const

const load = (
  id: string,
  between: SituatedLoad['between'],
  volts: number,
  amps: number,
  powerFactor: number,
  on: SituatedLoad['on'] = RUNNING,
): SituatedLoad => ({ id, between, volts, amps, powerFactor, on })

const heater = (between: SituatedLoad['between'], volts: number, amps: number): SituatedLoad =>
  load('heater', between, volts, amps, 1, ['heating'])

const circulation = load('circulation', ['leg1', 'neutral'], 120, 1.2, 0.8)
const control = load('control', ['leg2', 'neutral'], 120, 0.3, 0.9)

/** What hangs on the demo's supplies: the heater of a box, and what runs all the time. */
export const LOADS: Readonly<Record<string, readonly SituatedLoad[]>> = {
  'everyday-240-circulation': [heater(['leg1', 'leg2'], 240, 16.7), circulation, control],
  // One leg alone carries what idles: the other one hangs on nothing where it is lost.
  'everyday-240-plain': [
    heater(['leg1', 'leg2'], 240, 22.9),
    load('control', ['leg1', 'neutral'], 120, 0.17, 0.9),
  ],
  'large-60': [
    heater(['leg1', 'leg2'], 240, 22.9),
    load('circulation', ['leg1', 'neutral'], 120, 1.4, 0.8),
    load('blower', ['leg2', 'neutral'], 120, 5, 0.95),
  ],
  'wye-208': [heater(['leg1', 'leg2'], 240, 16.7), load('audio', ['leg1', 'neutral'], 120, 0.3, 1)],
  'high-leg': [heater(['leg1', 'leg2'], 240, 16.7), control],
  'three-wire-240': [
    heater(['leg1', 'leg2'], 240, 16.7),
    load('circulation', ['leg1', 'leg2'], 240, 0.6, 0.8),
  ],
  'cord-120-15': [
    heater(['leg1', 'neutral'], 120, 8.3),
    load('control', ['leg1', 'neutral'], 120, 0.2, 0.9),
  ],
  'garden-230': [
    heater(['leg1', 'neutral'], 230, 13),
    load('circulation', ['leg1', 'neutral'], 240, 0.5, 0.8),
  ],
  'plain-breaker-230': [
    heater(['leg1', 'neutral'], 230, 8.7),
    load('control', ['leg1', 'neutral'], 230, 0.1, 0.9),
  ],
  'turnable-230': [
    heater(['leg1', 'neutral'], 230, 8.7),
    load('control', ['leg1', 'neutral'], 230, 0.1, 0.9),
  ],
  'two-lives-230': [
    heater(['leg1', 'leg2'], 230, 8.7),
    load('control', ['leg1', 'leg2'], 230, 0.2, 0.9),
  ],
  'three-phase-400': [
    heater(['leg1', 'neutral'], 230, 13),
    load('circulation', ['leg2', 'neutral'], 240, 0.6, 0.8),
    load('blower', ['leg3', 'neutral'], 240, 3.2, 0.95, ['heating']),
  ],
  'split-two-legs': [
    heater(['second-leg1', 'second-neutral'], 120, 8.3),
    load('control', ['leg1', 'neutral'], 120, 0.5, 0.9),
  ],
  'split-240': [
    heater(['second-leg1', 'second-leg2'], 240, 16.7),
    load('control', ['leg1', 'neutral'], 120, 0.5, 0.9),
  ],
}

/** A supply of the demo with its loads. */
export function circumstancesOf(id: string): SupplyCircumstances {
  const tub = demoTub(id)
  const devices = new Map(
    tub.supply.devices.flatMap(each => {
      const device = demoDevices.get(each.device)
      return device ? [[each.id, device] as const] : []
    }),
  )
  return { tub, devices, loads: LOADS[id] ?? [] }
}
