import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import type * as z from 'zod'
import type { Board } from '../../core/src/domain/board/board.ts'
import { isEarth } from '../../core/src/domain/board/board.ts'
import { checkBoard, nodeNames } from '../../core/src/domain/board/check-board.ts'
import { checkBox } from '../../core/src/domain/box/check-box.ts'
import type { ControlBox } from '../../core/src/domain/box/control-box.ts'
import { controlBox } from '../../core/src/domain/box/control-box.ts'
import { isPowered } from '../../core/src/domain/load/load.ts'
import { supplyDevice } from '../../core/src/domain/supply/supply.ts'
import { matchEquipment } from '../../core/src/stages/match/match-equipment.ts'
import type { Survey } from '../../core/src/stages/survey/artifact.ts'
import { survey } from '../../core/src/stages/survey/artifact.ts'
import { checkSurvey } from '../../core/src/stages/survey/check-survey.ts'

const FINGER = 0.009 // [m] least distance of two terminals that a drawing can keep apart
const ACROSS = 0.03 // [m] least distance of mains and low voltage on one board
const data = new URL('../data/', import.meta.url)

function readAll<Schema extends z.ZodType<{ readonly id: string }>>(
  folder: string,
  schema: Schema,
) {
  return readdirSync(new URL(`${folder}/`, data))
    .filter(name => name.endsWith('.yaml'))
    .map(name => {
      const text = readFileSync(new URL(`${folder}/${name}`, data), 'utf8')
      return { name, text, value: schema.parse(parse(text)) as z.output<Schema> }
    })
}

const devices = readAll('devices', supplyDevice)
const boxes = readAll('boxes', controlBox)
const tubs = readAll('tubs', survey)
const everything = [...devices, ...boxes, ...tubs]
const catalogue = new Map(devices.map(each => [each.value.id, each.value]))

const repeated = (all: readonly string[]): readonly string[] =>
  all.filter((each, index) => all.indexOf(each) !== index)

const without = (some: readonly string[], all: readonly string[]): readonly string[] =>
  some.filter(each => !all.includes(each))

type Spot = Board['terminals'][number]['at']
const apart = ([x, y]: Spot, [u, v]: Spot): number => Math.hypot(x.si - u.si, y.si - v.si)

/** Pairs of terminals that stand closer than they may. */
const crowded = ({ terminals }: Board, may: (a: string, b: string) => number): readonly string[] =>
  terminals.flatMap((a, index) =>
    terminals
      .slice(index + 1)
      .filter(b => apart(a.at, b.at) < may(a.class, b.class) - 1e-9)
      .map(b => `${a.id} ${b.id}`),
  )

const isLow = (kind: string): boolean => kind === 'low-voltage' || kind === 'sensor'
const spacing = (a: string, b: string): number =>
  (a === 'mains' && isLow(b)) || (b === 'mains' && isLow(a)) ? ACROSS : FINGER

const offBoard = ({ terminals, size }: Board): readonly string[] =>
  terminals
    .filter(({ at: [x, y] }) => x.si > size.width.si || y.si > size.height.si)
    .map(each => each.id)

/** Nodes that only one thing names: a slip of the pen. A sensor's signal goes nowhere else. */
function lonelyNodes(board: Board): readonly string[] {
  const uses = [
    ...board.terminals.map(each => each.node),
    ...board.jumpers.flatMap(each => [...new Set(each.positions.flatMap(at => at.joins.flat()))]),
    ...board.parts.flatMap(part =>
      part.kind === 'transformer'
        ? [...part.primary, ...part.secondary]
        : part.kind === 'ground-fault'
          ? []
          : part.across,
    ),
  ]
  const signals = board.terminals.filter(each => each.class === 'sensor').map(each => each.node)
  return [...new Set(uses)].filter(
    node => !signals.includes(node) && uses.filter(each => each === node).length < 2,
  )
}

