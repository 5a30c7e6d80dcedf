import { FEED_FUNCTIONS, SYSTEMS } from '@tubwright/core'
import type { Read } from '@tubwright/formats'
import { readControlBox, readLanding, readSupplyDevice, readSurvey } from '@tubwright/formats'
import { describe, expect, it } from 'vitest'
import { BOXES, CATALOGUE, DEVICES, demo, TUBS } from './support/demo.ts'

/** A slip in a valid file: what is put in the place of what, and what has to be said of it. */
interface Slip {
  readonly name: string
  readonly from: string | RegExp
  readonly to: string
  /** `line:column code path`, then what is, what may be (its beginning), and what was meant. */
  readonly told: readonly (readonly [at: string, is: string, may: string, meant?: string])[]
}

const LANDING = `schema: landing/1
survey: everyday-240-circulation
box: heron-4
ends: { run.leg1@gf: gf.L1 }
jumpers: { J1: out }
settings: { profile: circulation-heats, currentLimit: 40 A }
`

function check(slips: readonly Slip[], text: string, read: (text: string) => Read<unknown>) {
  it('starts from a file that can be read', () => {
    expect(read(text).diagnostics).toEqual([])
  })
  it.each(slips)('$name', ({ from, to, told }) => {
    const slipped = text.replace(from, to)
    expect(slipped).not.toBe(text)
    const { value, diagnostics } = read(slipped)
    expect(value).toBeUndefined()
    const found = diagnostics.map(each => [
      `${each.line}:${each.column} ${[each.code, ...each.path].join(' ')}`,
      each.is,
      ...(each.didYouMean === undefined ? [] : [each.didYouMean]),
    ])
    expect(found).toEqual(told.map(([at, is, , meant]) => [at, is, ...(meant ? [meant] : [])]))
    told.forEach(([, , may], index) => {
      expect(diagnostics[index]?.may.slice(0, may.length)).toBe(may)
    })
  })
}

const KEYS = 'schema, id, title, note, region, supply, loads, bay, keypadHole'
const AMPS = 'a number and a unit, such as "12 A" (units: A, mA)'
const KINDS =
  'pump, circulation-pump, heater, ozonator, blower, light, audio, sanitiser, keypad, probe'
const BREAKER = '9:12 wrong-quantity supply breaker'
const WAYS = '{ from, to, source } or { oneOf, source } or { unknown }'
const PRINTED = 'characters that can be printed, on one line'

