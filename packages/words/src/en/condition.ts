/** What a supply is found to be, from readings at the tub. */
export const CONDITION_EN = {
  sound: 'The supply is sound.',
  'split-phase': 'It is a supply of 120/240 V, not the one the survey says.',
  wye: 'It is two legs of a 120/208 V wye: a heater for 240 V gives three quarters there.',
  'high-leg':
    'One leg is the high leg of a delta: it serves no tub. Switch off; an electrician decides.',
  'same-leg': 'Both hots come from one leg of the panel: what needs two legs gets nothing.',
  off: 'A device on the way is off or has tripped.',
  'leg-open': 'One leg is open. What it seems to carry comes back through a load on both legs.',
  'neutral-open':
    'The neutral is open: loads to neutral get too much or too little. Switch off at the panel.',
  'neutral-poor':
    'The neutral has a poor joint: loads to neutral get too much or too little. Switch off at the panel.',
  joint: 'A leg has a poor joint: it is hot there under load.',
  'earth-open': 'The earth is open: a fault makes metal live. Switch off at the panel.',
  'neutral-earth-swapped':
    'Neutral and earth are exchanged: the earth carries current. Switch off at the panel.',
  'line-neutral-swapped': 'Line and neutral are exchanged.',
} as const

/** Words around the condition of a supply. */
export const CONDITION_PAGE_EN = {
  failed: 'These readings cannot be judged: one is of a conductor that does not arrive at the tub.',
  'may-sound': 'a sound supply',
  'may-split-phase': '120/240 V instead of what was surveyed',
  'may-wye': 'two legs of a wye',
  'may-high-leg': 'a high leg',
  'may-same-leg': 'both hots on one leg',
  'may-off': 'a device that is off',
  'may-leg-open': 'an open leg',
  'may-neutral-open': 'an open neutral',
  'may-neutral-poor': 'a poor neutral',
  'may-joint': 'a poor joint in a leg',
  'may-earth-open': 'an open earth',
  'may-neutral-earth-swapped': 'neutral and earth exchanged',
  'may-line-neutral-swapped': 'line and neutral exchanged',
  stop: 'STOP: {danger} Switch off at the panel and lock it; an electrician has to look.',
  maybe: 'Possible, and not yet shown: {danger}',
  'danger-neutral': 'Loads to neutral get wrong volts.',
  'danger-earth': 'The earth does not protect.',
  'danger-earth-carries-current': 'The earth carries current.',
  'danger-polarity': 'What should be neutral is live.',
  'danger-high-leg': 'A high leg is there.',
  'danger-joint': 'A joint burns under load.',
  'danger-over-volts': 'What needs 120 V gets more than 132 V.',
  'danger-neutral-to-earth': 'The neutral stands off earth.',
  title: 'What the readings say',
  unnamed: 'The readings allow more than one of these:',
  none: 'Nothing that is known makes these readings. Look at the meter and at where its leads were.',
  'off-band': 'The supply is sound but for its volts: {from:percent} to {to:percent} of nominal.',
  fits: '{fault} ({where})',
  'fits-ohms': '{fault} ({where}, {from:ohm} to {to:ohm})',
  'fits-bare': '{fault}',
  'where-ohms': '{where}: {from:ohm} to {to:ohm}',
  'next-volts': 'Read next, {situation}: {from} to {to}.',
  'next-amps': 'Read next, {situation}: the amps of the heater.',
  beside:
    'What volts at the tub cannot show: whether the earth is whole. Prove it by ohms, power off.',
  'situation-loads-off': 'the loads between the legs off',
  'situation-idle': 'idle',
  'situation-heating': 'with the heater on',
  'place-source': 'before {thing}',
  'place-device': 'at {thing}',
  'place-cable': 'in {thing}',
  caution:
    'Readings inside an open box are only for somebody with a rated meter who has used one on mains; never by telephone with a first-timer.',
} as const
