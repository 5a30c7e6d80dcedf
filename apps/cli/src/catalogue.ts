import { existsSync, readdirSync, statSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { ControlBox, Job, Landing, SupplyDevice, Survey } from '@tubwright/core'
import { jobOf } from '@tubwright/core'
import type { Read } from '@tubwright/formats'
import {
  nearest,
  readControlBox,
  readLanding,
  readSupplyDevice,
  readSurvey,
} from '@tubwright/formats'
import { BadInput } from './exits.ts'
import { isSameFile, readText, writeWhole } from './files.ts'
import type { Heed } from './heed.ts'

/** Everything that a survey can be matched with. */
export interface Shelf {
  readonly folder: string
  readonly devices: ReadonlyMap<string, SupplyDevice>
  readonly boxes: readonly ControlBox[]
  /** Ids of the surveys that lie in it. */
  readonly tubs: readonly string[]
  /** Where warnings go of what is read from it or for it. */
  readonly heed: Heed
}

/** The folder of the demo, beside the program. */
export const demoFolder = (): string =>
  join(dirname(createRequire(import.meta.url).resolve('@tubwright/catalog/package.json')), 'data')

const yamlFiles = (folder: string): readonly string[] =>
  existsSync(folder)
    ? readdirSync(folder)
        .filter(name => /\.ya?ml$/u.test(name))
        .sort()
        .map(name => join(folder, name))
    : []

function orRefuse<Value>({ value, diagnostics }: Read<Value>, what: string, heed: Heed): Value {
  if (value === undefined) throw new BadInput(`${what} cannot be used`, diagnostics)
  heed.take(diagnostics)
  return value
}

/** Everything in a folder, by its id; one id in two files is refused. */
function readAll<Value extends { readonly id: string }>(
  folder: string,
  read: (file: string, text: string) => Read<Value>,
  heed: Heed,
): ReadonlyMap<string, Value> {
  const results = yamlFiles(folder).map(file => ({ file, ...read(file, readText(file)) }))
  const diagnostics = results.flatMap(each => each.diagnostics)
  if (results.some(each => each.value === undefined))
    throw new BadInput(`${folder} cannot be used`, diagnostics)
  heed.take(diagnostics)
  const found = new Map<string, Value>()
  for (const { file, value } of results) {
    if (!value) continue
    if (found.has(value.id))
      throw new BadInput(`${file}: its id is "${value.id}", as in another file of ${folder}.`)
    found.set(value.id, value)
  }
  return found
}

/** Reads a catalogue folder: `devices`, `tubs` if there are any, and `boxes` once one is asked for. */
export function readShelf(folder: string, heed: Heed): Shelf {
  if (!existsSync(folder)) throw new BadInput(`${folder}: there is no such folder.`)
  if (!statSync(folder).isDirectory())
    throw new BadInput(
      `${folder}: it is no folder; a catalogue is one, with a folder "boxes" in it.`,
    )
  if (!existsSync(join(folder, 'boxes')))
    throw new BadInput(`${folder}: a catalogue has a folder "boxes"; this has none.`)
  const devices = readAll(join(folder, 'devices'), readSupplyDevice, heed)
  const tubs = yamlFiles(join(folder, 'tubs')).map(
    file => /([^/\\]+)\.ya?ml$/u.exec(file)?.[1] ?? '',
  )
  let boxes: readonly ControlBox[] | undefined
  return {
    folder,
    devices,
    tubs,
    heed,
    get boxes() {
      boxes ??= [...readAll(join(folder, 'boxes'), readControlBox, heed).values()]
      return boxes
    },
  }
}

/** Every box of the catalogue, for a choice among them; one without any is refused. */
export function boxesToChoose({ folder, boxes }: Shelf): readonly ControlBox[] {
  if (boxes.length > 0) return boxes
  throw new BadInput(`${join(folder, 'boxes')}: there is no box in it; a box is a YAML file.`)
}

/** What is said of a name that is neither in the catalogue nor a file. */
function noSuch(what: string, name: string, known: readonly string[]): BadInput {
  const stem = /([^/\\]*?)(?:\.ya?ml)?$/u.exec(name)?.[1] ?? name
  const near = nearest(stem, known)
  const hint = near === undefined ? '' : ` Did you mean the ${what} "${near}"?`
  const isPath = /[/\\]|\.ya?ml$/u.test(name)
  const all =
    known.length > 0
      ? `one of the catalogue: ${known.join(', ')}`
      : 'in the catalogue, which has none'
  const list = isPath ? '' : ` It may be a file, or ${all}.`
  return new BadInput(`${name}: there is no such ${isPath ? 'file' : what}.${list}${hint}`)
}

/** A survey by its path, or a tub of the catalogue by its id. */
export function findSurvey(shelf: Shelf, name: string): Survey {
  const inShelf = shelf.tubs.includes(name) ? join(shelf.folder, 'tubs', `${name}.yaml`) : undefined
  const path = inShelf ?? name
  if (!existsSync(path)) throw noSuch('tub', name, shelf.tubs)
  return orRefuse(readSurvey(path, readText(path), shelf.devices), path, shelf.heed)
}

/** A box by its path, or one of the catalogue by its id. */
export function findBox(shelf: Shelf, name: string): ControlBox {
  const box = shelf.boxes.find(each => each.id === name)
  if (box) return box
  if (existsSync(name)) return orRefuse(readControlBox(name, readText(name)), name, shelf.heed)
  throw noSuch(
    'box',
    name,
    shelf.boxes.map(each => each.id),
  )
}

/**
 * Writes what was asked for, whole or not at all.
 *
 * Never over what it was made of: a slip in a file's name would cost the survey.
 *
 * @param named - what the command was told to read, by path or by id
 */
export function writeOutput(
  shelf: Shelf,
  path: string,
  text: string,
  named: readonly (string | undefined)[],
): void {
  const ofShelf = ['boxes', 'devices', 'tubs'].flatMap(each => yamlFiles(join(shelf.folder, each)))
  if ([...named, ...ofShelf].some(each => each !== undefined && isSameFile(each, path)))
    throw new BadInput(`${path} was not written: it is what this was made of; name another file.`)
  writeWhole(path, text)
}

export const jobFor = (shelf: Shelf, survey: Survey, box: ControlBox): Job =>
  jobOf(survey, box, shelf.devices)

/** The box a landing file names, before the landing can be checked against its job. */
export function boxNamedBy(shelf: Shelf, path: string): ControlBox {
  const { box } = orRefuse(readLanding(path, readText(path)), path, shelf.heed)
  const found = shelf.boxes.find(each => each.id === box)
  if (found) return found
  const near = nearest(
    box,
    shelf.boxes.map(each => each.id),
  )
  throw new BadInput(
    `${path}: its box is "${box}", which is not in the catalogue. ${
      near === undefined
        ? 'Give its file with --box FILE, or the catalogue it is in with --catalog FOLDER.'
        : `Did you mean "${near}"?`
    }`,
  )
}

/** A landing file, checked against the job it is judged with. */
export const findLanding = (shelf: Shelf, job: Job, path: string): Landing =>
  orRefuse(readLanding(path, readText(path), job), path, shelf.heed)