const keysAndNames: readonly Slip[] = [
  {
    name: 'a misspelt key, and what it leaves missing',
    from: 'region:',
    to: 'regoin:',
    told: [
      ['1:1 missing-key region', 'missing', 'US, CA, UK, EU, AU, NZ'],
      ['5:1 unknown-key regoin', '"regoin"', KEYS, 'region'],
    ],
  },
  {
    name: 'a key that is like none',
    from: 'title:',
    to: 'colour: red\ntitle:',
    told: [['3:1 unknown-key colour', '"colour"', KEYS]],
  },
  {
    name: 'an unknown key and an unknown name at once',
    from: /title:([\s\S]*)from: L1 \}/,
    to: 'colour: red\ntitle:$1from: L9 }',
    told: [
      ['3:1 unknown-key colour', '"colour"', KEYS],
      ['21:73 unknown-name supply cables 0 conductors 0 from', '"L9"', 'a terminal: L1, N, L2'],
    ],
  },
  {
    name: 'a key twice',
    from: 'region: US',
    to: 'region: US\nregion: CA',
    told: [['6:1 duplicate-name region', 'written a second time', 'one place']],
  },
  {
    name: 'a merge key',
    from: 'region: US',
    to: '<<: { region: US }',
    told: [
      ['1:1 missing-key region', 'missing', 'US'],
      ['5:1 unknown-key <<', '"<<"', KEYS],
    ],
  },
  {
    name: 'a key of the language beneath',
    from: 'region: US',
    to: 'constructor: 1\nregion: US',
    told: [['5:1 unknown-key constructor', '"constructor"', KEYS]],
  },
  {
    name: 'a key that would be swallowed',
    from: "pins: { '1': hot",
    to: 'pins: { __proto__: hot',
    told: [['49:51 unknown-key loads 1 plug pins __proto__', '"__proto__"', 'any other name']],
  },
  {
    name: 'a key of free choice, too long',
    from: "pins: { '1': hot",
    to: "pins: { '123456789': hot",
    told: [
      ['49:51 unknown-key loads 1 plug pins 123456789', '"123456789"', 'at most 8 characters'],
    ],
  },
  {
    name: 'an unknown device',
    from: 'device: ground-fault-breaker-2',
    to: 'device: ground-fault-braker-2',
    told: [
      [
        '12:25 unknown-name supply devices 0 device',
        '"ground-fault-braker-2"',
        'a supply device: breaker-2-plain, cord-plug-ground-fault',
        'ground-fault-breaker-2',
      ],
    ],
  },
  {
    name: 'an unknown terminal: another number is no slip',
    from: 'from: L1 }',
    to: 'from: L9 }',
    told: [
      [
        '20:73 unknown-name supply cables 0 conductors 0 from',
        '"L9"',
        'a terminal: L1, N, L2, NB, EB',
      ],
    ],
  },
  {
    name: 'an unknown lead',
    from: 'across: [high, common]',
    to: 'across: [hihg, common]',
    told: [
      [
        '36:30 unknown-name loads 0 circuits 0 across 0',
        '"hihg"',
        'a lead of this load: high, low, common, earth',
        'high',
      ],
    ],
  },
  {
    name: 'a load twice',
    from: 'id: pump-b',
    to: 'id: pump-a',
    told: [['39:9 duplicate-name loads 1 id', '"pump-a" a second time', 'a name of its own']],
  },
  {
    name: 'an id that is a number',
    from: 'id: pump-b',
    to: 'id: 2',
    told: [['39:9 wrong-type loads 1 id', '2', 'a letter, then letters, digits or hyphens', 'v2']],
  },
  {
    name: 'an id that begins with a digit',
    from: 'id: pump-b',
    to: 'id: 2pump',
    told: [['39:9 wrong-value loads 1 id', '"2pump"', 'a letter, then letters, digits', 'v2pump']],
  },
]