describe('the catalogue', () => {
  it('has enough to choose from', () => {
    expect(boxes.length).toBeGreaterThanOrEqual(14)
    expect(tubs.length).toBeGreaterThanOrEqual(17)
    expect(tubs.filter(each => each.text.includes('{ unknown: ')).length).toBeGreaterThanOrEqual(2)
  })

  it('names each thing once, after its file', () => {
    expect(repeated(everything.map(each => each.value.id))).toEqual([])
    for (const { name, value } of everything) expect(name).toBe(`${value.id}.yaml`)
  })

  it('gives each box, tub and device a label of its own', () => {
    expect(repeated(boxes.map(each => each.value.label))).toEqual([])
    expect(repeated(tubs.map(each => each.value.title))).toEqual([])
    expect(repeated(devices.map(each => each.value.label))).toEqual([])
  })
})

describe.each(devices.map(each => each.value))('device $id', ({ board, fedAt, lands, tails }) => {
  it('names only what is there', () => {
    expect(checkBoard(board, ['board'])).toEqual([])
    expect(without(Object.values(fedAt), nodeNames(board))).toEqual([])
    const terminals = board.terminals.map(each => each.id)
    expect(
      without(
        tails.map(each => each.lands),
        terminals,
      ),
    ).toEqual([])
    expect(without(Object.values(lands), terminals)).toEqual([])
    expect(Object.keys(lands).sort()).toEqual(Object.keys(fedAt).sort())
    const openable = board.parts.filter(each => each.kind === 'pole' || each.kind === 'switch')
    const sums = board.parts.flatMap(each => (each.kind === 'ground-fault' ? each.sums : []))
    expect(
      without(
        sums,
        openable.map(each => each.id),
      ),
    ).toEqual([])
  })

  it('can be drawn', () => {
    expect(crowded(board, () => FINGER)).toEqual([])
    expect(offBoard(board)).toEqual([])
  })
})

const placeTerminals = (place: ControlBox['places'][number]): readonly string[] =>
  Object.values(place.lands)

/** What a part leads through when it is closed; an auto-transformer leads through, an isolating one not. */
function leadsThrough(part: Board['parts'][number]): readonly (readonly [string, string])[] {
  switch (part.kind) {
    case 'fuse':
    case 'contact':
    case 'pole':
    case 'switch':
      return [part.across]
    case 'transformer':
      return part.isolating ? [] : [[part.primary[0], part.secondary[0]]]
    default:
      return []
  }
}

/** Whether parts and jumpers lead from one node to another, every one of them closed. */
function reaches(board: Board, from: string, to: string): boolean {
  const joins = [
    ...board.parts.flatMap(leadsThrough),
    ...board.jumpers.flatMap(each => each.positions.flatMap(at => at.joins)),
  ]
  const seen = new Set([from])
  for (const node of seen)
    for (const [a, b] of joins) {
      if (a === node) seen.add(b)
      if (b === node) seen.add(a)
    }
  return seen.has(to)
}

/** The board with these parts taken out. */
const lacking = (board: Board, drop: (part: Board['parts'][number]) => boolean): Board => ({
  ...board,
  parts: board.parts.filter(part => !drop(part)),
})

