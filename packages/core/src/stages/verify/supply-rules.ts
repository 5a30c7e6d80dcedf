import { bondingConductor } from './rules/supply/bonding-conductor.ts'
import { breakerBeforeConductor } from './rules/supply/breaker-before-conductor.ts'
import { breakerForLoad } from './rules/supply/breaker-for-load.ts'
import { supplyColours } from './rules/supply/colours.ts'
import { combinedEarth } from './rules/supply/combined-earth.ts'
import { conductorCarries } from './rules/supply/conductor-carries.ts'
import { conduitFill } from './rules/supply/conduit-fill.ts'
import { convenienceReceptacle } from './rules/supply/convenience-receptacle.ts'
import { cordReach } from './rules/supply/cord-reach.ts'
import { disconnectPlace } from './rules/supply/disconnect-place.ts'
import { earthInsulated } from './rules/supply/earth-insulated.ts'
import { earthSize } from './rules/supply/earth-size.ts'
import { emergencyStop } from './rules/supply/emergency-stop.ts'
import { enclosure } from './rules/supply/enclosure.ts'
import { faultLoop } from './rules/supply/fault-loop.ts'
import { groundBonding } from './rules/supply/ground-bonding.ts'
import { groundFault } from './rules/supply/ground-fault.ts'
import { heatMarks } from './rules/supply/heat-marks.ts'
import { hiddenJoint } from './rules/supply/hidden-joint.ts'
import { joined } from './rules/supply/joined.ts'
import { landings } from './rules/supply/landings.ts'
import { lights } from './rules/supply/lights.ts'
import { metalBonded } from './rules/supply/metal-bonded.ts'
import { neutralConductor } from './rules/supply/neutral.ts'
import { neutralSize } from './rules/supply/neutral-size.ts'
import { plate } from './rules/supply/plate.ts'
import { pumpStart } from './rules/supply/pump-start.ts'
import { receptacleDistance } from './rules/supply/receptacle-distance.ts'
import { receptacleProtection } from './rules/supply/receptacle-protection.ts'
import { serviceDemand } from './rules/supply/service-demand.ts'
import { system } from './rules/supply/system.ts'
import { touchVolts } from './rules/supply/touch-volts.ts'
import { tubRange } from './rules/supply/tub-range.ts'
import { twoEarths } from './rules/supply/two-earths.ts'
import { voltDrop } from './rules/supply/volt-drop.ts'
import { wallSwitches } from './rules/supply/wall-switches.ts'
import type { SupplyRule } from './supply/rule.ts'

/** Rules that another breaker or another wire has to pass too. */
export const FEED_GATES: readonly SupplyRule[] = [
  conductorCarries,
  breakerBeforeConductor,
  breakerForLoad,
  plate,
  enclosure,
  voltDrop,
  pumpStart,
  faultLoop,
  earthSize,
  neutralConductor,
  neutralSize,
  groundFault,
  system,
  landings,
  heatMarks,
]

/** Every rule of the supply: what was found before what is calculated, then by their numbers. */
export const SUPPLY_RULES: readonly SupplyRule[] = [
  heatMarks,
  conductorCarries,
  breakerBeforeConductor,
  breakerForLoad,
  plate,
  enclosure,
  earthSize,
  neutralConductor,
  hiddenJoint,
  voltDrop,
  pumpStart,
  faultLoop,
  groundFault,
  supplyColours,
  earthInsulated,
  conduitFill,
  system,
  touchVolts,
  neutralSize,
  landings,
  joined,
  disconnectPlace,
  convenienceReceptacle,
  receptacleDistance,
  receptacleProtection,
  cordReach,
  lights,
  wallSwitches,
  metalBonded,
  bondingConductor,
  groundBonding,
  emergencyStop,
  combinedEarth,
  twoEarths,
  tubRange,
  serviceDemand,
]