const values: readonly Slip[] = [
  {
    name: 'a number without a unit',
    from: 'breaker: 50 A',
    to: 'breaker: 50',
    told: [[BREAKER, '50', AMPS]],
  },
  {
    name: 'a number as text, without a unit',
    from: 'breaker: 50 A',
    to: "breaker: '50'",
    told: [[BREAKER, '"50"', AMPS]],
  },
  {
    name: 'a unit of something else',
    from: 'breaker: 50 A',
    to: 'breaker: 50 V',
    told: [[BREAKER, '"50 V"', AMPS]],
  },
  {
    name: 'a unit in small letters',
    from: 'breaker: 50 A',
    to: 'breaker: 50 a',
    told: [[BREAKER, '"50 a"', AMPS, '50 A']],
  },
  {
    name: 'an absurd number',
    from: 'breaker: 50 A',
    to: 'breaker: 5e9 A',
    told: [[BREAKER, '"5e9 A"', 'above 0 A, up to 1000 A']],
  },
  {
    name: 'a number below zero',
    from: 'breaker: 50 A',
    to: 'breaker: -5 A',
    told: [[BREAKER, '"-5 A"', 'above 0 A, up to 1000 A']],
  },
  {
    name: 'no value at all',
    from: 'breaker: 50 A',
    to: 'breaker:',
    told: [['9:11 wrong-quantity supply breaker', 'empty', AMPS]],
  },
  {
    name: 'an octal number of old',
    from: 'breaker: 50 A',
    to: 'breaker: 012',
    told: [[BREAKER, '12', AMPS]],
  },
  {
    name: 'a number with an underscore',
    from: 'breaker: 50 A',
    to: 'breaker: 1_000 A',
    told: [[BREAKER, '"1_000 A"', AMPS]],
  },
  {
    name: 'yes for true',
    from: '      to: box',
    to: '      to: box\n      moulded: yes',
    told: [['18:16 wrong-type supply cables 0 moulded', '"yes"', 'true or false']],
  },
  {
    name: 'a conductor size without a gauge',
    from: '6 AWG',
    to: '6',
    told: [
      [
        '20:45 wrong-quantity supply cables 0 conductors 0 size',
        '6',
        'a gauge such as "6 AWG" (1, 2, 3',
      ],
    ],
  },
  {
    name: 'a power factor above one',
    from: 'powerFactor: 0.9',
    to: 'powerFactor: 1.9',
    told: [['36:72 wrong-value loads 0 circuits 0 powerFactor', '1.9', 'at most 1']],
  },
  {
    name: 'a power factor that is no number',
    from: 'powerFactor: 0.9',
    to: 'powerFactor: .nan',
    told: [['36:72 wrong-type loads 0 circuits 0 powerFactor', 'NaN', 'a number']],
  },
  {
    name: 'a word that is none of some',
    from: 'split-phase',
    to: 'splitphase',
    told: [['7:11 wrong-value supply system', '"splitphase"', SYSTEMS.join(', '), 'split-phase']],
  },
  {
    name: 'a kind that is none of some',
    from: 'kind: pump',
    to: 'kind: pmp',
    told: [['25:11 wrong-value loads 0 kind', '"pmp"', KINDS, 'pump']],
  },
  {
    name: 'no kind',
    from: '- kind: pump\n    id',
    to: '- id',
    told: [['25:5 missing-key loads 0 kind', 'missing', KINDS]],
  },
  {
    name: 'one lead for two',
    from: 'across: [high, common]',
    to: 'across: [high]',
    told: [['36:29 wrong-value loads 0 circuits 0 across', '1 entry long', 'at least 2 entries']],
  },
  {
    name: 'a label too long',
    from: 'label: LED light',
    to: `label: ${'x'.repeat(100)}`,
    told: [['77:12 wrong-value loads 4 label', '100 characters long', 'at most 80 characters']],
  },
  {
    name: 'a length in place of a size',
    from: /bay: .*/,
    to: 'bay: 600 mm',
    told: [['85:6 wrong-type bay', '"600 mm"', 'keys and values: width, height, depth']],
  },
  {
    name: 'loads that are no list, no keys, no load',
    from: /loads:[\s\S]*/,
    to: 'loads: [a, {}, 3]',
    told: [
      ['24:9 wrong-type loads 0', '"a"', 'keys and values'],
      ['24:12 missing-key loads 1 kind', 'missing', KINDS],
      ['24:16 wrong-type loads 2', '3', 'keys and values'],
    ],
  },
  {
    name: 'another kind of file: only that is said',
    from: 'survey/1',
    to: 'landing/1',
    told: [['1:9 wrong-value schema', '"landing/1"', 'survey/1']],
  },
]

const contradictions: readonly Slip[] = [
  {
    name: 'a second leg in a supply of one',
    from: 'system: split-phase',
    to: 'system: single-leg',
    told: [
      [
        '21:33 contradiction supply cables 0 conductors 1 function',
        '"leg2" in a single-leg supply',
        'leg1, neutral, earth',
      ],
    ],
  },
  {
    name: 'amps and power both',
    from: 'amps: 10.0 A,',
    to: 'amps: 10.0 A, power: 1 kW,',
    told: [['36:9 contradiction loads 0 circuits 0', 'amps and power both', 'amps, or power;']],
  },
  {
    name: 'neither amps nor power',
    from: 'amps: 10.0 A, ',
    to: '',
    told: [['36:9 missing-key loads 0 circuits 0', 'neither amps nor power', 'amps, or power;']],
  },
  {
    name: 'a range the wrong way round',
    from: 'breaker: 50 A',
    to: 'breaker: { from: 60 A, to: 50 A, source: plate }',
    told: [
      [
        '9:20 contradiction supply breaker from',
        '"60 A", above its end "50 A"',
        'from "50 A" to "60 A", the lesser first',
      ],
    ],
  },
  {
    name: 'a range without a unit',
    from: 'breaker: 50 A',
    to: 'breaker: { from: 50, to: 60 A, source: plate }',
    told: [['9:20 wrong-quantity supply breaker from', '50', AMPS]],
  },
  {
    name: 'a reason that is none of some',
    from: 'breaker: 50 A',
    to: 'breaker: { unknown: not visble }',
    told: [
      [
        '9:23 wrong-value supply breaker unknown',
        '"not visble"',
        'not visible, owner unsure',
        'not visible',
      ],
    ],
  },
  {
    name: 'a misspelt way to say unknown',
    from: 'breaker: 50 A',
    to: 'breaker: { unknwon: not visible }',
    told: [['9:12 wrong-value supply breaker', 'keys and values (unknwon)', WAYS, 'unknown']],
  },
  {
    name: 'one of a single value',
    from: 'breaker: 50 A',
    to: 'breaker: { oneOf: [50 A], source: plate }',
    told: [['9:21 wrong-value supply breaker oneOf', '1 entry long', 'at least 2 entries']],
  },
  {
    name: 'a breaker of nothing',
    from: 'breaker: 50 A',
    to: 'breaker: 0 A',
    told: [['9:12 wrong-quantity supply breaker', '"0 A"', 'above 0 A, up to 1000 A']],
  },
]