describe.each(boxes.map(each => each.value))('box $id', box => {
  const { board, places, commands, profiles } = box
  const nodeOf = (id: string | undefined) =>
    board.terminals.find(each => each.id === id)?.node ?? ''
  const legs = box.feeds.flatMap(({ lands }) =>
    [lands.leg1, lands.leg2, lands.leg3, lands['second-leg1'], lands['second-leg2']].map(nodeOf),
  )
  const live = legs.filter(Boolean)

  it('names only what is there', () => {
    expect(checkBox(box)).toEqual([])
  })

  it('has a use for every node, contact, command and terminal', () => {
    expect(lonelyNodes(board)).toEqual([])
    const closed = commands.flatMap(each => [...each.closes, ...each.opens])
    const contacts = board.parts.filter(part => part.kind === 'contact' && part.role === 'command')
    expect(
      without(
        contacts.map(each => each.id),
        closed,
      ),
    ).toEqual([])
    const ids = commands.map(each => each.id)
    expect(
      without(
        ids,
        profiles.flatMap(each => each.commands),
      ),
    ).toEqual([])
    expect(
      without(
        ids,
        places.flatMap(each => Object.values(each.commands)),
      ),
    ).toEqual([])
    const used = [
      ...places.flatMap(placeTerminals),
      ...box.feeds.flatMap(each => Object.values(each.lands)),
    ]
    expect(
      without(
        board.terminals.map(each => each.id),
        used,
      ),
    ).toEqual([])
    const shared = board.terminals.filter(
      ({ id, conductors }) =>
        places.filter(each => placeTerminals(each).includes(id)).length > conductors,
    )
    expect(shared.map(each => each.id)).toEqual([])
  })

  it('gives a connector exactly the terminals of its place', () => {
    for (const place of places) {
      const connector = board.connectors.find(each => each.id === place.connector)
      if (connector)
        expect(Object.values(connector.pins).sort()).toEqual([...placeTerminals(place)].sort())
    }
    const used = places.flatMap(each => each.connector ?? [])
    expect(board.connectors.map(each => each.id).sort()).toEqual([...used].sort())
  })

  it('puts a fuse before every mains output, and limit and command before the heater', () => {
    const unfused = lacking(board, part => part.kind === 'fuse')
    for (const place of places) {
      const hot = nodeOf(place.lands.hot ?? place.lands.high)
      const isMains = board.terminals.some(each => each.node === hot && each.class === 'mains')
      if (!isMains) continue
      expect(live.some(leg => reaches(board, leg, hot))).toBe(true)
      if (place.id !== 'heater') expect(live.some(leg => reaches(unfused, leg, hot))).toBe(false)
    }
    const heater = places.find(each => each.takes.includes('heater'))
    const hot = nodeOf(heater?.lands.hot)
    const closes = commands.find(each => each.id === box.heat)?.closes ?? []
    const limited = lacking(board, part => part.kind === 'contact' && part.role === 'limit')
    const idle = lacking(board, part => closes.includes(part.id))
    for (const leg of live) {
      expect(reaches(unfused, leg, hot)).toBe(false)
      expect(reaches(limited, leg, hot)).toBe(false)
      expect(reaches(idle, leg, hot)).toBe(false)
    }
  })

  it('reads each sensor at a place for a probe that comes with it, on its curve', () => {
    for (const input of box.sensors) {
      const place = places.find(each =>
        input.terminals.every(id => placeTerminals(each).includes(id)),
      )
      expect(place?.takes).toEqual(['probe'])
      const probes = box.supplied.flatMap(each => (each.kind === 'probe' ? [each] : []))
      expect(probes.some(each => each.curve === input.curve && each.place === input.reads)).toBe(
        true,
      )
    }
  })

  it('bears what it supplies', () => {
    const [trafo] = board.parts.flatMap(part => (part.kind === 'transformer' ? [part] : []))
    const own = board.parts.flatMap(part => (part.kind === 'electronics' ? [part.power.si] : []))
    const keypad = box.supplied.find(each => each.kind === 'keypad')
    const keypadWatts = keypad?.circuits[0]?.power
    const fixed = own.reduce(
      (a, b) => a + b,
      keypadWatts?.kind === 'known' ? keypadWatts.value.si : 0,
    )
    expect(trafo?.rated.si).toBeGreaterThanOrEqual(fixed + 12)
    const heater = box.supplied.find(each => each.kind === 'heater')
    const watts = heater?.circuits[0]?.power
    if (!heater?.volts || watts?.kind !== 'known') throw new Error('no heater is supplied')
    const amps = watts.value.si / heater.volts.si
    const place = places.find(each => each.takes.includes('heater'))
    for (const terminal of board.terminals)
      if (place && placeTerminals(place).includes(terminal.id))
        expect(terminal.rated.si).toBeGreaterThanOrEqual(amps)
  })

  it('never lacks a setting that its factory leaves, and sheds by amps of its commands', () => {
    expect(box.currentLimit.offered.map(each => each.si)).toEqual(
      box.currentLimit.offered.map(each => each.si).toSorted((a, b) => a - b),
    )
    for (const { assumes, lands } of box.feeds) {
      if (!assumes) continue
      // The box counts what it draws from its first circuit.
      const apart = lands['second-leg1'] ? [box.heat] : []
      expect(
        without(
          commands.map(each => each.id),
          [...Object.keys(assumes), ...apart, 'light'],
        ),
      ).toEqual([])
    }
  })

  it('can be drawn', () => {
    expect(crowded(board, spacing)).toEqual([])
    expect(offBoard(board)).toEqual([])
    expect(board.size.width.si).toBeLessThan(box.size.width.si)
    expect(board.size.height.si).toBeLessThan(box.size.height.si)
  })
})

