import { readFileSync } from 'node:fs'
import type { LocatedFinding } from '@tubwright/formats'
import { lintText } from '@tubwright/formats'
import { tellLint } from '@tubwright/words'
import { describe, expect, it } from 'vitest'
import type { LintId } from '../../../../src/index.ts'
import { LINT_FINDINGS } from '../../../../src/index.ts'
import { demoDevices, demoIds, demoText } from '../../../support/demo.ts'
import type { Slip } from './slips.ts'
import { after, CONVERTIBLE, soundBox, spoilt } from './slips.ts'

function lint(text: string): readonly LocatedFinding[] {
  const { diagnostics, findings } = lintText('box.yaml', text, demoDevices)
  expect(diagnostics).toEqual([])
  return findings
}

interface Bad {
  readonly id: LintId
  readonly slips: readonly Slip[]
  /** What stands on the line that the finding points at. */
  readonly line: string
  /** Where it points within the line. */
  readonly at?: string
  readonly on?: string
}

const TWO_LEGS = soundBox()
const BOTH = soundBox(CONVERTIBLE)
const FEED = 'id: two-legs, label'
const NO_ASSUMES: Slip = [/assumes: \{[^}]*\}/u, 'assumesOn: {}']

/** An invented bad box for each finding. */
const BAD: readonly Bad[] = [
  {
    id: 'spot-taken',
    slips: [['at: [42 mm, 146 mm]', 'at: [30 mm, 146.2 mm]']],
    line: 'id: PA2',
    at: '[30 mm, 146.2 mm]',
  },
  {
    id: 'spot-taken',
    slips: [['at: [30 mm, 47 mm]', 'at: [14 mm, 38 mm]']],
    line: 'id: J1',
    on: BOTH,
  },
  {
    id: 'outside-board',
    slips: [['at: [42 mm, 146 mm]', 'at: [42 mm, 1460 mm]']],
    line: 'id: PA2',
  },
  { id: 'terminal-dead-end', slips: [['node: PA-LO', 'node: PA-L0']], line: 'PA2', at: 'PA-L0' },
  {
    id: 'terminal-below-contact',
    slips: [[/(node: D-HI.*)rated: 10 A/u, '$1rated: 6 A']],
    line: 'id: D1',
    at: '6 A',
  },
  {
    id: 'terminal-unused',
    slips: [
      after(
        'id: PA4',
        '    - { id: X9, node: PE, class: earth, kind: tab, rated: 20 A, at: [10 mm, 130 mm] }',
      ),
    ],
    line: 'id: X9',
  },
  {
    id: 'connector-misses-terminal',
    slips: [['"1": PB1, "2": PB2, "3": PB3', '"1": PB1, "2": PB2']],
    line: 'id: pump-b, label',
    at: 'PB3',
  },
  {
    id: 'connector-pin-elsewhere',
    slips: [['"1": PB1, "2": PB2, "3": PB3', '"1": PB1, "2": PB2, "3": PB3, "4": PA4']],
    line: 'id: SPB',
    at: 'PA4',
  },
  {
    id: 'supplied-plug-fits-no-socket',
    slips: [['      shape: keypad plug', '      shape: keypad ribbon plug']],
    line: 'shape: keypad ribbon plug',
    at: 'keypad ribbon plug',
  },
  {
    id: 'place-socket-other-shape',
    slips: [
      [/(id: SKEY, shape:) keypad plug/u, '$1 two-way light plug'],
      ['shape: keypad plug', 'shape: two-way sensor plug'],
    ],
    line: 'id: keypad, label: Keypad',
    at: 'SKEY',
  },
  { id: 'connector-unused', slips: [[', connector: SPB', '']], line: 'id: SPB' },
  { id: 'fuse-in-no-path', slips: [['[L1, L1-S]', '[L1, L1-SS]']], line: 'id: FuseS' },
  { id: 'fuse-in-no-path', slips: [['[L1, L1-S]', '[L1-S, L1-S]']], line: 'id: FuseS' },
  { id: 'no-fuse-in-path', slips: [['[L1-PB, PB-HI]', '[L1, PB-HI]']], line: 'id: pump-b, label' },
  {
    id: 'no-fuse-in-path',
    slips: [['primary: [TR-P, N]', 'primary: [L1, N]']],
    line: 'id: light, label: Light',
  },
  {
    id: 'contact-never-closed',
    slips: [['closes: [RelayHeat1, RelayHeat2]', 'closes: [RelayHeat1]']],
    line: 'id: RelayHeat2',
  },
  {
    id: 'contact-never-opened',
    slips: [[/(id: RelayE, kind: contact)/u, '$1, rest: closed']],
    line: 'id: RelayE',
  },
  {
    id: 'limit-contact-unsensed',
    slips: [[', opens: [RelayLimit], at', ', at']],
    line: 'id: RelayLimit',
  },
  {
    id: 'command-in-no-profile',
    slips: [
      [', light, heat], heatsWith: [circulate]', ', heat], heatsWith: [circulate]'],
      [', light, heat], heatsWith: [pump-a-low]', ', heat], heatsWith: [pump-a-low]'],
    ],
    line: 'id: light, label: light',
  },
  {
    id: 'command-of-no-output',
    slips: [[', commands: { hot: ozone }', '']],
    line: 'id: ozone, label: ozone',
  },
  {
    id: 'output-never-on',
    slips: [['[L1-PB, PB-HI]', '[L1-PX, PB-HI]']],
    line: 'id: pump-b, label',
    at: 'PB1',
  },
  {
    id: 'output-dead-on-feed',
    slips: [['jumpers: { J1: in }', 'jumpers: { J1: out }']],
    line: 'id: pump-a, label',
    on: BOTH,
  },
  {
    id: 'output-on-when-off',
    slips: [['closes: [RelayD]', 'closes: [RelayD, RelayPB]']],
    line: 'id: pump-b, label: Pump B',
  },
  {
    id: 'output-without-return',
    slips: [['lands: { hot: E1, common: E2, earth: E3 }', 'lands: { hot: E1, earth: E3 }']],
    line: 'id: ozone, label: Ozone',
  },
  { id: 'transformer-volts', slips: [['[TR-P, N]', '[TR-P, L2]']], line: 'id: Transformer' },
  {
    id: 'electronics-dead',
    slips: [
      [
        'secondary: [LV, LV-COM], volts: { primary: 120 V',
        'secondary: [LV, LV-COM], volts: { primary: 1000 V',
      ],
    ],
    line: FEED,
  },
  {
    id: 'jumper-shorts-feed',
    slips: [[', jumpers: { J1: out }', '']],
    line: 'id: J1',
    at: '{ id: in',
    on: BOTH,
  },
  {
    id: 'feed-shorted',
    slips: [[/(id: A3,.*)node: L2/u, '$1node: N']],
    line: FEED,
  },
  {
    id: 'command-shorts-feed',
    slips: [
      after(
        'id: RelayHeat2',
        '    - { id: R-X, kind: contact, across: [L2, N], rated: { resistive: 20 A } }',
      ),
      ['closes: [RelayE]', 'closes: [RelayE, R-X]'],
    ],
    line: FEED,
  },
  {
    id: 'feed-never-chosen',
    slips: [
      [/^( {2}- \{ id: )two-legs(, label: ")(.*)$/mu, '$1two-legs$2$3\n$1again$2once more, $3'],
    ],
    line: 'id: again',
  },
  {
    id: 'no-limit',
    slips: [
      [', role: limit', ''],
      [', opens: [RelayLimit]', ''],
      ['closes: [RelayHeat1', 'closes: [RelayLimit, RelayHeat1'],
    ],
    line: 'id: FusePA',
  },
  {
    id: 'limit-not-in-series',
    slips: [['across: [HT-F, HT-1]', 'across: [L1-H, HT-1]']],
    line: 'id: heater, label: Heater',
  },
  {
    id: 'limit-opens-nothing',
    slips: [
      after(
        'id: RelayLimit',
        '    - { id: R-LI2, kind: contact, role: limit, across: [L1-S, SPARE], rated: { resistive: 30 A } }',
      ),
      ['opens: [RelayLimit]', 'opens: [R-LI2]'],
      [
        'terminals: [W1, W2], curve: 10k, reads: water, duty: control',
        'terminals: [W1, W2], curve: 10k, reads: water, duty: control, opens: [RelayLimit]',
      ],
    ],
    line: 'id: limit, label: limit probe',
    at: '[R-LI2]',
  },
  {
    id: 'sensor-in-no-place',
    slips: [['terminals: [V1, V2]', 'terminals: [V1, W2]']],
    line: 'id: limit, label: limit probe',
  },
  {
    id: 'profile-like-another',
    slips: [[/^( {2}- \{ id: )(low-speed-heats)(.*)$/mu, '$1$2$3\n$1same$3']],
    line: 'id: same',
  },
  {
    id: 'profile-never-heats',
    slips: [['heatsWith: [pump-a-low]', 'heatsWith: []']],
    line: 'id: low-speed-heats',
  },
  {
    id: 'limit-like-another',
    slips: [['24 A, 32 A', '24 A, 24.1 A, 32 A']],
    line: 'offered',
    at: '24.1 A',
  },
  { id: 'limit-changes-nothing', slips: [NO_ASSUMES], line: 'offered' },
  {
    id: 'yield-never-fires',
    slips: [
      [/assumes:/u, 'heatYieldsTo: [heat2], assumes:'],
      after('id: heat, label', '  - { id: heat2, label: more heat, closes: [RelayHeat1] }'),
    ],
    line: FEED,
    at: 'heat2',
  },
  {
    id: 'yield-shed-anyway',
    slips: [
      [/assumes:/u, 'heatYieldsTo: [pump-b], assumes:'],
      ['pump-b: 11 A', 'pump-b: 20 A'],
    ],
    line: FEED,
    at: 'pump-b]',
  },
  {
    id: 'exclusive-never-fires',
    slips: [
      ['exclusive: [[', 'exclusive: [[circulate, heat2], ['],
      after('id: heat, label', '  - { id: heat2, label: more heat, closes: [RelayHeat1] }'),
    ],
    line: 'exclusive',
    at: '[circulate, heat2]',
  },
  {
    id: 'assumes-never-exceed',
    slips: [
      ['offered: [16 A, 24 A, 32 A, 40 A]', 'offered: [60 A, 70 A]'],
      ['factory: 16 A', 'factory: 60 A'],
    ],
    line: FEED,
  },
  {
    id: 'too-many-commands',
    slips: [
      [
        'light, heat], heatsWith: [circulate]',
        'light, heat, c1, c2, c3, c4, c5, c6], heatsWith: [circulate]',
      ],
      after(
        'id: heat, label',
        [1, 2, 3, 4, 5, 6]
          .map(each => `  - { id: c${each}, label: c${each}, closes: [RelayHeat1] }`)
          .join('\n'),
      ),
    ],
    line: 'id: circulation-heats',
  },
  {
    id: 'not-all-tried',
    slips: [
      [
        'jumpers: []',
        `jumpers:\n${[1, 2, 3, 4, 5, 6, 7, 8].map(each => `    - { id: J${each}, label: j, positions: [{ id: a, joins: [] }, { id: b, joins: [] }], factory: a, rated: 1 A }`).join('\n')}`,
      ],
    ],
    line: FEED,
  },
  {
    id: 'lead-in-no-circuit',
    slips: [
      [
        /( {6}- id: hot\n)/u,
        '      - id: spare\n        function: low\n        size: 10 AWG\n        colour: red\n$1',
      ],
    ],
    line: 'id: spare',
  },
  {
    id: 'plug-misses-lead',
    slips: [[/( {8}"1": signal\n) {8}"2": common\n/u, '$1']],
    line: 'id: common',
  },
]

/** Shown by tests of devices and surveys. */
const ELSEWHERE: readonly LintId[] = [
  'line-never-arrives',
  'lines-joined',
  'ground-fault-misses-line',
  'device-in-no-cable',
  'nothing-moves-water',
  'no-ground-fault-device',
  'still-unknown',
]

describe('a sound box', () => {
  it.each([TWO_LEGS, BOTH])('has nothing to be said of it', text => {
    expect(lint(text)).toEqual([])
  })
})

describe('a bad box', () => {
  it.each(BAD)('$id: $line', ({ id, slips, line, at, on = TWO_LEGS }) => {
    const text = spoilt(on, slips)
    const found = lint(text).filter(each => each.id === id)
    expect(found).not.toEqual([])
    const lines = text.split('\n')
    const told = found.map(each => (lines[each.line - 1] ?? '').slice(each.column - 1))
    const whole = found.map(each => lines[each.line - 1] ?? '')
    expect(whole.some(each => each.includes(line))).toBe(true)
    if (at !== undefined) expect(told.some(each => each.startsWith(at))).toBe(true)
    for (const each of found) {
      expect(each.severity).toBe(LINT_FINDINGS[id].severity)
      expect(Object.keys(each.params).sort()).toEqual([...LINT_FINDINGS[id].params].sort())
      expect(tellLint(each)).not.toMatch(/[{}]|undefined|NaN/u)
    }
  })

  it('is shown for every finding', () => {
    const shown = new Set([...BAD.map(each => each.id), ...ELSEWHERE])
    expect(Object.keys(LINT_FINDINGS).filter(each => !shown.has(each as LintId))).toEqual([])
  })
})

describe('a plug of the carton that fits nowhere', () => {
  it('is told once, with the sockets that there are', () => {
    const found = lint(spoilt(TWO_LEGS, [['      shape: keypad plug', '      shape: flat plug']]))
    expect(found.map(each => each.id)).toEqual(['supplied-plug-fits-no-socket'])
    expect(found.map(tellLint).join()).toMatch(
      /“flat plug”.*“three-way plug” \(SPB, .*“keypad plug” \(SKEY\)/u,
    )
  })
})

describe('what was not gone through', () => {
  it('is no verdict where a profile has too many commands', () => {
    const many = BAD.find(each => each.id === 'too-many-commands')?.slips ?? []
    const text = spoilt(TWO_LEGS, [...many, ['[L1-PB, PB-HI]', '[L1-PX, PB-HI]']])
    expect(lint(text).map(each => each.id)).not.toContain('output-never-on')
  })

  it('is no verdict: an output is not called dead', () => {
    const stopped = BAD.find(each => each.id === 'not-all-tried')?.slips ?? []
    const text = spoilt(TWO_LEGS, [...stopped, ['[L1-PB, PB-HI]', '[L1-PX, PB-HI]']])
    expect(lint(text).map(each => each.id)).not.toContain('output-never-on')
  })
})

describe('the demo', () => {
  it.each(demoIds('boxes'))('box %s has notices at most', id => {
    expect(lint(demoText('boxes', id)).filter(each => each.severity === 'warning')).toEqual([])
  })

  it.each(demoIds('devices'))('device %s has nothing to be said of it', id => {
    expect(lint(demoText('devices', id))).toEqual([])
  })

  it.each(demoIds('tubs'))('tub %s has notices at most', id => {
    expect(lint(demoText('tubs', id)).filter(each => each.severity === 'warning')).toEqual([])
  })
})

describe('a supply device', () => {
  const breaker = demoText('devices', 'ground-fault-breaker-2')
  const spoil = (slips: readonly Slip[]) => lint(spoilt(breaker, slips)).map(each => each.id)

  it('whose line stops inside is told', () => {
    expect(spoil([['across: [L1-IN, L1-OUT]', 'across: [L1-IN, L1-OUR]']])).toEqual(
      expect.arrayContaining(['line-never-arrives', 'fuse-in-no-path', 'terminal-dead-end']),
    )
  })

  it('whose lines touch inside is told', () => {
    expect(spoil([['across: [L2-IN, L2-OUT]', 'across: [L1-IN, L2-IN]']])).toContain('lines-joined')
  })

  it('whose ground-fault part leaves a line out is told', () => {
    expect(spoil([['sums: [P1, P2, PN]', 'sums: [P1, PN]']])).toEqual(['ground-fault-misses-line'])
  })
})

describe('a survey', () => {
  const tub = demoText('tubs', 'everyday-240-circulation')
  const spoil = (slips: readonly Slip[]) => lint(spoilt(tub, slips)).map(each => each.id)

  it('with a device beside every cable is told', () => {
    expect(spoil([after('id: gf, device', '    - { id: spare, device: isolator-3 }')])).toEqual([
      'device-in-no-cable',
    ])
  })

  it('without a ground-fault device is told', () => {
    expect(
      spoil([
        ['device: ground-fault-breaker-2', 'device: isolator-3'],
        ['from: L1 }', 'from: L1-out }'],
        ['from: L2 }', 'from: L2-out }'],
        ['from: N }', 'from: N-out }'],
        ['from: EB }', 'from: E-out }'],
      ]),
    ).toEqual(['no-ground-fault-device'])
  })

  it('in which nothing moves water is told', () => {
    expect(spoil([['    movesWaterThroughHeater: [run]\n', '']])).toEqual(['nothing-moves-water'])
  })

  it('is told what is still unknown', () => {
    expect(
      spoil([
        ['breaker: 50 A', 'breaker: { unknown: not visible }'],
        ['amps: 9.0 A', 'amps: { unknown: not measured }'],
      ]),
    ).toEqual(['still-unknown', 'still-unknown'])
  })
})

describe('a text', () => {
  it('that lacks any of its lines, or has one twice, is never thrown at', () => {
    const lines = BOTH.split('\n')
    for (const [index, line] of lines.entries()) {
      if (line.trim() === '' || line.trim().startsWith('#')) continue
      for (const with_ of [[], [line, line]])
        expect(() =>
          lintText('x.yaml', lines.toSpliced(index, 1, ...with_).join('\n'), demoDevices),
        ).not.toThrow()
    }
  })

  it('that is no description is refused, never thrown at', () => {
    for (const text of [
      '',
      'a: [',
      'schema: landing/1',
      '- 1',
      readFileSync(import.meta.filename, 'utf8'),
    ]) {
      const { diagnostics, findings, box } = lintText('x.yaml', text, demoDevices)
      expect(findings).toEqual([])
      expect(box).toBeUndefined()
      expect(diagnostics.length).toBeGreaterThan(0)
    }
  })
})
