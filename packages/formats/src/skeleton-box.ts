import type { FeedKind, OutputKind, SkeletonAnswers } from './skeleton-answers.ts'
import { PUMP_OF } from './skeleton-answers.ts'

type Entry = Readonly<Record<string, unknown>>
type Amps = Readonly<Record<string, string>>

/** One output of a skeleton: what it is called, what hangs on it, what it is counted with. */
interface Output {
  readonly kind: OutputKind
  readonly id: string
  readonly label: string
  readonly takes: string
  /** The letter before its terminals' numbers. */
  readonly letter: string
  /** Lead function → command. */
  readonly leads: Readonly<Record<string, string>>
  readonly amps: Amps
  readonly isPump: boolean
}

const LEAST_LIMIT = 12 // [A] of the usual ones

/** What differs between boxes for 120 V legs and for 230 V. */
interface Family {
  readonly line: string
  readonly returns: string
  readonly volts: string
  readonly controlVolts: string
  readonly heater: string
  readonly heatAmps: string
  readonly breaker: string
  readonly pumpAmps: string
  /** What the box counts for a pump of one speed. */
  readonly oneSpeed: string
  readonly limits: readonly string[]
  readonly sizes: readonly [least: string, most: string]
  readonly lead: string
}

const TWO_LEGS: Family = {
  line: 'L1',
  returns: 'L2',
  volts: '240 V',
  controlVolts: '120 V',
  heater: '5.5 kW',
  heatAmps: '23 A',
  breaker: '50 A',
  pumpAmps: '20 A',
  oneSpeed: '11 A',
  limits: ['16 A', '24 A', '32 A', '40 A'],
  sizes: ['12 AWG', '6 AWG'],
  lead: '10 AWG',
}
const ONE_LEG: Family = {
  ...TWO_LEGS,
  returns: 'N',
  volts: '120 V',
  heater: '1.3 kW',
  heatAmps: '11 A',
  breaker: '20 A',
  pumpAmps: '16 A',
  oneSpeed: '4 A',
  limits: ['12 A', '16 A'],
  sizes: ['14 AWG', '8 AWG'],
  lead: '12 AWG',
}
const ONE_PHASE: Family = {
  ...ONE_LEG,
  line: 'L',
  volts: '230 V',
  controlVolts: '230 V',
  heater: '3 kW',
  heatAmps: '13 A',
  breaker: '32 A',
  limits: ['12 A', '16 A', '24 A'],
  sizes: ['2.5 mm2', '10 mm2'],
  lead: '2.5 mm2',
}

const familyOf = ({ feeds }: SkeletonAnswers): Family =>
  feeds.includes('two-legs') ? TWO_LEGS : feeds.includes('one-leg') ? ONE_LEG : ONE_PHASE

const FEEDS = {
  'two-legs': {
    label: '120/240 V, two legs, neutral and earth',
    system: 'split-phase',
    lands: { leg1: 'A1', neutral: 'A2', leg2: 'A3', earth: 'A4' },
  },
  'one-leg': {
    label: '120 V, one leg, neutral and earth',
    system: 'single-leg',
    lands: { leg1: 'A1', neutral: 'A2', earth: 'A4' },
  },
  'one-phase-230': {
    label: '230 V, line, neutral and earth',
    system: 'single-phase-230',
    lands: { leg1: 'A1', neutral: 'A2', earth: 'A4' },
  },
} as const satisfies Readonly<Record<FeedKind, Entry>>

const SINGLE = {
  'circulation-pump': ['circulation', 'Circulation pump', 'D', 'circulate', '1 A'],
  ozonator: ['ozone', 'Ozone', 'E', 'ozone', '0.5 A'],
  blower: ['blower', 'Blower', 'G', 'blower', '4 A'],
  light: ['light', 'Light', 'Q', 'light', ''],
} as const