const deviceBoard = (tub: Survey, id: string): Board | undefined => {
  const found = tub.supply.devices.find(each => each.id === id)
  return found && catalogue.get(found.device)?.board
}

const servingBoxes = (tub: Survey): readonly ControlBox[] => {
  const all = boxes.map(each => each.value)
  const serving = matchEquipment(tub, all).boxes.filter(each => each.verdict === 'may-serve')
  return all.filter(box => serving.some(each => each.box === box.id))
}

describe.each(tubs.map(each => each.value))('tub $id', tub => {
  it('names only what is there', () => {
    expect(checkSurvey(tub, catalogue)).toEqual([])
  })

  it('lands each conductor of a cable where its function lies', () => {
    for (const cable of tub.supply.cables)
      for (const conductor of cable.conductors) {
        const near = deviceBoard(tub, cable.from)?.terminals.find(
          each => each.id === conductor.from,
        )
        expect(near?.class).toBe(isEarth(conductor.function) ? 'earth' : 'mains')
        if (cable.to === 'box') continue
        const far = deviceBoard(tub, cable.to)?.terminals.find(each => each.id === conductor.to)
        expect(far?.class).toBe(near?.class)
      }
  })

  it('stands behind a ground-fault device, with a region and a frequency that go together', () => {
    const upstream = tub.supply.devices.map(each => deviceBoard(tub, each.id))
    const inBoxes = servingBoxes(tub).map(each => each.board)
    const isBehind = (board: Board | undefined) =>
      board?.parts.some(each => each.kind === 'ground-fault') ?? false
    expect(upstream.some(isBehind) || inBoxes.every(isBehind)).toBe(true)
    expect(tub.supply.frequency.si).toBe(tub.region === 'US' || tub.region === 'CA' ? 60 : 50)
  })

  it('has leads that circuits join, and something to push water through the heater', () => {
    const movers = tub.loads.flatMap(load =>
      'movesWaterThroughHeater' in load ? load.movesWaterThroughHeater : [],
    )
    expect(movers.length).toBeGreaterThan(0)
    for (const load of tub.loads.filter(isPowered)) {
      const joined = load.circuits.flatMap(each => each.across)
      const energised = load.leads
        .filter(each => each.function !== 'earth' && each.function !== 'data')
        .map(each => each.id)
      expect(without(energised, joined)).toEqual([])
      expect(repeated(load.leads.map(each => each.function))).toEqual([])
      if (load.plug)
        expect(Object.values(load.plug.pins).sort()).toEqual(load.leads.map(l => l.id).sort())
    }
  })
})

describe('tubs and boxes together', () => {
  const matches = tubs.map(each =>
    matchEquipment(
      each.value,
      boxes.map(box => box.value),
    ),
  )

  it('leaves a box that may serve each tub but those that are there for having none', () => {
    const lost = matches.filter(each => each.boxes.every(box => box.verdict === 'cannot'))
    expect(lost.map(each => each.survey)).toEqual([
      'high-leg',
      'no-box-120-ozonator-no-neutral',
      'ten-pieces-120',
    ])
  })

  it('has a tub for each box', () => {
    const serving = matches.flatMap(each =>
      each.boxes.filter(box => box.verdict === 'may-serve').map(box => box.box),
    )
    expect([...new Set(serving)].sort()).toEqual(boxes.map(each => each.value.id).sort())
  })

  it('shows every common reason why a box cannot serve', () => {
    const told = new Set(
      matches.flatMap(each => each.boxes.flatMap(box => box.shortfalls.map(s => s.message))),
    )
    const wanted = [
      'not-for-region',
      'not-for-frequency',
      'not-for-system',
      'conductor-missing',
      'breaker-too-large',
      'no-setting-low-enough',
      'too-big',
      'no-place',
      'too-few-places',
      'wrong-volts',
    ]
    expect(without(wanted, [...told])).toEqual([])
  })
})