const yaml: readonly Slip[] = [
  {
    name: 'a bracket left open',
    from: '[high, common]',
    to: '[high, common',
    told: [
      [
        '36:75 yaml-syntax',
        'Flow sequence in block collection must be sufficiently indented and end with a ]',
        'the keys of one thing in one column',
      ],
      [
        '37:7 yaml-syntax',
        'Flow map in block collection must be sufficiently indented and end with a }',
        'the keys of one thing in one column',
      ],
    ],
  },
  {
    name: 'two documents',
    from: 'bay:',
    to: '---\nbay:',
    told: [['85:1 yaml-syntax', 'a second document begins', 'one document in one file']],
  },
  {
    name: 'an alias of nothing',
    from: 'region: US',
    to: 'region: *x',
    told: [['5:9 yaml-syntax region', '*x of nothing', 'an alias of an anchor']],
  },
  {
    name: 'an alias inside what it stands for',
    from: 'bay:',
    to: 'x: &a [*a]\nbay:',
    told: [['85:8 yaml-syntax x 0', '*a inside what it stands for', 'an alias of an anchor']],
  },
  {
    name: 'a tag',
    from: 'breaker: 50 A',
    to: 'breaker: !!binary aGk=',
    told: [
      ['9:21 yaml-syntax supply breaker', 'the tag !!binary', 'text, numbers, lists and keys'],
    ],
  },
  {
    name: 'the YAML of old, where yes is true',
    from: 'schema:',
    to: '%YAML 1.1\n---\nschema:',
    told: [['1:1 yaml-syntax', 'the directive %YAML 1.1', 'YAML 1.2']],
  },
  {
    name: 'an escape sequence in a label',
    from: 'label: LED light',
    to: 'label: "LED\\e[31m"',
    told: [['77:12 wrong-value loads 4 label', 'text with the character U+001B', PRINTED]],
  },
  {
    name: 'a line break that would forge a line of ours',
    from: 'label: LED light',
    to: 'label: "LED\\nIt holds."',
    told: [['77:12 wrong-value loads 4 label', 'text of several lines', PRINTED]],
  },
  {
    name: 'a NUL byte',
    from: 'label: LED light',
    to: 'label: LED\u0000light',
    told: [['77:12 wrong-value loads 4 label', 'text with the character U+0000', PRINTED]],
  },
  {
    name: 'a sign that turns the reading direction',
    from: 'label: LED light',
    to: 'label: LED\u202elight',
    told: [['77:12 wrong-value loads 4 label', 'text with the character U+202E', PRINTED]],
  },
]

const readTub = (text: string) => readSurvey('tub.yaml', text, CATALOGUE)
const TUB = demo(TUBS, 'everyday-240-circulation')