function outputOf(kind: OutputKind, pump: number, { oneSpeed }: Family): Output {
  if (kind !== 'two-speed-pump' && kind !== 'one-speed-pump') {
    const [id, label, letter, command, amps] = SINGLE[kind]
    const counted: Amps = amps === '' ? {} : { [command]: amps }
    return {
      kind,
      id,
      label,
      takes: kind,
      letter,
      leads: { hot: command },
      amps: counted,
      isPump: false,
    }
  }
  const name = 'ABC'.charAt(pump)
  const id = `pump-${name.toLowerCase()}`
  const pumped = {
    kind,
    id,
    label: `Pump ${name}`,
    takes: 'pump',
    letter: `P${name}`,
    isPump: true,
  }
  return kind === 'one-speed-pump'
    ? { ...pumped, leads: { hot: id }, amps: { [id]: oneSpeed } }
    : {
        ...pumped,
        leads: { high: `${id}-high`, low: `${id}-low` },
        amps: { [`${id}-high`]: '11 A', [`${id}-low`]: '3 A' },
      }
}

function outputsOf({ outputs }: SkeletonAnswers, family: Family): readonly Output[] {
  let pumps = 0
  return outputs.map(kind => outputOf(kind, kind.endsWith('-speed-pump') ? pumps++ : 0, family))
}

/** The usual limits; where everything together stays below them, two that make a difference. */
function limitsOf(family: Family, feeds: number, outputs: readonly Output[]): readonly string[] {
  const counted = [family.heatAmps, ...outputs.flatMap(each => Object.values(each.amps)[0] ?? [])]
  const total = counted.reduce((sum, each) => sum + Number.parseFloat(each), 0)
  if (total <= LEAST_LIMIT) return [`${Math.floor(total) - 2} A`, `${Math.ceil(total)} A`]
  return feeds > 1 ? [`${LEAST_LIMIT} A`, ...family.limits] : family.limits
}

/** The lists of a box, each entry as it is written. */
export interface SkeletonBox {
  readonly family: Family
  readonly frequency: string
  readonly regions: readonly string[]
  readonly width: number
  readonly terminals: readonly Entry[]
  readonly connectors: readonly Entry[]
  readonly parts: readonly Entry[]
  readonly jumpers: readonly Entry[]
  readonly feeds: readonly Entry[]
  readonly places: readonly Entry[]
  readonly commands: readonly Entry[]
  readonly exclusive: readonly (readonly string[])[]
  readonly profiles: readonly Entry[]
  readonly sensors: readonly Entry[]
  readonly supplied: readonly Entry[]
}

const at = (x: number, y: number): readonly string[] => [`${x} mm`, `${y} mm`]
const PITCH = 12 // [mm]
const GAP = 6 // [mm]
const BOTTOM = 146 // [mm]
const LEFT = 30 // [mm] where the row of outputs begins

const shortNode = (output: Output, lead: string): string =>
  `${output.letter}-${lead === 'low' ? 'LO' : 'HI'}`

const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

/** The terminals of an output along the lower edge: its leads, its return, its earth. */
function mainsTerminals(output: Output, family: Family, from: number): readonly Entry[] {
  const { letter, label, leads, isPump } = output
  const rated = isPump ? family.pumpAmps : '10 A'
  const row = [
    ...Object.keys(leads).map(lead => [lead, shortNode(output, lead), 'mains']),
    ['return', isPump ? family.returns : 'N', 'mains'],
    ['earth', 'PE', 'earth'],
  ]
  return row.map(([name = '', node, kind], index) => ({
    id: `${letter}${index + 1}`,
    label: `${small(label)} ${name}`,
    node,
    class: kind,
    kind: 'tab',
    rated,
    at: at(from + index * PITCH, BOTTOM),
  }))
}

const widthOf = (output: Output): number => (Object.keys(output.leads).length + 2) * PITCH

function lowTerminals(x: number, hasLight: boolean): readonly Entry[] {
  const pair = (
    letter: string,
    label: string,
    [first, second]: readonly [string, string],
    [a, b]: readonly [string, string],
    y: number,
  ) => {
    const kind = letter === 'W' || letter === 'V' ? 'sensor' : 'low-voltage'
    const common = { class: kind, kind: 'pin', rated: letter === 'Q' ? '2 A' : '1 A' }
    return [
      { id: `${letter}1`, label: `${label} ${first}`, node: a, ...common, at: at(x, y) },
      { id: `${letter}2`, label: `${label} ${second}`, node: b, ...common, at: at(x, y + 10) },
    ]
  }
  const probe = ['signal', 'common'] as const
  return [
    ...pair('W', 'water probe', probe, ['SIG-W', 'LV-COM'], 20),
    ...pair('V', 'limit probe', probe, ['SIG-V', 'LV-COM'], 44),
    ...pair('KEY', 'keypad', ['supply', 'return'], ['LV', 'LV-COM'], 68),
    ...(hasLight ? pair('Q', 'light', ['supply', 'return'], ['LV-LT', 'LV-COM'], 92) : []),
  ]
}

