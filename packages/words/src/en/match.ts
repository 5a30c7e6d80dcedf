/** Why a box cannot serve a tub, what is still open, and what the tub asks, by message. */
export const MATCH_EN = {
  'not-for-region': 'It carries no mark for {region} (it has {offers}).',
  'not-for-frequency': 'The supply has {hertz:Hz}; it is made for {offers}.',
  'not-for-system': 'The supply is {system}; it takes {offers}.',
  'conductor-missing': 'It needs {missing}; what reaches the tub is {here}.',
  'high-leg':
    'No box can serve here: one leg of this supply stands near 208 V to neutral. Ask an electrician for two legs that stand at 120 V each.',
  'conductor-too-small':
    'No box can serve as it is: {conductor} of {cable} is {size}, too small for a breaker of {breaker:A}. The run or the breaker has to change.',
  'terminal-does-not-hold':
    'Its terminal “{terminal}” holds {from} to {to}; {conductor} is {size}.',
  'no-earth-lead':
    'No box can serve as it is: {load} has no earth lead and is not double insulated. A fault would make its metal live.',
  'breaker-too-large': 'It may stand behind {largest:A} at most; the breaker is {breaker:A}.',
  'no-setting-low-enough':
    'Its lowest current limit lets {least:A} be drawn; 80 % of the breaker is {share:A}.',
  'too-big': 'It measures {width:mm} × {height:mm} × {depth:mm}: it does not go into the bay.',
  'no-place': 'It has no place for {load} ({kind}).',
  'probe-does-not-suit': 'No input of it reads {load} on its curve ({curve}).',
  'too-many-amps': '{load} draws {amps:A}; its contacts carry {rated:A} at most.',
  'wrong-volts': '{load} needs {plate} V; it offers {offers} V there.',
  'too-few-places':
    'Of {loads} loads, probes and keypad among them, not every one gets a place of its own.',
  'no-profile-moves-water':
    'In no equipment profile does the pump that feeds the heater run while it heats.',
  'ask-breaker': 'Which breaker feeds the tub?',
  'ask-amps': 'How much does {load} draw ({circuit})? Read the plate or measure.',
  'narrow-amps': 'How much exactly does {load} draw ({circuit})?',
  'ask-keypad':
    'Which keypad goes on {box}? It has a place for one, its carton has none and the survey names none.',
  'ask-keypad-maker':
    'Is {load} made for {box}? Its carton has no keypad, and that of another maker cannot be used.',
  'needs-region': 'a mark for {region}',
  'needs-frequency': 'a box for {hertz:Hz}',
  'needs-system': 'a {system} supply',
  'brings-conductors': 'a feed that brings only {here}',
  'brings-high-leg': 'a delta with a high leg',
  'brings-small-conductor': '{cable} with {conductor} of {size} behind {breaker:A}',
  'brings-size': '{conductor} of {size}',
  'needs-no-earth': '{load} without an earth',
  'has-breaker': 'a breaker of {breaker:A}',
  'needs-current-limit': 'a current limit of {share:A} or less',
  'has-room': 'a bay of {width:mm} × {height:mm} × {depth:mm}',
  'needs-load-served': '{load}, {plate} V',
  'needs-probe-read': '{load} read on its curve{plate}',
  'needs-own-places': 'a place for each of {count} loads',
  'needs-moving-water': 'water moving through the heater while it heats',
} as const satisfies Readonly<Record<string, string>>

export type MatchMessage = keyof typeof MATCH_EN
