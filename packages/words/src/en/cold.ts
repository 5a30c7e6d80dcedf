import type { ColdPart } from '@tubwright/core'

/** What would settle a reading that is not shown, by what the part is. */
export const COLD_ASK_EN: Readonly<Record<ColdPart['kind'], string>> = {
  element:
    'What does {of} take, in watts or amps, or what does it read cold? Write it in its circuit "{name}".',
  winding:
    'What does {of} read cold between the leads of its circuit "{name}", strapped as it is found? Write it there as "ohms".',
  probe: 'Which curve has {of}? Write it as its "curve".',
  'load-electronics':
    'What does {of} read cold? Write it as "ohms" in its circuit "{name}"; or unplug it and measure without it.',
  primary:
    'What does the primary of {name} on {of} read, by its maker? Write it there as "primaryOhms".',
  secondary:
    'What does the secondary of {name} on {of} read? No file says it: take one of its wires off and measure without it.',
  electronics:
    'What do the electronics {name} of {of} read? No file says it: take them off and measure without them.',
  'ground-fault':
    'What do the ground-fault electronics {name} of {of} read? No file says it: take the wires off there and measure without them.',
  semiconductor: 'What lets the triac {name} of {of} through? No file says it.',
  input:
    'What does the sensor input "{name}" of {of} read? No file says it: unplug there and measure the probe alone.',
}

/** What an ohmmeter and an insulation tester read. */
export const METER_EN = {
  points: '{a} to {b}, power off',
  plugged: 'Plugged in: {loads}.',
  'plugged-none': 'Plugged in: nothing.',
  'supply-off': 'Supply off the box.',
  'supply-open': 'Supply landed, its disconnect open.',
  'supply-closed': 'Supply landed, its disconnect closed, dead upstream.',
  celsius: 'Probes at {celsius:C}.',
  open: 'open (above 1 MΩ)',
  ohms: '{expected:ohm} ({low:ohm} to {high:ohm}, meter included)',
  above: 'above {low:ohm}: insulation alone joins them, near {expected:ohm}',
  'not-shown': 'not shown: it may be anything from {least:ohm} to {greatest:ohm}.',
  'not-shown-open': 'not shown: it may be anything from {least:ohm} to open.',
  charges: 'The meter starts low and climbs, for a capacitor charges: {loads}. Wait for it.',
  joined: 'Copper or a closed contact joins them: there is no insulation to test.',
  insulated: '{volts:V} direct: near {expected:ohm} when sound (down to {least:ohm}).',
  apart: '{volts:V} direct: nothing that is described joins them.',
  // What insulation has to be: common practice, no source.
  limits:
    'Above {good:ohm} is good, for one part alone. Above {least:ohm} will do. Below {suspect:ohm} is suspect; between, dry it and test again.',
  unplug: 'First unplug or take off:',
  dies: '  {part}: the test voltage reaches it, and it dies.',
  falsifies: '  {part}: it lets current pass, so that the test reads wrong.',
  both: '  {part}: it dies, and lets current pass.',
  nothing: 'Nothing that is described has to be unplugged for it.',
  suppressors:
    'Surge suppressors are described in no file: take them off too, for they read low by design.',
  discharge: 'Discharge after the test, for a capacitor holds its charge: {loads}.',
} as const
