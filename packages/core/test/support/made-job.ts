import { load } from '../../src/domain/load/load.ts'
import { supply } from '../../src/domain/supply/supply.ts'
import type { Colour, Job, Landing, Load, SupplyDevice } from '../../src/index.ts'
import { COLOURS, controlBox, jobOf, landing, supplyDevice } from '../../src/index.ts'

/** Whole numbers below a bound, the same for the same seed. */
export type Pick = (below: number) => number

/** Mulberry32: small, fast, and good enough to choose with. */
export function pickerOf(seed: number): Pick {
  let state = seed >>> 0
  return below => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) % below
  }
}

const LABELS = [
  'Pump',
  'Overwhelmingly long name of a jets pump that somebody typed here',
  'W'.repeat(60),
  'Umwälzpumpe für den großen Whirlpool im Garten hinter dem Haus',
  '循環ポンプ、庭の大きな浴槽のための、とても長い名前のもの',
  'Насос циркуляционный двухскоростной с очень длинным именем',
  'مضخة الدوران ذات الاسم الطويل جدا للحوض الكبير في الحديقة',
  'Ω',
] as const

interface Lines {
  readonly system: 'split-phase' | 'single-phase-230' | 'three-phase-230-400' | 'two-lives-230'
  readonly region: 'US' | 'UK'
  readonly legs: readonly string[]
  readonly hasNeutral: boolean
}

const SYSTEMS: readonly Lines[] = [
  { system: 'split-phase', region: 'US', legs: ['leg1', 'leg2'], hasNeutral: true },
  { system: 'single-phase-230', region: 'UK', legs: ['leg1'], hasNeutral: true },
  {
    system: 'three-phase-230-400',
    region: 'UK',
    legs: ['leg1', 'leg2', 'leg3'],
    hasNeutral: true,
  },
  { system: 'two-lives-230', region: 'UK', legs: ['leg1', 'leg2'], hasNeutral: false },
]

type Raw = Record<string, unknown>

const NODES: Readonly<Record<string, string>> = {
  leg1: 'L1',
  leg2: 'L2',
  leg3: 'L3',
  neutral: 'N',
  earth: 'PE',
}

/** A breaker with a pole a line, a switched neutral behind its own tail, and its electronics. */
function deviceOf({ legs, hasNeutral }: Lines): SupplyDevice {
  const functions = [...legs, ...(hasNeutral ? ['neutral'] : [])]
  const terminal = (id: string, node: string, index: number, kept = 'mains') => ({
    id,
    node,
    class: kept,
    kind: 'screw',
    rated: '60 A',
    at: [`${20 + 20 * index} mm`, '40 mm'],
  })
  const poles = legs.map(each => ({
    id: `P${NODES[each]}`,
    kind: 'pole',
    across: [`${NODES[each]}-IN`, `${NODES[each]}-OUT`],
  }))
  const neutral = hasNeutral
    ? [{ id: 'PN', kind: 'switch', across: ['TAIL', 'N-OUT'], rated: '60 A' }]
    : []
  return supplyDevice.parse({
    schema: 'supply-device/1',
    id: 'made-device',
    label: 'Made device',
    board: {
      size: { width: '160 mm', height: '120 mm' },
      earth: 'EARTH',
      terminals: [
        ...functions.map((each, index) => terminal(`${NODES[each]}`, `${NODES[each]}-OUT`, index)),
        ...(hasNeutral ? [terminal('NB', 'N-BAR', 5)] : []),
        terminal('EB', 'EARTH', 6, 'earth'),
      ],
      parts: [
        ...poles,
        ...neutral,
        {
          id: 'GF',
          kind: 'ground-fault',
          sums: [...poles, ...neutral]
            .map(each => each.id)
            .concat(legs.length + (hasNeutral ? 1 : 0) < 2 ? ['PL1'] : []),
          trip: { from: '4 mA', to: '6 mA' },
          ...(hasNeutral ? { poweredFrom: ['L1-IN', 'TAIL'] } : {}),
          seesNeutralEarth: true,
        },
      ],
    },
    fedAt: {
      ...Object.fromEntries(legs.map(each => [each, `${NODES[each]}-IN`])),
      ...(hasNeutral ? { neutral: 'N-BAR' } : {}),
      earth: 'EARTH',
    },
    tails: hasNeutral ? [{ id: 'tail', node: 'TAIL', colour: 'white', lands: 'NB' }] : [],
  })
}

