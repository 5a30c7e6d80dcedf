import { randomUUID } from 'node:crypto'
import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { dirname, join } from 'node:path'
import { TEXT_MAX } from '@tubwright/formats'
import { BadInput } from './exits.ts'

const BYTES_MAX = 4 * TEXT_MAX
const CHUNK = 65_536 // [bytes]
const LINE_END = 0x0a

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  ENOTDIR: 'a file stands where its path wants a folder',
  EACCES: 'it may not be read or written',
  EPERM: 'it may not be read or written',
  EROFS: 'it may only be read',
  EISDIR: 'it is a folder; name a file in it',
  ENOSPC: 'the disk is full',
  ENAMETOOLONG: 'its name is too long',
}

const why = (error: unknown): string => {
  const known = WHY[(error as NodeJS.ErrnoException).code ?? '']
  return known ?? (error instanceof Error ? error.message : String(error))
}

const tooLarge = (path: string, size: string): BadInput =>
  new BadInput(`${path}: it has ${size} bytes; at most ${BYTES_MAX} are read.`)

/** What a file holds, up to a limit: its size alone does not tell, for a pipe has none. */
function readBytes(path: string): Uint8Array {
  const { size } = statSync(path)
  if (size > BYTES_MAX) throw tooLarge(path, String(size))
  const file = openSync(path, 'r')
  try {
    const chunks: Uint8Array[] = []
    let total = 0
    for (;;) {
      const chunk = new Uint8Array(CHUNK)
      const count = readSync(file, chunk)
      if (count === 0) return Buffer.concat(chunks)
      total += count
      if (total > BYTES_MAX) throw tooLarge(path, `more than ${BYTES_MAX}`)
      chunks.push(chunk.subarray(0, count))
    }
  } finally {
    closeSync(file)
  }
}

/** The first line that is no UTF-8, from 1: no character of several bytes holds a line's end. */
function lineNotText(bytes: Uint8Array): number {
  const text = new TextDecoder('utf-8', { fatal: true })
  let [line, start] = [1, 0]
  for (;;) {
    const end = bytes.indexOf(LINE_END, start)
    try {
      text.decode(bytes.subarray(start, end < 0 ? bytes.length : end))
    } catch {
      return line
    }
    if (end < 0) return line
    line++
    start = end + 1
  }
}

function toText(path: string, bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new BadInput(`${path}:${lineNotText(bytes)}: it is no UTF-8 text. Save it as UTF-8.`)
  }
}

/** Whether two paths lead to one file; not so where either leads nowhere that can be seen. */
export function isSameFile(a: string, b: string): boolean {
  try {
    return realpathSync(a) === realpathSync(b)
  } catch {
    return false
  }
}

/** Reads a text file; one too large to be a description is refused unread. */
export function readText(path: string): string {
  try {
    return toText(path, readBytes(path))
  } catch (error) {
    if (error instanceof BadInput) throw error
    throw new BadInput(`${path}: ${why(error)}.`)
  }
}

function writeBeside(path: string, mode: number, text: string): void {
  const beside = join(dirname(path), `.${randomUUID()}.part`)
  try {
    const file = openSync(beside, 'wx', mode)
    try {
      writeFileSync(file, text)
      fsyncSync(file)
    } finally {
      closeSync(file)
    }
    renameSync(beside, path)
  } catch (error) {
    rmSync(beside, { force: true })
    throw error
  }
}

/**
 * Writes a file whole or not at all: beside its place first, on the disk, then renamed.
 *
 * A link is followed, and keeps being one; a device or a pipe is written straight into.
 */
export function writeWhole(path: string, text: string): void {
  const refuse = (reason: string) => new BadInput(`${path} was not written: ${reason}.`)
  try {
    const found = statSync(path, { throwIfNoEntry: false })
    if (found?.isDirectory()) throw refuse('it is a folder; name a file in it')
    if (!found && !existsSync(dirname(path))) throw refuse(`there is no folder ${dirname(path)}`)
    if (!found) writeBeside(path, 0o666, text)
    else if (found.isFile()) writeBeside(realpathSync(path), found.mode & 0o777, text)
    else writeFileSync(path, text)
  } catch (error) {
    throw error instanceof BadInput ? error : refuse(why(error))
  }
}
