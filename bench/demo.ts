import { readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import type { ControlBox, SupplyDevice, Survey } from '@tubwright/core'
import type { Read } from '@tubwright/formats'
import { readControlBox, readSupplyDevice, readSurvey } from '@tubwright/formats'

const folder = join(
  dirname(createRequire(import.meta.url).resolve('@tubwright/catalog/package.json')),
  'data',
)

const orThrow = <Value>(read: Read<Value>): Value => {
  if (read.value === undefined) throw new Error(JSON.stringify(read.diagnostics))
  return read.value
}

const all = <Value>(kind: string, read: (file: string, text: string) => Read<Value>) =>
  readdirSync(join(folder, kind))
    .sort()
    .map(name => orThrow(read(name, readFileSync(join(folder, kind, name), 'utf8'))))

export const devices: ReadonlyMap<string, SupplyDevice> = new Map(
  all('devices', readSupplyDevice).map(each => [each.id, each]),
)
export const boxes: readonly ControlBox[] = all('boxes', readControlBox)
export const tubs: readonly Survey[] = all('tubs', (file, text) => readSurvey(file, text, devices))

/** The survey of a tub as it is written. */
export const tubText = (id: string): string =>
  readFileSync(join(folder, 'tubs', `${id}.yaml`), 'utf8')

export const boxNamed = (id: string): ControlBox => {
  const box = boxes.find(each => each.id === id)
  if (!box) throw new Error(`no box ${id}`)
  return box
}
export const tubNamed = (id: string): Survey => {
  const tub = tubs.find(each => each.id === id)
  if (!tub) throw new Error(`no tub ${id}`)
  return tub
}