/** A strange value in a valid file, and the warning beside the value that is read all the same. */
const unlikely: readonly (readonly [from: string, to: string, told: string])[] = [
  ['powerFactor: 0.9', 'powerFactor: 0.1', '36:72 loads.0.circuits.0.powerFactor 0.1'],
  ['25 mohm', '1000 ohm', '10:20 supply.sourceImpedance "1000 ohm"'],
  ['breaker: 50 A', 'breaker: 500 A', '9:12 supply.breaker "500 A"'],
  ['breaker: 50 A', 'breaker: 50 mA', '9:12 supply.breaker "50 mA"'],
  [
    'breaker: 50 A',
    'breaker: { from: 50 A, to: 500 A, source: lever }',
    '9:30 supply.breaker.to "500 A"',
  ],
  [
    'breaker: 50 A',
    'breaker: { oneOf: [50 A, 500 A], source: lever }',
    '9:28 supply.breaker.oneOf.1 "500 A"',
  ],
  ['length: 35 ft', 'length: 350 m', '18:15 supply.cables.0.length "350 m"'],
  ['amps: 10.0 A', 'amps: 101 A', '36:51 loads.0.circuits.0.amps "101 A"'],
  ['power: 6 W', 'power: 25 kW', '83:52 loads.4.circuits.0.power "25 kW"'],
  ['width: 600 mm', 'width: 600 m', '85:15 bay.width "600 m"'],
  ['height: 70 mm', 'height: 70 m', '86:38 keypadHole.height "70 m"'],
]

describe('what is hardly ever met in a survey', () => {
  it.each(unlikely)('%s as %s', (from, to, wanted) => {
    const slipped = TUB.replace(from, to)
    expect(slipped).not.toBe(TUB)
    const { value, diagnostics } = readTub(slipped)
    expect(value).toBeDefined()
    const told = diagnostics.map(
      each => `${each.line}:${each.column} ${each.path.join('.')} ${each.is}`,
    )
    expect(told).toEqual([wanted])
    expect(diagnostics[0]).toMatchObject({ code: 'implausible', severity: 'warning' })
  })

  it.each([
    ['powerFactor: 0.9', 'powerFactor: 0.2'],
    ['25 mohm', '2 ohm'],
    ['breaker: 50 A', 'breaker: 200 A'],
    ['length: 35 ft', 'length: 300 m'],
    ['amps: 10.0 A', 'amps: 100 A'],
  ])('stops short of %s as %s', (from, to) => {
    expect(readTub(TUB.replace(from, to)).diagnostics).toEqual([])
  })

  it.each([
    ['powerFactor: 0.9', 'powerFactor: 0'],
    ['powerFactor: 0.9', 'powerFactor: -0.9'],
    ['powerFactor: 0.9', 'powerFactor: 1.1'],
    ['25 mohm', '0 ohm'],
    ['length: 35 ft', 'length: -35 ft'],
  ])('never softens %s as %s, which cannot be', (from, to) => {
    const { value, diagnostics } = readTub(TUB.replace(from, to))
    expect(value).toBeUndefined()
    expect(diagnostics.map(each => each.severity)).toEqual([undefined])
  })

  it('stands beside the errors of the same text', () => {
    const slipped = TUB.replace('25 mohm', '3 ohm').replace('from: L1 }', 'from: L9 }')
    const { value, diagnostics } = readTub(slipped)
    expect(value).toBeUndefined()
    expect(diagnostics.map(each => each.code)).toEqual(['implausible', 'unknown-name'])
  })

  it('is told of what a box supplies, too', () => {
    const { value, diagnostics } = readControlBox(
      'b',
      demo(BOXES, 'heron-4').replace('power: 5.5 kW', 'power: 25 kW'),
    )
    expect(value).toBeDefined()
    expect(diagnostics.map(each => each.code)).toEqual(['implausible'])
  })

  it('is not told of the demo', () => {
    for (const [name, text] of TUBS)
      expect(readSurvey(name, text, CATALOGUE).diagnostics).toEqual([])
    for (const [name, text] of BOXES) expect(readControlBox(name, text).diagnostics).toEqual([])
  })
})

describe('keys and names of a survey', () => check(keysAndNames, TUB, readTub))
describe('values of a survey', () => check(values, TUB, readTub))
describe('contradictions in a survey', () => check(contradictions, TUB, readTub))
describe('YAML of a survey', () => check(yaml, TUB, readTub))

