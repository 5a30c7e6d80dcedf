import type { Part } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX, boardOf } from '../../../domain/job.ts'
import type { Load } from '../../../domain/load/load.ts'
import type { LadderStyle } from './artifact.ts'

type Letters = Readonly<Record<Part['kind'] | Load['kind'], string>>

/**
 * Letters of reference designations: those usual in North America, and those of IEC 81346-2 with
 * H for a lamp, as older drawings have it.
 *
 * @source [REF-LETTERS] (from memory)
 */
const LETTERS: Readonly<Record<LadderStyle, Letters>> = {
  american: {
    fuse: 'F',
    contact: 'K',
    pole: 'CB',
    switch: 'DS',
    'ground-fault': 'GFCI',
    transformer: 'T',
    electronics: 'U',
    pump: 'M',
    'circulation-pump': 'M',
    blower: 'M',
    heater: 'R',
    ozonator: 'A',
    light: 'LT',
    audio: 'A',
    sanitiser: 'A',
    keypad: 'A',
    probe: 'RT',
  },
  iec: {
    fuse: 'F',
    contact: 'K',
    pole: 'Q',
    switch: 'Q',
    'ground-fault': 'RCD',
    transformer: 'T',
    electronics: 'U',
    pump: 'M',
    'circulation-pump': 'M',
    blower: 'M',
    heater: 'E',
    ozonator: 'E',
    light: 'H',
    audio: 'A',
    sanitiser: 'E',
    keypad: 'S',
    probe: 'B',
  },
}

/** What is to be named: its key, its letters, and what its board calls it. */
interface Named {
  readonly key: string
  readonly letters: string
  readonly own?: string
}

export const partKey = (board: string, part: string): string => `${board}.${part}`
export const loadKey = (load: string): string => `load ${load}`

/** The one apparatus that the poles and switches of a supply device are. */
export const apparatusKey = (device: string): string => `device ${device}`

const moves = ({ kind }: Part): boolean => kind === 'pole' || kind === 'switch'

function deviceNames(job: Job, letters: Letters): readonly Named[] {
  return [...job.devices].flatMap(([id, { board }]) => {
    const poles = board.parts.filter(moves)
    const kind = poles.some(each => each.kind === 'pole') ? 'pole' : 'switch'
    const rest = board.parts.filter(each => !moves(each))
    return [
      ...(poles.length > 0 ? [{ key: apparatusKey(id), letters: letters[kind] }] : []),
      ...rest.map(each => ({ key: partKey(id, each.id), letters: letters[each.kind] })),
    ]
  })
}

const boxNames = ({ box }: Job, letters: Letters): readonly Named[] =>
  box.board.parts.map(each => ({
    key: partKey(BOX, each.id),
    letters: letters[each.kind],
    own: each.id,
  }))

const loadNames = ({ loads }: Job, letters: Letters): readonly Named[] =>
  loads.map(({ id, kind }) => ({ key: loadKey(id), letters: letters[kind] }))

/** Every name that stands on some board already: no designation may mean another thing. */
function printed(job: Job): ReadonlySet<string> {
  const boards = [BOX, ...job.devices.keys()].flatMap(name => boardOf(job, name) ?? [])
  return new Set(
    boards.flatMap(board =>
      [...board.terminals, ...board.parts, ...board.jumpers, ...board.connectors].map(
        each => each.id,
      ),
    ),
  )
}

const numberOf = (own: string | undefined): string | undefined =>
  own === undefined ? undefined : /^[A-Za-z]+([1-9]\d?)$/u.exec(own)?.[1]

/**
 * A reference designation for everything on the ladder: unique in the job, and the same whatever
 * the landing is.
 *
 * What the board prints is kept where it has the usual letters (F1 stays F1), else its number is
 * (R3, a relay, is K3).
 */
export function designationsOf(job: Job, style: LadderStyle): ReadonlyMap<string, string> {
  const letters = LETTERS[style]
  const all = [...deviceNames(job, letters), ...boxNames(job, letters), ...loadNames(job, letters)]
  const taken = new Set(printed(job))
  const names = new Map<string, string>()
  const give = ({ key }: Named, name: string) => {
    names.set(key, name)
    taken.add(name)
  }
  for (const each of all) {
    const number = numberOf(each.own)
    if (number === undefined) continue
    const name = `${each.letters}${number}`
    if (name === each.own || !taken.has(name)) give(each, name)
  }
  for (const each of all) {
    if (names.has(each.key)) continue
    let number = 1
    while (taken.has(`${each.letters}${number}`)) number++
    give(each, `${each.letters}${number}`)
  }
  return names
}

/** The name of one pole of an apparatus: by its place among them. */
export function poleName(job: Job, board: string, part: string, apparatus: string): string {
  const poles = boardOf(job, board)?.parts.filter(moves) ?? []
  return poles.length > 1
    ? `${apparatus}.${poles.findIndex(each => each.id === part) + 1}`
    : apparatus
}