interface Board {
  readonly terminals: Raw[]
  readonly parts: Raw[]
  readonly jumpers: Raw[]
  readonly places: Raw[]
  readonly commands: Raw[]
  readonly loads: Load[]
  readonly ends: Record<string, string>
  readonly set: Record<string, string>
}

const ROOM = 360 // [mm] of a row of terminals

function placeTerminals(terminals: Raw[], pick: Pick): { width: number; height: number } {
  const mains = terminals.filter(each => each['class'] === 'mains' || each['class'] === 'earth')
  const low = terminals.filter(each => each['class'] !== 'mains' && each['class'] !== 'earth')
  const inputs = mains.filter(each => String(each['id']).startsWith('in-'))
  const outputs = mains.filter(each => !inputs.includes(each))
  const step = 9 + pick(4)
  const perRow = Math.floor(ROOM / step)
  const width = Math.max(120, Math.min(outputs.length, perRow) * step + 40)
  const rows = Math.ceil(outputs.length / perRow)
  const height = Math.max(120, 40 + rows * 24 + 40, 30 + Math.max(inputs.length, low.length) * 9)
  const put = (each: Raw, x: number, y: number) => {
    each['at'] = [`${x} mm`, `${y} mm`]
  }
  inputs.forEach((each, index) => {
    put(each, 12, 16 + index * 11)
  })
  low.forEach((each, index) => {
    put(each, width - 12, 12 + index * 9)
  })
  outputs.forEach((each, index) => {
    put(each, 30 + (index % perRow) * step, height - 14 - Math.floor(index / perRow) * 24)
  })
  return { width, height }
}

class Maker {
  readonly board: Board = {
    terminals: [],
    parts: [],
    jumpers: [],
    places: [],
    commands: [],
    loads: [],
    ends: {},
    set: {},
  }
  private readonly pick: Pick
  private readonly lines: Lines
  private count = 0
  private lastFuse: { readonly rail: string; readonly node: string } | undefined
  private lastReturn: string | undefined

  constructor(pick: Pick, lines: Lines) {
    this.pick = pick
    this.lines = lines
  }

  private next(prefix: string): string {
    this.count++
    return `${prefix}${this.count}`
  }

  terminal(id: string, node: string, kept: string): string {
    const kind = kept === 'mains' || kept === 'earth' ? 'tab' : 'pin'
    this.board.terminals.push({ id, node, class: kept, kind, rated: '30 A' })
    return id
  }

  contact(a: string, b: string, more: Raw = {}): string {
    const id = this.next('R')
    const rated = { resistive: '20 A', ...(this.pick(2) ? { motor: '16 A' } : {}) }
    this.board.parts.push({ id, kind: 'contact', across: [a, b], rated, ...more })
    return id
  }

  private fuse(a: string): string {
    const node = this.next('FN')
    this.board.parts.push({ id: this.next('F'), kind: 'fuse', across: [a, node], rated: '15 A' })
    return node
  }

  /** From a rail through fuses, a limit, and one or two contacts in series or side by side. */
  private hotSide(
    hot: string,
    withLimit: boolean,
  ): { readonly node: string; readonly on: string[] } {
    const { pick } = this
    const shared = this.lastFuse?.rail === hot && pick(2) === 0 ? this.lastFuse.node : undefined
    let from = shared ?? (pick(5) === 0 ? hot : this.fuse(hot))
    this.lastFuse = { rail: hot, node: from }
    if (pick(6) === 0) from = this.fuse(from)
    if (withLimit) {
      const behind = this.next('LM')
      this.contact(from, behind, { role: 'limit' })
      from = behind
    }
    const node = this.next('HI')
    const type = ['relay', 'contactor', 'triac'][pick(3)]
    const leak = type === 'triac' ? { leakage: '2 mA', leastLoad: '50 mA' } : {}
    if (pick(4) === 0) {
      const middle = this.next('MD')
      return {
        node,
        on: [this.contact(from, middle, { type, ...leak }), this.contact(middle, node)],
      }
    }
    const on = [this.contact(from, node, { type, ...leak })]
    if (pick(6) === 0) on.push(this.contact(from, node))
    return { node, on }
  }