const box: readonly Slip[] = [
  {
    name: 'a limit that is not offered',
    from: /factory: \d+ A/,
    to: 'factory: 41 A',
    told: [['154:12 contradiction currentLimit factory', '"41 A"', 'one of those offered: 12 A']],
  },
  {
    name: 'a kind of part',
    from: 'kind: fuse',
    to: 'kind: fuze',
    told: [['54:23 wrong-value board parts 0 kind', '"fuze"', 'fuse, contact, pole', 'fuse']],
  },
  {
    name: 'a key within a part',
    from: 'rated: { resistive:',
    to: 'rated: { resitive:',
    told: [
      ['57:55 missing-key board parts 3 rated resistive', 'missing', AMPS],
      [
        '57:64 unknown-key board parts 3 rated resitive',
        '"resitive"',
        'resistive, motor',
        'resistive',
      ],
    ],
  },
  {
    name: 'a part that is not there',
    from: 'closes: [R1]',
    to: 'closes: [R11]',
    told: [['126:53 unknown-name commands 0 closes 0', '"R11"', 'a contact: R1, R2']],
  },
  {
    name: 'a feed conductor that is none',
    from: 'lands: { leg1: A1',
    to: 'lands: { leg9: A1',
    told: [['105:14 unknown-key feeds 0 lands leg9', '"leg9"', FEED_FUNCTIONS.join(', ')]],
  },
  {
    name: 'a command that is not there',
    from: 'heat: heat',
    to: 'heat: het',
    told: [['135:7 unknown-name heat', '"het"', 'a command: pump-a-high', 'heat']],
  },
  {
    name: 'a place without a unit',
    from: 'at: [14 mm',
    to: 'at: [14',
    told: [['16:143 wrong-quantity board terminals 0 at 0', '14', 'a number and a unit']],
  },
]
const jumper = (position: string, factory: string): string => `  jumpers:
    - id: J9
      label: volts
      positions:
        - { id: ${position}, label: 120 V, joins: [[L1, N]] }
        - { id: v240, label: 240 V, joins: [[L1, L2]] }
      factory: ${factory}
      rated: 20 A
`
describe('a jumper', () => {
  it.each(['120', '"120"'])('whose position is %s is told what it can be at once', written => {
    const text = demo(BOXES, 'heron-4').replace(/^ {2}jumpers:\n/mu, jumper(written, 'v240'))
    const { diagnostics } = readControlBox('b', text)
    expect(diagnostics).toMatchObject([
      { path: ['board', 'jumpers', 0, 'positions', 0, 'id'], didYouMean: 'v120' },
    ])
    expect(diagnostics[0]?.may).not.toContain('"120"')
  })

  it('that comes in a position named by a number, too', () => {
    const text = demo(BOXES, 'heron-4').replace(/^ {2}jumpers:\n/mu, jumper('v120', '240'))
    expect(readControlBox('b', text).diagnostics).toMatchObject([
      { path: ['board', 'jumpers', 0, 'factory'], is: '240', didYouMean: 'v240' },
    ])
  })
})
describe('a box', () => check(box, demo(BOXES, 'heron-4'), text => readControlBox('b', text)))