function feedTerminals({ feeds }: SkeletonAnswers, family: Family): readonly Entry[] {
  const [from, to] = family.sizes
  const torque = family === ONE_PHASE ? '2 N·m' : '20 in-lb'
  const rows = [
    ['A1', 'line in', family.line, 'mains'],
    ['A2', 'neutral in', 'N', 'mains'],
    ...(feeds.includes('two-legs') ? [['A3', 'second leg in', 'L2', 'mains']] : []),
    ['A4', 'earth in', 'PE', 'earth'],
  ]
  return rows.map(([id, label, node, kind], index) => ({
    id,
    label,
    node,
    class: kind,
    kind: kind === 'earth' ? 'stud' : 'screw',
    holds: { from, to },
    torque,
    rated: family.breaker,
    at: at(14, 20 + index * 18),
  }))
}

function heaterTerminals({ heaterPoles }: SkeletonAnswers, family: Family): readonly Entry[] {
  const second = heaterPoles === 2 ? 'HT-2' : family.returns
  const row = [
    ['H1', 'heater stud 1', 'HT-1', 'mains'],
    ['H2', 'heater stud 2', second, 'mains'],
    ['H3', 'heater tube bond', 'PE', 'earth'],
  ]
  return row.map(([id, label, node, kind], index) => ({
    id,
    label,
    node,
    class: kind,
    kind: 'stud',
    rated: '30 A',
    at: at(60 + index * 28, 14),
  }))
}

/** The fuse node that an output hangs on. */
const fusedNode = ({ isPump, letter }: Output, { line }: Family): string =>
  isPump ? `${line}-${letter}` : `${line}-S`

/** One word that holds the id of no terminal: ids can be replaced word by word in any order. */
const contactId = ({ letter }: Output, lead: string): string =>
  `Relay${letter}${lead === 'hot' ? '' : lead}`

function partsOf(
  { heaterPoles }: SkeletonAnswers,
  family: Family,
  outputs: readonly Output[],
): readonly Entry[] {
  const { line, returns, pumpAmps, controlVolts } = family
  const mains = outputs.filter(each => each.id !== 'light')
  const pumps = mains.filter(each => each.isPump)
  const contact = (id: string, across: readonly string[], resistive: string, motor?: string) => ({
    id,
    kind: 'contact',
    across,
    rated: motor === undefined ? { resistive } : { resistive, motor },
  })
  return [
    ...pumps.map(each => ({
      id: `Fuse${each.letter}`,
      kind: 'fuse',
      across: [line, fusedNode(each, family)],
      rated: pumpAmps,
    })),
    { id: 'FuseH', kind: 'fuse', across: [line, `${line}-H`], rated: '30 A' },
    ...(mains.length > pumps.length
      ? [{ id: 'FuseS', kind: 'fuse', across: [line, `${line}-S`], rated: '10 A' }]
      : []),
    { id: 'FuseT', kind: 'fuse', across: [line, 'TR-P'], rated: '1 A' },
    ...mains.flatMap(each =>
      Object.keys(each.leads).map(lead =>
        contact(
          contactId(each, lead),
          [fusedNode(each, family), shortNode(each, lead)],
          each.isPump ? pumpAmps : '10 A',
          each.isPump ? '12 A' : '6 A',
        ),
      ),
    ),
    {
      id: 'RelayLimit',
      kind: 'contact',
      role: 'limit',
      across: [`${line}-H`, 'HT-F'],
      rated: { resistive: '30 A' },
    },
    contact('RelayHeat1', ['HT-F', 'HT-1'], '30 A'),
    ...(heaterPoles === 2 ? [contact('RelayHeat2', [returns, 'HT-2'], '30 A')] : []),
    {
      id: 'Transformer',
      kind: 'transformer',
      primary: ['TR-P', 'N'],
      secondary: ['LV', 'LV-COM'],
      volts: { primary: controlVolts, secondary: '12 V' },
      rated: '20 VA',
    },
    {
      id: 'Electronics',
      kind: 'electronics',
      across: ['LV', 'LV-COM'],
      volts: '12 V',
      power: '3 W',
    },
    ...(outputs.some(each => each.id === 'light')
      ? [contact('RelayQ', ['LV', 'LV-LT'], '2 A')]
      : []),
  ]
}

