import { readdirSync, readFileSync } from 'node:fs'
import type { Act } from '@tubwright/records'
import { documentOf, JobLog } from '@tubwright/records'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import type { Document } from '../../src/ask/protocol.ts'
import { readShelf } from '../../src/ask/shelf.ts'
import { addOpen } from '../../src/screens/survey/add-open.ts'
import { actsOfSurvey } from '../../src/screens/survey/first-acts.ts'
import type { Piece } from '../../src/screens/survey/joints.ts'
import {
  endAt,
  inOrder,
  joinTo,
  looseEndsOf,
  putBetween,
  runOf,
  standsBehind,
  takeOutOf,
  undoOf,
  unlandedIn,
} from '../../src/screens/survey/joints.ts'

const data = new URL('../../../../packages/catalog/data/', import.meta.url)
const textsIn = (folder: string) =>
  readdirSync(new URL(folder, data))
    .sort()
    .map(file => readFileSync(new URL(`${folder}/${file}`, data), 'utf8'))
const kinds = readShelf({ boxes: [], devices: textsIn('devices') }).view.devices

const nameOf = (end: string): string => (end === 'box' ? 'To the tub' : `To: ${end}`)

const plain: Document = {
  supply: {
    devices: [{ id: 'gf', device: 'ground-fault-breaker-2' }],
    cables: [
      {
        id: 'run',
        label: 'To the tub',
        from: 'gf',
        to: 'box',
        length: '48 ft',
        conductors: [
          { id: 'leg1', function: 'leg1', size: '6 AWG', colour: 'black', from: 'L1' },
          {
            id: 'earth',
            function: 'earth',
            size: '10 AWG',
            colour: 'green',
            from: 'EB',
            otherEnd: { size: '8 AWG' },
          },
        ],
      },
    ],
  },
}

/** A record that says a document, and what it says after more acts. */
function recordOf(document: Document) {
  const log = JobLog.open('a', [])
  const act = (acts: readonly Act[]): Document => {
    for (const each of acts) log.append(each, { author: 'A', at: '2026-01-01T00:00:00.000Z' })
    return documentOf(log.state, ['survey']) as Document
  }
  const valueAt = (path: readonly string[]): unknown => {
    const found = documentOf(log.state, path)
    return typeof found === 'object' && found !== null && Object.keys(found).length === 0
      ? undefined
      : found
  }
  act(actsOfSurvey(document))
  return { act, valueAt }
}

const [run] = runOf(plain).pieces as [Piece]
const device: readonly Act[] = [
  { do: 'add', path: ['survey', 'supply', 'devices', 'cut'] },
  { do: 'set', path: ['survey', 'supply', 'devices', 'cut', 'device'], value: 'isolator-3' },
]

test('a device is put into a piece: the same wires go on from it, lengths and landings are open', () => {
  const after = recordOf(plain).act([...device, ...putBetween(run, 'cut', 'piece', nameOf)])
  const { pieces } = inOrder(runOf(after))
  expect(pieces).toEqual([
    {
      id: 'run',
      label: 'To: cut',
      from: 'gf',
      to: 'cut',
      conductors: [
        { id: 'leg1', function: 'leg1', size: '6 AWG', colour: 'black', from: 'L1' },
        { id: 'earth', function: 'earth', size: '10 AWG', colour: 'green', from: 'EB' },
      ],
    },
    {
      id: 'piece',
      label: 'To the tub',
      from: 'cut',
      to: 'box',
      conductors: [
        { id: 'leg1', function: 'leg1', size: '6 AWG', colour: 'black' },
        // What was found at the tub is found on the piece that goes there.
        { id: 'earth', function: 'earth', size: '8 AWG', colour: 'green' },
      ],
    },
  ])
  expect(looseEndsOf(runOf(after))).toEqual([])
  expect(unlandedIn(runOf(after), kinds).map(each => each.slice(2).join('.'))).toEqual([
    'run.conductors.leg1.to',
    'run.conductors.earth.to',
  ])
})

test('a name that somebody gave stays, and undoing brings everything back as it was', () => {
  const named = structuredClone(plain) as { supply: { cables: [{ label: string }] } }
  named.supply.cables[0].label = 'Garage to tub'
  const { act, valueAt } = recordOf(named as unknown as Document)
  const before = act([])
  const [piece] = runOf(before).pieces as [Piece]
  const acts = [...device, ...putBetween(piece, 'cut', 'piece', nameOf)]
  const back = undoOf(acts, valueAt)
  expect(runOf(act(acts)).pieces.map(each => each.label)).toEqual(['Garage to tub', 'To the tub'])
  expect(act(back)).toEqual(before)
})

test('taken out of the run, a device leaves one piece whose length is open', () => {
  const { act } = recordOf(plain)
  const put = act([...device, ...putBetween(run, 'cut', 'piece', nameOf)])
  const after = act(takeOutOf(runOf(put), 'cut', nameOf))
  expect(runOf(after).devices.map(each => each.id)).toEqual(['gf'])
  expect(runOf(after).pieces).toMatchObject([{ id: 'run', label: 'To the tub', to: 'box' }])
  expect(runOf(after).pieces[0]?.length).toBeUndefined()
  expect(looseEndsOf(runOf(after))).toEqual([])
})