  private returnTo(
    rail: string,
    others: readonly string[],
  ): { readonly node: string; readonly on: string[]; readonly off: string[] } {
    const { pick } = this
    const other = others[pick(Math.max(1, others.length))]
    switch (pick(5)) {
      case 0:
        return { node: rail, on: [], off: [] }
      case 1: {
        if (this.lastReturn !== undefined && pick(2))
          return { node: this.lastReturn, on: [], off: [] }
        const node = this.next('RT')
        const id = this.next('J')
        this.lastReturn = node
        this.board.jumpers.push({
          id,
          label: `jumper ${LABELS[pick(LABELS.length)]}`.slice(0, 60),
          positions: [
            { id: 'one', label: '120 V', joins: [[node, rail]] },
            { id: 'two', label: LABELS[pick(LABELS.length)], joins: [[node, other ?? rail]] },
            { id: 'out', joins: [] },
          ],
          factory: 'one',
          rated: '20 A',
          ...(pick(3) ? { at: [`${60 + pick(60)} mm`, `${40 + pick(30)} mm`] } : {}),
        })
        this.board.set[id] = ['one', 'two', 'out'][pick(3)] ?? 'one'
        return { node, on: [], off: [] }
      }
      case 2: {
        const node = this.next('RT')
        return { node, on: [this.contact(rail, node)], off: [] }
      }
      case 3: {
        if (other === undefined) return { node: rail, on: [], off: [] }
        const node = this.next('RT')
        const off = [this.contact(node, rail, { rest: 'closed' })]
        return { node, on: [this.contact(node, other)], off }
      }
      default: {
        const [node, middle] = [this.next('RT'), this.next('MD')]
        return { node, on: [this.contact(node, middle), this.contact(middle, rail)], off: [] }
      }
    }
  }

  private colour(): Colour {
    return COLOURS[this.pick(COLOURS.length)] ?? 'black'
  }

  private addLoad(id: string, kind: string, leads: Raw[], circuits: Raw[], volts: string): void {
    const label = `${LABELS[this.pick(LABELS.length)]}`.slice(0, 60)
    const base = { kind, id, label, leads, circuits, volts }
    this.board.loads.push(load.parse(base))
  }

  output(index: number): void {
    const { pick, lines, board } = this
    const rails = lines.legs.map(each => NODES[each] ?? 'L1')
    const hot = rails[pick(rails.length)] ?? 'L1'
    const others = [...rails, ...(lines.hasNeutral ? ['N'] : [])].filter(each => each !== hot)
    const rail = others[pick(others.length)] ?? 'N'
    const kind = ['pump', 'circulation-pump', 'heater', 'ozonator', 'blower'][pick(5)] ?? 'pump'
    const isTwoSpeed = kind === 'pump' && pick(2) === 0
    const id = `load-${index}`
    const place = `place-${index}`
    const back = this.returnTo(rail, others)
    const names = isTwoSpeed ? ['high', 'low'] : ['hot']
    const lands: Record<string, string> = {}
    const commands: Record<string, string> = {}
    for (const name of names) {
      const { node, on } = this.hotSide(hot, kind === 'heater')
      lands[name] = this.terminal(`${place}-${name}`.slice(0, 20), node, 'mains')
      commands[name] = `${id}-${name}`
      board.commands.push({
        id: commands[name],
        label: `${LABELS[pick(LABELS.length)]}`.slice(0, 60),
        closes: [...on, ...back.on],
        opens: back.off,
      })
    }
    lands['common'] = this.terminal(`T${index}c`, back.node, 'mains')
    lands['earth'] = this.terminal(`T${index}e`, 'PE', 'earth')
    board.places.push({
      id: place,
      label: `${LABELS[pick(LABELS.length)]}`.slice(0, 60),
      takes: [kind],
      lands,
      commands,
    })
    if (pick(6) === 0) return
    const functions = [...names, 'common', ...(kind === 'ozonator' ? [] : ['earth'])]
    const leads = functions.map(name => ({
      id: name,
      function: name,
      size: '14 AWG',
      colour: this.colour(),
    }))
    const circuits = names.map(name => ({
      id: name,
      across: pick(2) ? [name, 'common'] : ['common', name],
      amps: '3 A',
    }))
    this.addLoad(id, kind, leads, circuits, lines.region === 'US' ? '120 V' : '230 V')
    const isOff = pick(8) === 0
    for (const name of functions)
      board.ends[`${id}.${name}`] = isOff ? 'insulated' : `box.${lands[name]}`
  }