const device: readonly Slip[] = [
  {
    name: 'a pole that is not there and a node twice under other names',
    from: /sums: \[P1([\s\S]*)neutral: N-BAR/,
    to: 'sums: [P9$1nutral: N-BAR',
    told: [
      ['20:44 unknown-name board parts 3 sums 0', '"P9"', 'a part of this board: P1, P2, PN'],
      ['21:36 unknown-key fedAt nutral', '"nutral"', FEED_FUNCTIONS.join(', '), 'neutral'],
    ],
  },
]
describe('a supply device', () =>
  check(device, demo(DEVICES, 'ground-fault-breaker-2'), text => readSupplyDevice('d', text)))

const landing: readonly Slip[] = [
  {
    name: 'a jumper whose name begins with a digit',
    from: 'J1: out',
    to: '1J: out',
    told: [['5:12 unknown-key jumpers 1J', '"1J"', 'a letter, then letters, digits', 'v1J']],
  },
  {
    name: 'a current limit without a unit',
    from: '40 A',
    to: '40',
    told: [['6:55 wrong-quantity settings currentLimit', '40', AMPS]],
  },
  {
    name: 'no ends',
    from: /ends.*\n/,
    to: '',
    told: [['1:1 missing-key ends', 'missing', 'keys and values']],
  },
  {
    name: 'ends as a list',
    from: /ends.*\n/,
    to: 'ends: [gf.L1]\n',
    told: [['4:7 wrong-type ends', 'a list of 1', 'keys and values']],
  },
]
describe('a landing', () => check(landing, LANDING, text => readLanding('l', text)))

describe('whole texts', () => {
  const codes = (text: string) =>
    readTub(text).diagnostics.map(each => `${each.line}:${each.column} ${each.code} ${each.is}`)

  it.each([
    ['nothing', '', '1:1 wrong-type empty'],
    ['a comment', '# nothing\n', '1:1 wrong-type empty'],
    ['a word', 'hello', '1:1 wrong-type "hello"'],
    ['a list', '- a', '1:1 wrong-type a list of 1'],
    ['more than a megabyte', '#'.repeat(1_000_001), '1:1 too-large 1000001 characters'],
    ['100,000 brackets', '['.repeat(100_000), '1:100 too-large more than 100 levels deep'],
    ['100,000 lists in lists', '- '.repeat(100_000), '1:199 too-large more than 100 levels deep'],
    [
      'a million closing brackets',
      ']'.repeat(999_999),
      '1:100000 too-large more than 100000 words and signs',
    ],
    [
      'anchors and aliases without end',
      Array.from({ length: 40_000 }, (_, index) => `- &a${index} x\n- *a${index}`).join('\n'),
      '102:3 too-many-aliases more than 50 aliases',
    ],
    [
      'a billion laughs',
      'a: &a [x,x,x]\nb: &b [*a,*a,*a]\nc: &c [*b,*b,*b]\nd: &d [*c,*c,*c]\ne: [*d,*d,*d]',
      '5:11 too-many-aliases aliases of aliases, which multiply',
    ],
  ])('refuses %s at once', (_, text, told) => {
    const start = performance.now()
    expect(codes(text)).toEqual([told])
    expect(performance.now() - start).toBeLessThan(8000)
  })

  it('tells a tab where it stands', () => {
    const tabbed = TUB.replace('  frequency: 60 Hz', '\tfrequency: 60 Hz')
    expect(codes(tabbed)[0]).toBe('8:1 yaml-syntax Tabs are not allowed as indentation')
  })

  it.each([
    ['deeper', 'a:\n  jumpers: []\n    - id: J1\n      label: x\n  z: 1\n', '3:5'],
    ['in one column', 'a:\n  jumpers: []\n  - id: J1\n    label: x\n  z: 1\n', '3:3'],
    ['at the edge', 'jumpers: []\n- id: J1\n  label: y\n', '2:1'],
    [
      'past comments',
      'jumpers: [] # none\n  # but\n\n  - { id: J1, b: 2 }\n  - { id: J2 }\n',
      '4:3',
    ],
  ])('tell a list below [], %s, once at its first dash', (_, text, at) => {
    expect(codes(text)).toEqual([`${at} yaml-syntax a list below []`])
  })

  it.each(['jumpers: [a]\n  - b\n', 'jumpers: a []\n  - b: 1\n'])(
    'never call %j a list below []',
    text => {
      expect(codes(text).join()).not.toContain('below []')
    },
  )

  it.each([
    ['a byte-order mark', (text: string) => `\ufeff${text}`],
    ['line ends of another system', (text: string) => text.replaceAll('\n', '\r\n')],
    ['other scripts', (text: string) => text.replace('LED light', '灯 💡 Свет ضوء')],
    [
      'an alias',
      (text: string) =>
        text.replace('id: pump-a', 'id: &name pump-a').replace('three-way square plug', '*name'),
    ],
  ])('reads %s', (_, change) => {
    const changed = change(TUB)
    expect(changed).not.toBe(TUB)
    expect(readTub(changed).diagnostics).toEqual([])
  })

  it('tells at most a hundred, in the order of the text', () => {
    const { diagnostics } = readTub(
      Array.from({ length: 5000 }, (_, index) => `k${index}: 1`).join('\n'),
    )
    expect(diagnostics).toHaveLength(100)
    const lines = diagnostics.map(each => each.line)
    expect(lines).toEqual(lines.toSorted((a, b) => a - b))
  })

  it('reads every file of the demo', () => {
    for (const [name, text] of TUBS) expect(readSurvey(name, text, CATALOGUE).value).toBeDefined()
    for (const [name, text] of BOXES) expect(readControlBox(name, text).value).toBeDefined()
    expect(CATALOGUE.size).toBe(DEVICES.size)
  })
})
