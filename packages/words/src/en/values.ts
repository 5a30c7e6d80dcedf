import type {
  Colour,
  ControlBox,
  FeedFunction,
  LeadFunction,
  LoadKind,
  Part,
  System,
  Touch,
  UnknownReason,
} from '@tubwright/core'

type TouchReading = NonNullable<Touch['readings']>[number]

type Kind = Part['kind'] | LoadKind | 'terminal' | 'conductor' | 'jumper'

type ValueName =
  | `kind.${Kind}`
  | `function.${FeedFunction | LeadFunction}`
  | `colour.${Colour}`
  | `system.${System}`
  | `current.${'ac' | 'dc'}`
  | `proof.${ControlBox['flowProof']}`
  | `reason.${UnknownReason}`
  | `touched.${TouchReading['from'] | TouchReading['to']}`
  | 'list.or'

/**
 * Words of the files that findings give as they are, by what they are words of.
 *
 * English says them as the files write them, so that a person finds them there.
 */
export const VALUE_EN = {
  'kind.fuse': 'fuse',
  'kind.pole': 'pole',
  'kind.switch': 'switch',
  'kind.contact': 'contact',
  'kind.transformer': 'transformer',
  'kind.electronics': 'electronics',
  'kind.ground-fault': 'ground-fault',
  'kind.terminal': 'terminal',
  'kind.conductor': 'conductor',
  'kind.jumper': 'jumper',
  'kind.pump': 'pump',
  'kind.circulation-pump': 'circulation-pump',
  'kind.heater': 'heater',
  'kind.ozonator': 'ozonator',
  'kind.blower': 'blower',
  'kind.light': 'light',
  'kind.audio': 'audio',
  'kind.sanitiser': 'sanitiser',
  'kind.keypad': 'keypad',
  'kind.probe': 'probe',

  'function.leg1': 'leg1',
  'function.leg2': 'leg2',
  'function.leg3': 'leg3',
  'function.neutral': 'neutral',
  'function.earth': 'earth',
  'function.second-leg1': 'second-leg1',
  'function.second-leg2': 'second-leg2',
  'function.second-neutral': 'second-neutral',
  'function.second-earth': 'second-earth',
  'function.hot': 'hot',
  'function.high': 'high',
  'function.low': 'low',
  'function.common': 'common',
  'function.signal': 'signal',
  'function.data': 'data',

  'colour.black': 'black',
  'colour.brown': 'brown',
  'colour.red': 'red',
  'colour.orange': 'orange',
  'colour.yellow': 'yellow',
  'colour.green': 'green',
  'colour.blue': 'blue',
  'colour.violet': 'violet',
  'colour.grey': 'grey',
  'colour.white': 'white',
  'colour.pink': 'pink',
  'colour.turquoise': 'turquoise',
  'colour.green-yellow': 'green-yellow',
  'colour.bare': 'bare',

  'system.split-phase': 'split-phase',
  'system.single-leg': 'single-leg',
  'system.two-legs-of-wye': 'two-legs-of-wye',
  'system.single-phase-230': 'single-phase-230',
  'system.two-lives-230': 'two-lives-230',
  'system.three-phase-230-400': 'three-phase-230-400',
  'system.high-leg-delta': 'high-leg-delta',

  'current.ac': 'ac',
  'current.dc': 'dc',

  'proof.pressure-switch': 'pressure-switch',
  'proof.flow-switch': 'flow-switch',
  'proof.probe-pair': 'probe-pair',

  'reason.not visible': 'not visible',
  'reason.owner unsure': 'owner unsure',
  'reason.not measured': 'not measured',
  'reason.does not exist': 'does not exist',

  'touched.water': 'water',
  'touched.metal': 'metal',
  'touched.soil-spike': 'a spike in the soil',
  'touched.wet-slab': 'the wet slab',
  'touched.tub-earth': 'the earth of the tub',
  'list.or': 'or',
} as const satisfies Readonly<Record<ValueName, string>>