  /** A control transformer, its electronics, a light and probes; sometimes an auto-transformer. */
  low(): void {
    const { board, pick, lines } = this
    const back = lines.hasNeutral ? 'N' : 'L2'
    const primary = this.fuse('L1')
    const taps = pick(2) === 0
    board.parts.push({
      id: 'TR',
      kind: 'transformer',
      primary: [primary, back],
      secondary: ['LV', 'LV-COM'],
      volts: { primary: '230 V', secondary: '12 V' },
      rated: '20 VA',
      ...(taps ? { taps: { jumper: 'JT', volts: { low: '208 V', high: '240 V' } } } : {}),
    })
    if (taps) {
      board.jumpers.push({
        id: 'JT',
        label: 'tap',
        positions: [
          { id: 'low', joins: [] },
          { id: 'high', joins: [] },
        ],
        factory: 'low',
        rated: '1 A',
      })
      board.set['JT'] = pick(2) ? 'low' : 'high'
    }
    board.parts.push({
      id: 'EL',
      kind: 'electronics',
      across: ['LV', 'LV-COM'],
      volts: '12 V',
      power: '3 W',
    })
    const lamp = this.contact('LV', 'LV-LT')
    board.commands.push({ id: 'light', label: 'light', closes: [lamp] })
    const pair = (a: string, b: string, kept: string) => ({
      a: this.terminal(`${a.toLowerCase()}`, a, kept),
      b: this.terminal(`${a.toLowerCase()}-c`, b, kept),
    })
    const light = pair('LV-LT', 'LV-COM', 'low-voltage')
    board.places.push({
      id: 'light',
      label: 'Light',
      takes: ['light'],
      lands: { hot: light.a, common: light.b },
      commands: { hot: 'light' },
    })
    const leads = (first: string) => [
      { id: 'one', function: first, size: '22 AWG', colour: this.colour() },
      { id: 'two', function: 'common', size: '22 AWG', colour: this.colour() },
    ]
    this.addLoad(
      'lamp',
      'light',
      leads('hot'),
      [{ id: 'in', across: ['one', 'two'], power: '5 W' }],
      '12 V',
    )
    board.ends['lamp.one'] = `box.${light.a}`
    board.ends['lamp.two'] = `box.${light.b}`
    for (let index = 0; index < 1 + pick(3); index++) {
      const input = pair(`SIG${index}`, 'LV-COM', 'sensor')
      const id = `probe-${index}`
      board.loads.push(
        load.parse({
          kind: 'probe',
          id,
          label: `${LABELS[pick(LABELS.length)]}`.slice(0, 60),
          curve: '10k',
          place: 'water',
          leads: leads('signal'),
        }),
      )
      board.ends[`${id}.one`] = `box.${input.a}`
      board.ends[`${id}.two`] = `box.${input.b}`
    }
    if (lines.hasNeutral && pick(2) === 0) this.autoTransformer()
  }

