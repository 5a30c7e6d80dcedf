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
  stop: 'STOP: {danger} Off at the panel and locked; an electrician has to look.',
  maybe: 'Possible, and not yet shown: {danger}',
  'danger-neutral':
    'The neutral does not hold: switch off at the panel, and nothing runs until it does.',
  'danger-earth': 'The earth does not hold: a fault makes metal live. Switch off at the panel.',
  'danger-earth-carries-current':
    'The earth carries current: metal can be live. Switch off at the panel.',
  'danger-polarity': 'Line and neutral are exchanged: what is switched off stays live.',
  'danger-high-leg': 'One leg stands far too high to neutral. Switch off at the panel.',
  'danger-joint': 'A joint gets hot under load: it is found and made anew before the heater runs.',
  'danger-over-volts':
    'Loads to neutral get far more volts than they are made for. Switch off at the panel.',
  'danger-neutral-to-earth': 'The neutral stands at volts to earth: something in it does not hold.',
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
