import { readdirSync, readFileSync } from 'node:fs'
import type { SupplyDevice } from '@tubwright/core'
import { readSupplyDevice } from '@tubwright/formats'

const data = new URL('../../../catalog/data/', import.meta.url)

const textsIn = (folder: string): ReadonlyMap<string, string> =>
  new Map(
    readdirSync(new URL(`${folder}/`, data))
      .filter(name => name.endsWith('.yaml'))
      .map(name => [name, readFileSync(new URL(`${folder}/${name}`, data), 'utf8')]),
  )

/** The files of the demo as they lie there, by name. */
export const TUBS = textsIn('tubs')
export const BOXES = textsIn('boxes')
export const DEVICES = textsIn('devices')

export const demo = (texts: ReadonlyMap<string, string>, name: string): string => {
  const text = texts.get(`${name}.yaml`)
  if (text === undefined) throw new Error(`the demo has no ${name}`)
  return text
}

export const CATALOGUE: ReadonlyMap<string, SupplyDevice> = new Map(
  [...DEVICES].flatMap(([name, text]) => {
    const { value } = readSupplyDevice(name, text)
    return value ? [[value.id, value] as const] : []
  }),
)
