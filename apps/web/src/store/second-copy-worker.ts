import type { CopyAnswer, CopyAsked, CopyReply } from './copy-protocol.ts'

interface Handle {
  readonly getSize: () => number
  readonly read: (into: Uint8Array, options: { at: number }) => number
  readonly write: (from: Uint8Array, options: { at: number }) => number
  readonly truncate: (size: number) => void
  readonly flush: () => void
  readonly close: () => void
}

type Opens = FileSystemFileHandle & { readonly createSyncAccessHandle: () => Promise<Handle> }
type Lists = FileSystemDirectoryHandle & { readonly keys: () => AsyncIterable<string> }

const NEWLINE = 10
const scope = self as unknown as {
  onmessage: (event: MessageEvent<CopyAsked>) => void
  postMessage: (reply: CopyReply) => void
}
const open = new Map<string, Handle>()

type Holds = 'jobs' | 'photos'

const folderOf = async (space: string, holds: Holds): Promise<FileSystemDirectoryHandle> =>
  (await navigator.storage.getDirectory()).getDirectoryHandle(`${holds}-${space}`, { create: true })

async function handleOf(space: string, holds: Holds, name: string): Promise<Handle> {
  const folder = await folderOf(space, holds)
  return ((await folder.getFileHandle(name, { create: true })) as Opens).createSyncAccessHandle()
}

function bytesOf(handle: Handle): Uint8Array {
  const bytes = new Uint8Array(handle.getSize())
  handle.read(bytes, { at: 0 })
  return bytes
}

/** The file of a job, without the line that a killed browser left unfinished. */
async function fileOf(space: string, job: string): Promise<Handle> {
  const key = `${space}/${job}`
  const known = open.get(key)
  if (known) return known
  const handle = await handleOf(space, 'jobs', job)
  const bytes = bytesOf(handle)
  const whole = bytes.lastIndexOf(NEWLINE) + 1
  if (whole < bytes.length) handle.truncate(whole)
  open.set(key, handle)
  return handle
}

async function append(space: string, job: string, lines: readonly string[]): Promise<void> {
  const handle = await fileOf(space, job)
  const bytes = new TextEncoder().encode(lines.map(each => `${each}\n`).join(''))
  const at = handle.getSize()
  if (handle.write(bytes, { at }) < bytes.length) {
    handle.truncate(at)
    throw new Error('no room for the second copy')
  }
  handle.flush()
}

async function read(space: string, job: string): Promise<readonly string[]> {
  const text = new TextDecoder().decode(bytesOf(await fileOf(space, job)))
  return text.split('\n').filter(each => each !== '')
}

async function list(space: string, holds: Holds): Promise<readonly string[]> {
  const names: string[] = []
  for await (const name of ((await folderOf(space, holds)) as Lists).keys()) names.push(name)
  return names
}

async function keepPhoto(space: string, name: string, bytes: Uint8Array): Promise<void> {
  const handle = await handleOf(space, 'photos', name)
  try {
    handle.truncate(0)
    handle.write(bytes, { at: 0 })
    handle.flush()
  } finally {
    handle.close()
  }
}

async function readPhoto(space: string, name: string): Promise<Uint8Array> {
  const handle = await handleOf(space, 'photos', name)
  try {
    return bytesOf(handle)
  } finally {
    handle.close()
  }
}

function release(): void {
  for (const handle of open.values()) handle.close()
  open.clear()
}

async function wipe(space: string): Promise<void> {
  release()
  const root = await navigator.storage.getDirectory()
  for (const holds of ['jobs', 'photos'] as const) {
    await folderOf(space, holds)
    await root.removeEntry(`${holds}-${space}`, { recursive: true })
  }
}

async function answer(asked: CopyAsked): Promise<CopyAnswer> {
  const { space } = asked
  switch (asked.ask) {
    case 'append':
      await append(space, asked.job, asked.lines)
      return undefined
    case 'read':
      return read(space, asked.job)
    case 'list':
      return list(space, asked.holds)
    case 'keep-photo':
      await keepPhoto(space, asked.name, asked.bytes)
      return undefined
    case 'read-photo':
      return readPhoto(space, asked.name)
    case 'release':
      release()
      return undefined
    case 'wipe':
      await wipe(space)
      return undefined
  }
}

/** One after the other: two appends must not meet in one file. */
let last: Promise<unknown> = Promise.resolve()
scope.onmessage = ({ data }) => {
  last = last.then(async () => {
    try {
      scope.postMessage({ id: data.id, answer: await answer(data) })
    } catch (error) {
      scope.postMessage({ id: data.id, failure: String(error) })
    }
  })
}
