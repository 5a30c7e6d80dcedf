import type { Rule } from './rule.ts'
import { afterReset } from './rules/after-reset.ts'
import { cleanTrip } from './rules/clean-trip.ts'
import { colours } from './rules/colours.ts'
import { conductors } from './rules/conductors.ts'
import { currentLimit } from './rules/current-limit.ts'
import { disconnect } from './rules/disconnect.ts'
import { earthCurrent } from './rules/earth-current.ts'
import { flowProof } from './rules/flow-proof.ts'
import { frequency } from './rules/frequency.ts'
import { groundFaultDevice } from './rules/ground-fault-device.ts'
import { heaterContacts } from './rules/heater-contacts.ts'
import { heaterLimit } from './rules/heater-limit.ts'
import { heaterWater } from './rules/heater-water.ts'
import { heats } from './rules/heats.ts'
import { kindOfCurrent } from './rules/kind-of-current.ts'
import { leastLoad } from './rules/least-load.ts'
import { liveWhenOff } from './rules/live-when-off.ts'
import { loadServed } from './rules/load-served.ts'
import { loadVolts } from './rules/load-volts.ts'
import { looseEnds } from './rules/loose-ends.ts'
import { lowVoltage } from './rules/low-voltage.ts'
import { metalOnEarth } from './rules/metal-on-earth.ts'
import { offMeansOff } from './rules/off-means-off.ts'
import { oneSpeed } from './rules/one-speed.ts'
import { rating } from './rules/rating.ts'
import { sensors } from './rules/sensors.ts'
import { terminals } from './rules/terminals.ts'
import { totalDraw } from './rules/total-draw.ts'

/** Every rule, by its number. */
export const RULES: readonly Rule[] = [
  rating,
  loadVolts,
  lowVoltage,
  metalOnEarth,
  earthCurrent,
  groundFaultDevice,
  offMeansOff,
  heaterWater,
  heaterLimit,
  oneSpeed,
  sensors,
  looseEnds,
  cleanTrip,
  loadServed,
  totalDraw,
  currentLimit,
  heats,
  colours,
  liveWhenOff,
  flowProof,
  frequency,
  afterReset,
  conductors,
  terminals,
  disconnect,
  heaterContacts,
  kindOfCurrent,
  leastLoad,
]
