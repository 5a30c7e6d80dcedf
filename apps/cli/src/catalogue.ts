import { existsSync, readdirSync } from 'node:fs'
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
import { readText } from './files.ts'

/** Everything that a survey can be matched with. */
export interface Shelf {
  readonly folder: string
  readonly devices: ReadonlyMap<string, SupplyDevice>
  readonly boxes: readonly ControlBox[]
  /** Ids of the surveys that lie in it. */
  readonly tubs: readonly string[]
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

const orRefuse = <Value>(read: Read<Value>, what: string): Value => {
  if (read.value !== undefined && read.diagnostics.length === 0) return read.value
  throw new BadInput(`${what} cannot be used`, read.diagnostics)
}

/** Everything in a folder, by its id; one id in two files is refused. */
function readAll<Value extends { readonly id: string }>(
  folder: string,
  read: (file: string, text: string) => Read<Value>,
): ReadonlyMap<string, Value> {
  const results = yamlFiles(folder).map(file => ({ file, ...read(file, readText(file)) }))
  const diagnostics = results.flatMap(each => each.diagnostics)
  if (diagnostics.length > 0) throw new BadInput(`${folder} cannot be used`, diagnostics)
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
export function readShelf(folder: string): Shelf {
  if (!existsSync(folder)) throw new BadInput(`${folder}: there is no such folder.`)
  if (!existsSync(join(folder, 'boxes')))
    throw new BadInput(`${folder}: a catalogue has a folder "boxes"; this has none.`)
  const devices = readAll(join(folder, 'devices'), readSupplyDevice)
  const tubs = yamlFiles(join(folder, 'tubs')).map(
    file => /([^/\\]+)\.ya?ml$/u.exec(file)?.[1] ?? '',
  )
  let boxes: readonly ControlBox[] | undefined
  return {
    folder,
    devices,
    tubs,
    get boxes() {
      boxes ??= [...readAll(join(folder, 'boxes'), readControlBox).values()]
      return boxes
    },
  }
}

/** What is said of a name that is neither in the catalogue nor a file. */
function noSuch(what: string, name: string, known: readonly string[]): BadInput {
  const stem = /([^/\\]*?)(?:\.ya?ml)?$/u.exec(name)?.[1] ?? name
  const near = nearest(stem, known)
  const hint = near === undefined ? '' : ` Did you mean the ${what} "${near}"?`
  const isPath = /[/\\]|\.ya?ml$/u.test(name)
  const list = isPath ? '' : ` It may be a file, or one of the catalogue: ${known.join(', ')}.`
  return new BadInput(`${name}: there is no such ${isPath ? 'file' : what}.${list}${hint}`)
}

/** A survey by its path, or a tub of the catalogue by its id. */
export function findSurvey(shelf: Shelf, name: string): Survey {
  const inShelf = shelf.tubs.includes(name) ? join(shelf.folder, 'tubs', `${name}.yaml`) : undefined
  const path = inShelf ?? name
  if (!existsSync(path)) throw noSuch('tub', name, shelf.tubs)
  return orRefuse(readSurvey(path, readText(path), shelf.devices), path)
}

/** A box by its path, or one of the catalogue by its id. */
export function findBox(shelf: Shelf, name: string): ControlBox {
  const box = shelf.boxes.find(each => each.id === name)
  if (box) return box
  if (existsSync(name)) return orRefuse(readControlBox(name, readText(name)), name)
  throw noSuch(
    'box',
    name,
    shelf.boxes.map(each => each.id),
  )
}

export const jobFor = (shelf: Shelf, survey: Survey, box: ControlBox): Job =>
  jobOf(survey, box, shelf.devices)

/** The box a landing file names, before the landing can be checked against its job. */
export const boxNamedBy = (path: string): string =>
  orRefuse(readLanding(path, readText(path)), path).box

/** A landing file, checked against the job it is judged with. */
export const findLanding = (job: Job, path: string): Landing =>
  orRefuse(readLanding(path, readText(path), job), path)
