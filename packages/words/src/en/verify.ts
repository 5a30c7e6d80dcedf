/** What each finding says, by message: what is, against what may be, about which thing. */
export const VERIFY_EN = {
  'above-rating': '{label} ({kind}) carries {amps:A}; it is rated {rated:A}.',
  'protection-overloaded':
    '{label} ({kind}) carries {amps:A} on {rated:A}: it is hot until it opens, and nobody knows when.',
  'load-over-volts': '{load} gets up to {volts:V}; its plate says {plate:V} ({share:percent}).',
  'motor-starved':
    '{load} runs on as little as {volts:V} of its {plate:V} ({share:percent}): it stalls and burns.',
  'mains-on-low-voltage': '{terminal} is a low-voltage terminal and stands at {volts:V} to earth.',
  'transformer-over-volts':
    'Transformer {part} gets up to {volts:V}; its primary is made for {plate:V}.',
  'low-voltage-joined-to-mains':
    'Low-voltage terminal {terminal} is joined to a mains conductor. A neutral counts as one: the day it opens, it is live.',
  'load-across-mains-and-low-voltage':
    '{load} has a lead on low voltage and another on a mains conductor.',
  'low-voltage-load-on-mains':
    '{load} is made for low voltage and has a lead on a mains conductor: nothing in it is insulated for that.',
  'no-earth-lead':
    '{load} has no earth lead and is not double insulated: a fault makes its metal live.',
  'main-earth-on-small-terminal':
    'The earth of the supply is on {terminal}, rated {rated:A}; a fault has to pass there until the breaker of {breaker:A} opens.',
  'load-earth-on-small-terminal':
    'The earth of {load} is on {terminal}, rated {rated:A}; the load draws {amps:A}, and a fault more.',
  'run-without-earth':
    '{cable} brings line or neutral, and no earth conductor beside it is landed at both ends.',
  'metal-not-on-earth': 'The metal of {thing} is not joined to earth.',
  'mains-tied-to-earth': 'Earth is tied to {terminal} on the tub side of the ground-fault device.',
  'metal-live': 'The metal of {thing} stands at {volts:V} to earth.',
  'earth-carries-current':
    'Earth conductor {conductor} carries {amps:A}; at most {limit:A} may flow there.',
  'ground-fault-bypassed':
    'With the ground-fault device tripped, {terminal} of the box still stands at {volts:V}: it is fed past the device.',
  'ground-fault-blind':
    'The ground-fault device at {device} has no supply of its own: its test button is dead and so is its protection. Look at its tail.',
  'ground-fault-near-trip':
    'The ground-fault device at {device} sees {amps:A} in normal running; it may trip from {limit:A} on.',
  'disconnect-wired-round':
    'With {device} switched off, {terminal} of the box still stands at {volts:V}: it is fed past it. Nobody can lock this tub off.',
  'tub-side-live':
    'With {device} switched off, its {terminal} stays live: line side and tub side are exchanged.',
  'ground-fault-too-coarse':
    'The ground-fault device at {device} trips at {amps:A}; for people it has to be by {limit:A} here.',
  'no-ground-fault-device': 'No ground-fault device watches the circuit of {device}.',
  'on-when-off': '{load} runs though nothing is switched on.',
  'only-neutral-switched':
    '{load} is switched in its neutral alone: it stays at line volts when off.',
  'heater-without-water': '{heater} is on while no pump moves water through it.',
  'heater-past-contact':
    '{heater} is landed past one of its two contacts: a lead stays live when it is off, and one welded contact would heat without end.',
  'heater-past-limit': '{heater} stays on with the limit contacts open.',
  'two-speeds-together': '{load} gets both its speeds at once.',
  'probe-open': '{input}: no probe is seen. The box will not heat.',
  'probe-shorted': '{input}: the probe looks shorted. The box will not heat.',
  'reads-low':
    '{input} shows {shown:C} when the water is at {true:C}: it heats too far, or acts too late.',
  'reads-high':
    '{input} shows {shown:C} when the water is at {true:C}: it stops heating too early.',
  'probe-misplaced':
    '{input} is fed by {probe}, which sits in another place: it acts late or never.',
  'probe-elsewhere': '{input} is fed by {probe}, which sits in another place.',
  'loose-and-live': 'End {end} hangs loose and would give {amps:A} to a hand.',
  'loose-and-dead': 'End {end} hangs loose. It is dead; cap it all the same.',
  'loose-not-shown-dead':
    'End {end} hangs loose on a motor with several windings: one that runs can make it live. Cap it.',
  'dead-short': 'Dead short: {part} would carry {amps:A} ({rated:A} rated) and trips at once.',
  'overload-trips': '{part} would carry {amps:A} ({rated:A} rated) and trips.',
  'ground-fault-trips': '{part} sees {amps:A} missing and trips at once (upper bound {rated:A}).',
  'jumper-against-feed':
    'Look first at jumper {jumper} ({label}): it stands at “{found}”; the feed “{feed}” needs “{needed}”.',
  'load-dead': '{load} never runs.',
  'load-weak': '{load} gets {share:percent} of its volts at most: it is weak.',
  'heater-reduced':
    '{load} gets {share:percent} of its volts, the most that this supply has, and gives {power:percent} of its rated heat.',
  'load-on-wrong-command': '{load} does not answer its own command.',
  'load-elsewhere': '{load} is on the terminals of “{place}”, which is for another kind of load.',
  'draw-above-limit':
    'What may run together draws {amps:A} from one leg; the current limit allows {limit:A}.',
  'draw-above-breaker':
    'What may run together draws {amps:A} from one leg; 80 % of the breaker is {limit:A}.',
  'limit-not-offered': 'The box does not offer a current limit of {setting:A}.',
  'breaker-unknown':
    'The breaker is not known: nothing shows that a current limit of {setting:A} suits it.',
  'breaker-too-large': 'The breaker is {breaker:A}; the box may stand behind {largest:A} at most.',
  'limit-above-breaker':
    'The current limit lets {allowed:A} be drawn; 80 % of the breaker is {share:A}.',
  'no-margin':
    'The current limit of {allowed:A} is exactly what 80 % of the breaker allows ({share:A}): no margin.',
  'never-heats': '{heater} heats in no mode.',
  'conductor-behind-breaker':
    '{conductor} of {cable} is {size}: behind it a breaker of at most {most:A} may stand, and it is {breaker:A}.',
  'earth-too-small':
    'Earth {conductor} of {cable} is {size}; behind a breaker of {breaker:A} it has to be {least} at least.',
  'neutral-too-small':
    'Neutral {conductor} of {cable} is {size}; behind a breaker of {breaker:A} it has to be {least} at least.',
  'lead-earth-thin':
    'The earth lead of {load} is {size}, thinner than its live leads ({live}): that it carries a fault until the fuse opens is not shown.',
  'earth-size-not-shown':
    'Earth {conductor} of {cable} is {size}, smaller than its line: whether it serves behind {breaker:A} is not shown. Have it worked out.',
  'too-many-on-a-terminal': '{terminal} has {count} conductors on it and takes {most}.',
  'size-not-held': '{terminal} holds {from} to {to}; {end} is {size}.',
  'neutral-carries-line':
    '{end} is a {function} conductor ({colour}) and stands at line volts: the next hand takes it for dead.',
  'leg-carries-no-line':
    '{end} is a {function} conductor ({colour}) and no line volts stand on it.',
  're-identify':
    '{end} is {colour} and carries line volts ({function}): mark it again at both ends.',
  'earth-colour-live': '{end} is {colour}, an earth colour, and is used as {function}. Replace it.',
  'earth-not-green': '{end} is an {function} conductor and is {colour}.',
  'neutral-colour': '{end} is a {function} conductor and is {colour}.',
  'live-when-off': '{load} is switched in one leg: a lead stays live when it is off.',
  'flow-proof-unproven':
    '{heater} stays: whether it proves flow as the box wants it ({proof}) is not shown. Ask before ordering.',
  'dry-after-reset':
    'After a reset or power cut {box} falls back to a profile that heats with no water moving here. Set it again before it may heat; better, take a box that keeps its profile.',
  'unsafe-after-reset':
    'After a reset or power cut {box} falls back to settings that are not safe here. Set them again before it runs; better, take a box that keeps them.',
  'overdrawn-after-reset':
    'After a reset or power cut {box} falls back to settings that let more be drawn than this supply should give. Set them again.',
  'light-on-wrong-current': '{load} needs {needs} current; its output gives {gives}.',
  'below-least-load':
    '{part} carries {amps:A}; below {least:A} it neither turns on nor off for certain.',
  'wrong-frequency': '{thing} is made for {plate:Hz}; the supply has {hertz:Hz}.',
} as const satisfies Readonly<Record<string, string>>

export type VerifyMessage = keyof typeof VERIFY_EN

/** What stands round a finding: with what it is worst, and as long as what it does not arise. */
export const ROUND_EN = {
  provided: '{sentence} Not so as long as {assumed}.',
  'at-most': '{label} ≤ {amps:A}',
  'at-least': '{label} ≥ {amps:A}',
  'when-on': '{sentence} Worst with: {on}.',
  'nothing-on': '{sentence} With everything off.',
} as const