test('of several pieces that go on from a device none is guessed: they hang on nothing, and say so', () => {
  const { act } = recordOf(plain)
  const two = act([
    ...device,
    ...putBetween(run, 'cut', 'piece', nameOf),
    { do: 'add', path: ['survey', 'supply', 'cables', 'other'] },
    { do: 'set', path: ['survey', 'supply', 'cables', 'other', 'from'], value: 'cut' },
    { do: 'set', path: ['survey', 'supply', 'cables', 'other', 'to'], value: 'box' },
  ])
  const after = act(takeOutOf(runOf(two), 'cut', nameOf))
  expect(runOf(after).pieces.map(({ id, from, to }) => ({ id, from, to }))).toEqual([
    { id: 'run', from: 'gf', to: undefined },
    { id: 'piece', from: undefined, to: 'box' },
    { id: 'other', from: undefined, to: 'box' },
  ])
})

test('a device behind another one: the terminals on which wires arrived go with the later piece', () => {
  const { act } = recordOf(plain)
  const one = act([
    ...device,
    ...putBetween(run, 'cut', 'piece', nameOf),
    { do: 'set', path: on('run', 'leg1', 'to'), value: 'L1-in' },
  ])
  const [piece] = runOf(one).pieces as [Piece]
  const two = inOrder(
    runOf(
      act([
        { do: 'add', path: ['survey', 'supply', 'devices', 'early'] },
        ...putBetween(piece, 'early', 'middle', nameOf),
      ]),
    ),
  )
  expect(two.devices.map(each => each.id)).toEqual(['gf', 'early', 'cut'])
  expect(two.pieces.map(each => each.id)).toEqual(['run', 'middle', 'piece'])
  expect(two.pieces[0]?.conductors[0]?.to).toBeUndefined()
  expect(two.pieces[1]?.conductors[0]?.to).toBe('L1-in')
})

function on(piece: string, ...rest: readonly string[]): readonly string[] {
  return ['survey', 'supply', 'cables', piece, 'conductors', ...rest]
}

test('whatever hangs on nothing is told with where it is mended', () => {
  const { act } = recordOf(plain)
  const loose = act(device)
  expect(looseEndsOf(runOf(loose)).map(each => `${each.kind} ${each.path.join('.')}`)).toEqual([
    'nothing-in supply.devices.cut',
    'nothing-on supply.devices.cut',
  ])
  const joined = act(joinTo(runOf(loose), run, 'cut', 'piece', nameOf))
  expect(looseEndsOf(runOf(joined))).toEqual([])
  const [first] = runOf(joined).pieces as [Piece]
  const cut = act(endAt(first, 'to', 'box', nameOf))
  expect(looseEndsOf(runOf(cut)).map(each => each.kind)).toEqual(['nothing-in'])
  // The piece that goes on from it is there: only what goes in is missing.
  const [again] = runOf(cut).pieces as [Piece]
  expect(looseEndsOf(runOf(act(joinTo(runOf(cut), again, 'cut', 'piece-2', nameOf))))).toEqual([])
})

test('pieces that lead to what is gone, or back to where they begin, are told', () => {
  const devices = [{ id: 'gf' }, { id: 'a' }, { id: 'b' }]
  const piece = (id: string, from: string, to: string) => ({ id, from, to, conductors: [] })
  const kindsOf = (...pieces: readonly Piece[]) =>
    looseEndsOf({ devices, pieces }).map(each => `${each.kind} ${each.of}`)
  expect(kindsOf(piece('1', 'gf', 'a'), piece('2', 'a', 'b'), piece('3', 'b', 'gone'))).toEqual([
    'no-end 3',
  ])
  expect(kindsOf(piece('1', 'gf', 'box'), piece('2', 'a', 'b'), piece('3', 'b', 'a'))).toEqual([
    'in-a-ring 2',
    'in-a-ring 3',
  ])
  expect(kindsOf(piece('1', 'gone', 'a'), piece('2', 'a', 'b'), piece('3', 'b', 'box'))).toEqual([
    'nothing-on gf',
    'no-beginning 1',
  ])
})

test('only what has terminals for all that arrives can stand behind another device', () => {
  const behind = kinds.filter(standsBehind).map(each => each.id)
  expect(behind).toEqual(expect.arrayContaining(['isolator-2', 'isolator-3']))
  expect(behind).not.toContain('ground-fault-breaker-2')
  expect(kinds.find(each => each.id === 'isolator-3')?.arrives).toEqual({
    leg1: 'L1-in',
    leg2: 'L2-in',
    neutral: 'N-in',
    earth: 'E-in',
  })
})

describe.each(readdirSync(new URL('tubs', data)).sort())('%s', file => {
  const document = parse(readFileSync(new URL(`tubs/${file}`, data), 'utf8')) as Document

  test('hangs together, and says where every wire sits', () => {
    const whole = addOpen({ isSurvey: true, open: [], diagnostics: [] }, document, kinds)
    expect(whole).toEqual({ isSurvey: true, open: [], diagnostics: [] })
  })

  test('taking a device of its run out and undoing it changes nothing', () => {
    const { act, valueAt } = recordOf(document)
    const before = act([])
    for (const { id } of runOf(before).devices.slice(1)) {
      const acts = takeOutOf(runOf(before), id, nameOf)
      const back = undoOf(acts, valueAt)
      act(acts)
      expect(act(back)).toEqual(before)
    }
  })
})