  private autoTransformer(): void {
    const { board } = this
    board.parts.push({
      id: 'AT',
      kind: 'transformer',
      primary: ['L1', 'N'],
      secondary: ['AT-OUT', 'N'],
      volts: { primary: '230 V', secondary: '115 V' },
      rated: '200 VA',
      isolating: false,
    })
    const on = this.contact('AT-OUT', 'AT-HI')
    const [hot, back] = [
      this.terminal('at-h', 'AT-HI', 'mains'),
      this.terminal('at-r', 'N', 'mains'),
    ]
    board.commands.push({ id: 'at', label: 'from the auto-transformer', closes: [on] })
    board.places.push({
      id: 'at',
      label: 'Auto',
      takes: ['ozonator'],
      lands: { hot, common: back },
      commands: { hot: 'at' },
    })
    const leads = [
      { id: 'h', function: 'hot', size: '18 AWG', colour: 'black' },
      { id: 'r', function: 'common', size: '18 AWG', colour: 'white' },
    ]
    this.addLoad(
      'auto-load',
      'ozonator',
      leads,
      [{ id: 'in', across: ['h', 'r'], amps: '0.2 A' }],
      '115 V',
    )
    board.ends['auto-load.h'] = `box.${hot}`
    board.ends['auto-load.r'] = `box.${back}`
  }
}

/**
 * A job that nobody would build, by its seed: many outputs, every kind of contact, returns through
 * jumpers and changeovers, shared fuses, empty places, long and foreign names; and its landing.
 */
export function madeJob(seed: number): { readonly job: Job; readonly landing: Landing } {
  const pick = pickerOf(seed)
  const lines = SYSTEMS[pick(SYSTEMS.length)] as Lines
  const maker = new Maker(pick, lines)
  const { board } = maker
  const arriving = [...lines.legs, ...(lines.hasNeutral ? ['neutral'] : []), 'earth']
  for (const each of arriving)
    maker.terminal(`in-${each}`, NODES[each] ?? 'PE', each === 'earth' ? 'earth' : 'mains')
  const outputs = 3 + pick(10)
  for (let index = 1; index <= outputs; index++) maker.output(index)
  maker.low()
  const size = placeTerminals(board.terminals, pick)
  const box = controlBox.parse({
    schema: 'control-box/1',
    id: `made-${seed}`,
    label: 'Made box',
    maker: 'nobody',
    regions: ['US', 'UK'],
    frequencies: ['60 Hz'],
    size: { width: '400 mm', height: '300 mm', depth: '100 mm' },
    largestBreaker: '60 A',
    board: {
      size: { width: `${size.width} mm`, height: `${size.height} mm` },
      earth: 'PE',
      terminals: board.terminals,
      parts: board.parts,
      jumpers: board.jumpers,
    },
    feeds: [
      {
        id: 'feed',
        label: 'feed',
        system: lines.system,
        lands: Object.fromEntries(arriving.map(each => [each, `in-${each}`])),
      },
    ],
    places: board.places,
    commands: board.commands,
    heat: 'light',
    profiles: [{ id: 'one', label: 'one', entered: 'so', commands: ['light'], heatsWith: [] }],
    profileFactory: 'one',
    currentLimit: { offered: ['40 A'], factory: '40 A', names: 'draw', entered: 'so' },
    flowProof: 'flow-switch',
  })
  const device = deviceOf(lines)
  const conductors = arriving.map(each => ({
    id: each,
    function: each,
    size: '6 AWG',
    colour: each === 'earth' ? 'green' : 'black',
    from: each === 'earth' ? 'EB' : (NODES[each] ?? 'L1'),
  }))
  const ends = Object.fromEntries(
    arriving.flatMap(each => [
      [`run.${each}@panel`, `panel.${each === 'earth' ? 'EB' : NODES[each]}`],
      [`run.${each}@box`, `box.in-${each}`],
    ]),
  )
  const job = jobOf(
    {
      id: `tub-${seed}`,
      region: lines.region,
      supply: supply.parse({
        system: lines.system,
        frequency: '60 Hz',
        breaker: '50 A',
        devices: [{ id: 'panel', device: 'made-device' }],
        cables: [{ id: 'run', label: 'Run', from: 'panel', to: 'box', length: '10 m', conductors }],
      }),
      loads: board.loads,
    },
    box,
    new Map([[device.id, device]]),
  )
  return {
    job,
    landing: landing.parse({
      schema: 'landing/1',
      survey: `tub-${seed}`,
      box: box.id,
      ends: {
        ...ends,
        ...(lines.hasNeutral ? { 'panel.tail': 'panel.NB' } : {}),
        ...board.ends,
      },
      jumpers: board.set,
      settings: { profile: 'one', currentLimit: '40 A' },
    }),
  }
}
