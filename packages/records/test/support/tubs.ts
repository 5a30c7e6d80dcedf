import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { JsonObject } from '@tubwright/records'
import { parse } from 'yaml'

const FOLDER = fileURLToPath(new URL('../../../catalog/data/tubs/', import.meta.url))

/** Every demo tub as a plain document. */
export const TUBS: readonly { readonly name: string; readonly document: JsonObject }[] =
  readdirSync(FOLDER)
    .sort()
    .map(name => ({ name, document: parse(readFileSync(`${FOLDER}${name}`, 'utf8')) }))
