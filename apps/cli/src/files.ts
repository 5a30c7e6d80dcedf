import { randomUUID } from 'node:crypto'
import {
  closeSync,
  fsyncSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { TEXT_MAX } from '@tubwright/formats'
import { BadInput } from './exits.ts'

const BYTES_MAX = 4 * TEXT_MAX

const why = (error: unknown): string => {
  const code = (error as NodeJS.ErrnoException).code
  if (code === 'ENOENT') return 'there is no such file'
  if (code === 'EACCES' || code === 'EPERM') return 'it may not be read or written'
  if (code === 'EISDIR') return 'it is a folder'
  return error instanceof Error ? error.message : String(error)
}

/** Reads a text file; one too large to be a description is refused unread. */
export function readText(path: string): string {
  try {
    const { size } = statSync(path)
    if (size > BYTES_MAX)
      throw new BadInput(`${path}: ${size} bytes; at most ${BYTES_MAX} are read.`)
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path))
  } catch (error) {
    if (error instanceof BadInput) throw error
    if (error instanceof TypeError) throw new BadInput(`${path}: it is no UTF-8 text.`)
    throw new BadInput(`${path}: ${why(error)}.`)
  }
}

/** Writes a file whole or not at all: beside its place first, on the disk, then renamed. */
export function writeWhole(path: string, text: string): void {
  const beside = join(dirname(path), `.${randomUUID()}.part`)
  try {
    const file = openSync(beside, 'wx')
    try {
      writeSync(file, text)
      fsyncSync(file)
    } finally {
      closeSync(file)
    }
    renameSync(beside, path)
  } catch (error) {
    rmSync(beside, { force: true })
    throw new BadInput(`${path} was not written: ${why(error)}.`)
  }
}
