import { existsSync, readdirSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join, resolve } from 'node:path'
import type { ControlBox, Job, Landing, SupplyDevice, Survey } from '@tubwright/core'
import { checkLanding, jobOf } from '@tubwright/core'
import type { LocatedDiagnostic, Read } from '@tubwright/formats'
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

function readAll<Value>(
  folder: string,
  read: (file: string, text: string) => Read<Value>,
): readonly Value[] {
  const results = yamlFiles(folder).map(file => read(file, readText(file)))
  const diagnostics: readonly LocatedDiagnostic[] = results.flatMap(each => each.diagnostics)
  if (diagnostics.length > 0) throw new BadInput(`${folder} cannot be used`, diagnostics)
  return results.flatMap(each => (each.value === undefined ? [] : [each.value]))
}

/** Reads a catalogue folder: `devices`, `boxes` and, if there are any, `tubs`. */
export function readShelf(folder: string): Shelf {
  if (!existsSync(join(folder, 'boxes')))
    throw new BadInput(`${folder}: a catalogue has a folder "boxes"; this has none.`)
  const devices = readAll(join(folder, 'devices'), readSupplyDevice)
  const own = new Map(devices.map(each => [each.id, each] as const))
  const boxes = readAll(join(folder, 'boxes'), readControlBox)
  const tubs = yamlFiles(join(folder, 'tubs')).map(
    file => /([^/\\]+)\.ya?ml$/u.exec(file)?.[1] ?? '',
  )
  return { folder, devices: own, boxes, tubs }
}

/** A survey by its path, or a tub of the catalogue by its id. */
export function findSurvey(shelf: Shelf, name: string): Survey {
  const inShelf = shelf.tubs.includes(name) ? join(shelf.folder, 'tubs', `${name}.yaml`) : undefined
  const path = inShelf ?? name
  if (!existsSync(path)) {
    const near = nearest(name, shelf.tubs)
    const hint = near === undefined ? '' : ` Did you mean "${near}"?`
    throw new BadInput(
      `${name}: there is no such file, and no such tub in the catalogue (${shelf.tubs.join(', ')}).${hint}`,
    )
  }
  return orRefuse(readSurvey(path, readText(path), shelf.devices), path)
}

/** A box by its path, or one of the catalogue by its id. */
export function findBox(shelf: Shelf, name: string): ControlBox {
  const box = shelf.boxes.find(each => each.id === name)
  if (box) return box
  if (existsSync(resolve(name))) return orRefuse(readControlBox(name, readText(name)), name)
  const ids = shelf.boxes.map(each => each.id)
  const near = nearest(name, ids)
  const hint = near === undefined ? '' : ` Did you mean "${near}"?`
  throw new BadInput(`${name}: there is no such box (${ids.join(', ')}).${hint}`)
}

export const jobFor = (shelf: Shelf, survey: Survey, box: ControlBox): Job =>
  jobOf(survey, box, shelf.devices)

/** A landing file, checked against the job it is judged with. */
export function findLanding(job: Job, path: string): Landing {
  const text = readText(path)
  const landing = orRefuse(readLanding(path, text), path)
  const diagnostics = checkLanding(job, landing)
  if (diagnostics.length > 0)
    throw new BadInput(
      `${path} cannot be used`,
      diagnostics.map(each => ({ ...each, ...lineOf(text, each.path), file: path })),
    )
  return landing
}

/** The line where the last key of a path stands; the first line where it does not. */
function lineOf(
  text: string,
  path: readonly (string | number)[],
): { line: number; column: number } {
  const key = String(path.at(-1) ?? '')
  const lines = text.split('\n')
  const at = lines.findIndex(each => each.trimStart().replaceAll('"', '').startsWith(`${key}:`))
  const column = at < 0 ? 1 : (lines[at]?.search(/\S/u) ?? 0) + 1
  return { line: Math.max(0, at) + 1, column }
}
