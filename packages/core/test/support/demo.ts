import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { Read } from '@tubwright/formats'
import { readControlBox, readSupplyDevice, readSurvey } from '@tubwright/formats'
import type { ControlBox, Job, SupplyDevice, Survey } from '../../src/index.ts'
import { jobOf } from '../../src/index.ts'

const folder = fileURLToPath(new URL('../../../catalog/data/', import.meta.url))

/** The text of one file of the demo, by kind and id. */
export const demoText = (kind: 'devices' | 'boxes' | 'tubs', id: string): string =>
  readFileSync(`${folder}${kind}/${id}.yaml`, 'utf8')

/** Ids of the demo's files of a kind, sorted. */
export const demoIds = (kind: 'devices' | 'boxes' | 'tubs'): readonly string[] =>
  readdirSync(`${folder}${kind}`)
    .filter(name => name.endsWith('.yaml'))
    .map(name => name.slice(0, -'.yaml'.length))
    .sort()

const orThrow = <Value>(read: Read<Value>): Value => {
  if (read.value === undefined) throw new Error(JSON.stringify(read.diagnostics, null, 2))
  return read.value
}

export const demoDevices: ReadonlyMap<string, SupplyDevice> = new Map(
  demoIds('devices').map(id => [id, orThrow(readSupplyDevice(id, demoText('devices', id)))]),
)
export const demoBox = (id: string): ControlBox =>
  orThrow(readControlBox(id, demoText('boxes', id)))
export const demoBoxes = (): readonly ControlBox[] => demoIds('boxes').map(demoBox)
export const demoTub = (id: string): Survey =>
  orThrow(readSurvey(id, demoText('tubs', id), demoDevices))
export const demoJob = (tub: string, box: string): Job =>
  jobOf(demoTub(tub), demoBox(box), demoDevices)