const LINK = {
  id: 'J1',
  label: 'link from neutral to the second-leg terminal',
  positions: [
    { id: 'in', label: 'link in', joins: [['N', 'L2']] },
    { id: 'out', label: 'link out', joins: [] },
  ],
  factory: 'out',
  rated: '40 A',
  at: at(30, 47),
}

function feedsOf(answers: SkeletonAnswers, outputs: readonly Output[]): readonly Entry[] {
  const isConvertible = answers.feeds.length > 1
  return answers.feeds.map(kind => ({
    id: kind,
    ...FEEDS[kind],
    ...(isConvertible ? { jumpers: { J1: kind === 'two-legs' ? 'out' : 'in' } } : {}),
    assumes: {
      ...Object.assign({}, ...outputs.map(each => each.amps)),
      heat: isConvertible && kind === 'one-leg' ? '11.5 A' : familyOf(answers).heatAmps,
    },
  }))
}

/** Terminals of an output by lead function. */
function landsOf({ letter, leads }: Output): Readonly<Record<string, string>> {
  const names = [...Object.keys(leads), 'common', ...(letter === 'Q' ? [] : ['earth'])]
  return Object.fromEntries(names.map((name, index) => [name, `${letter}${index + 1}`]))
}

function placesOf(outputs: readonly Output[]): readonly Entry[] {
  const probe = (id: string, label: string, letter: string) => ({
    id,
    label,
    takes: ['probe'],
    lands: { signal: `${letter}1`, common: `${letter}2` },
    connector: `S${letter}`,
  })
  return [
    ...outputs.map(each => ({
      id: each.id,
      label: each.label,
      takes: [each.takes],
      lands: landsOf(each),
      commands: each.leads,
      connector: `S${each.letter}`,
    })),
    {
      id: 'heater',
      label: 'Heater',
      takes: ['heater'],
      lands: { hot: 'H1', common: 'H2', earth: 'H3' },
      commands: { hot: 'heat' },
    },
    probe('water-probe', 'Water probe', 'W'),
    probe('limit-probe', 'Limit probe', 'V'),
    {
      id: 'keypad',
      label: 'Keypad',
      takes: ['keypad'],
      lands: { hot: 'KEY1', common: 'KEY2' },
      connector: 'SKEY',
    },
  ]
}

const SHAPES: Readonly<Record<string, string>> = {
  Q: 'two-way light plug',
  W: 'two-way sensor plug',
  V: 'two-way sensor plug',
  KEY: 'keypad plug',
}

function connectorsOf(places: readonly Entry[]): readonly Entry[] {
  return places.flatMap(({ connector, lands }) => {
    if (typeof connector !== 'string') return []
    const terminals = Object.values(lands as Readonly<Record<string, string>>)
    const shape = SHAPES[connector.slice(1)] ?? (terminals.length > 3 ? 'four-way' : 'three-way')
    return [
      {
        id: connector,
        shape: shape.endsWith('way') ? `${shape} plug` : shape,
        pins: Object.fromEntries(terminals.map((each, index) => [String(index + 1), each])),
      },
    ]
  })
}

function commandsOf({ heaterPoles }: SkeletonAnswers, outputs: readonly Output[]) {
  return [
    ...outputs.flatMap(each =>
      Object.entries(each.leads).map(([lead, id]) => ({
        id,
        label: lead === 'hot' ? small(each.label) : `${small(each.label)} ${lead}`,
        closes: [contactId(each, lead)],
      })),
    ),
    {
      id: 'heat',
      label: 'heat',
      closes: heaterPoles === 2 ? ['RelayHeat1', 'RelayHeat2'] : ['RelayHeat1'],
    },
  ]
}

function profilesOf({ profiles }: SkeletonAnswers, outputs: readonly Output[]): readonly Entry[] {
  const all = outputs.flatMap(each => Object.values(each.leads))
  return profiles.map((kind, index) => {
    const pump = outputs.find(each => each.kind === PUMP_OF[kind])
    const runs = pump?.leads['low'] ?? pump?.leads['hot'] ?? ''
    const keeps = kind === 'circulation' || !profiles.includes('circulation')
    const commands = all.filter(id => keeps || id !== 'circulate')
    return {
      id: `${kind}-heats`,
      label: `${pump?.label ?? ''} filters and heats`,
      entered: `small switch ${index + 1} up`,
      by: 'small-switches',
      commands: [...commands, 'heat'],
      heatsWith: [runs],
      filtersWith: [runs],
      ...(commands.includes('ozone') ? { follows: { ozone: runs } } : {}),
    }
  })
}

const SENSORS = [
  {
    id: 'water',
    label: 'water probe',
    terminals: ['W1', 'W2'],
    curve: '10k',
    reads: 'water',
    duty: 'control',
  },
  {
    id: 'limit',
    label: 'limit probe',
    terminals: ['V1', 'V2'],
    curve: '10k',
    reads: 'heater-outlet',
    duty: 'limit',
    opens: ['RelayLimit'],
    at: '48 °C',
  },
] as const

function suppliedOf(family: Family): readonly Entry[] {
  const thin = { size: '22 AWG', colour: 'black' }
  const lead = { size: family.lead, colour: 'black' }
  const probe = (id: string, place: string) => ({
    kind: 'probe',
    id,
    label: `${id.replace('-', ' ')} of the box`,
    curve: '10k',
    place,
    leads: [
      { id: 'signal', function: 'signal', ...thin, colour: 'white' },
      { id: 'common', function: 'common', ...thin },
    ],
    plug: { shape: 'two-way sensor plug', pins: { '1': 'signal', '2': 'common' } },
  })
  return [
    {
      kind: 'heater',
      id: 'heater',
      label: 'heater of the box',
      volts: family.volts,
      leads: [
        { id: 'hot', function: 'hot', ...lead },
        { id: 'common', function: 'common', ...lead },
        { id: 'earth', function: 'earth', ...lead, colour: 'green' },
      ],
      circuits: [{ id: 'element', across: ['hot', 'common'], power: family.heater }],
    },
    probe('water-probe', 'water'),
    probe('limit-probe', 'heater-outlet'),
    {
      kind: 'keypad',
      id: 'keypad',
      label: 'keypad of the box',
      volts: '12 V',
      leads: [
        { id: 'hot', function: 'hot', ...thin, colour: 'red' },
        { id: 'common', function: 'common', ...thin },
      ],
      circuits: [{ id: 'input', across: ['hot', 'common'], power: '1 W' }],
      plug: { shape: 'keypad plug', pins: { '1': 'hot', '2': 'common' } },
    },
  ]
}

/** A box that does what was answered, invented throughout. */
export function skeletonBox(answers: SkeletonAnswers): SkeletonBox {
  const family = familyOf(answers)
  const outputs = outputsOf(answers, family)
  const mains = outputs.filter(each => each.id !== 'light')
  let x = LEFT
  const row = mains.flatMap(each => {
    const terminals = mainsTerminals(each, family, x)
    x += widthOf(each) + GAP
    return terminals
  })
  const width = Math.max(200, x + 44)
  const isMetric = family === ONE_PHASE
  const isConvertible = answers.feeds.length > 1
  const limits = limitsOf(family, answers.feeds.length, outputs)
  const places = placesOf(outputs)
  return {
    family: { ...family, limits },
    frequency: isMetric ? '50 Hz' : '60 Hz',
    regions: isMetric ? ['UK', 'EU'] : ['US', 'CA'],
    width,
    terminals: [
      ...feedTerminals(answers, family),
      ...heaterTerminals(answers, family),
      ...row,
      ...lowTerminals(width - 14, outputs.length > mains.length),
    ],
    connectors: connectorsOf(places),
    parts: partsOf(answers, family, outputs),
    jumpers: isConvertible ? [LINK] : [],
    feeds: feedsOf(answers, outputs),
    places,
    commands: commandsOf(answers, outputs),
    exclusive: outputs.filter(each => 'low' in each.leads).map(each => Object.values(each.leads)),
    profiles: profilesOf(answers, outputs),
    sensors: SENSORS,
    supplied: suppliedOf(family),
  }
}
