import type { StoredEntry } from '@tubwright/records'
import { ownScript } from '../offline/index.ts'
import type { CopyQuestion, CopyQuestions, CopyReply } from './copy-protocol.ts'
import type { Space, StoredPhoto } from './database.ts'
import workerUrl from './second-copy-worker.ts?worker&url'
import { sha256 } from './sha256.ts'

interface Waiting {
  readonly resolve: (answer: never) => void
  readonly reject: (error: unknown) => void
}

/** A thread that does not answer in this time [ms] is done without. */
const PATIENCE = 5000
const NEWLINE = 10

type PhotoHead = Pick<StoredPhoto, 'type' | 'width' | 'height'>

function readLine(line: string): readonly StoredEntry[] {
  try {
    return [JSON.parse(line) as StoredEntry]
  } catch {
    return []
  }
}

/**
 * The entries of a space once more, as lines in files of the browser's private file system.
 *
 * A browser that is killed while it writes can find its database broken at the next start, and throws
 * it away. The copy is written after the database, so it never holds what the database has not had;
 * where there is no such file system, there is no copy, and everything goes on without.
 */
export class SecondCopy {
  readonly #space: Space
  readonly #waiting = new Map<number, Waiting>()
  #worker: Worker | undefined
  #next = 1
  #isGone = false

  constructor(space: Space) {
    this.#space = space
  }

  /** Jobs, or photos by their hash, that the copy holds. */
  list(holds: 'jobs' | 'photos'): Promise<readonly string[]> {
    return this.#ask('list', { holds }).catch(() => [])
  }

  /** Entries of one job, as they were stored. */
  async entries(job: string): Promise<readonly StoredEntry[]> {
    const lines = await this.#ask('read', { job }).catch(() => [])
    return lines.flatMap(readLine)
  }

  /** Resolves once they are on the disk, or cannot be. */
  async append(job: string, entries: readonly StoredEntry[]): Promise<void> {
    const lines = entries.map(({ id, digest, text }) => JSON.stringify({ id, digest, text }))
    await this.#ask('append', { job, lines }).catch(() => undefined)
  }

  /** The photo as it is shown; its original is not copied. */
  async keepPhoto({ hash, type, width, height, bytes }: StoredPhoto): Promise<void> {
    const head = new TextEncoder().encode(`${JSON.stringify({ type, width, height })}\n`)
    const body = new Uint8Array(await bytes.arrayBuffer())
    const whole = new Uint8Array(head.length + body.length)
    whole.set(head)
    whole.set(body, head.length)
    await this.#ask('keep-photo', { name: hash, bytes: whole }).catch(() => undefined)
  }

  /** Undefined where its bytes are not those of its hash any more. */
  async photo(hash: string): Promise<StoredPhoto | undefined> {
    try {
      const whole = await this.#ask('read-photo', { name: hash })
      const end = whole.indexOf(NEWLINE)
      const head = JSON.parse(new TextDecoder().decode(whole.subarray(0, end))) as PhotoHead
      const body = whole.slice(end + 1)
      if ((await sha256(body)) !== hash) return undefined
      return { ...head, hash, bytes: new Blob([body], { type: head.type }) }
    } catch {
      return undefined
    }
  }

  /** Lets go of the files, so that another tab can have them. */
  async release(): Promise<void> {
    if (this.#worker) await this.#ask('release', {}).catch(() => undefined)
  }

  async wipe(): Promise<void> {
    await this.#ask('wipe', {}).catch(() => undefined)
  }

  async close(): Promise<void> {
    await this.release()
    this.#worker?.terminate()
    this.#worker = undefined
  }

  async #ask<Asked extends CopyQuestion>(
    ask: Asked,
    asks: Readonly<CopyQuestions[Asked]['asks']>,
  ): Promise<CopyQuestions[Asked]['answers']> {
    if (this.#isGone || !navigator.storage?.getDirectory) throw new Error('no second copy here')
    const id = this.#next++
    const tooLong = setTimeout(() => this.#giveUp(), PATIENCE)
    try {
      return await new Promise<CopyQuestions[Asked]['answers']>((resolve, reject) => {
        this.#waiting.set(id, { resolve, reject })
        this.#thread().postMessage({ ...asks, id, ask, space: this.#space })
      })
    } finally {
      clearTimeout(tooLong)
    }
  }

  #thread(): Worker {
    if (this.#worker) return this.#worker
    const worker = new Worker(ownScript(workerUrl) as unknown as string, { type: 'module' })
    worker.onmessage = ({ data }: MessageEvent<CopyReply>) => this.#hear(data)
    worker.onerror = () => this.#giveUp()
    this.#worker = worker
    return worker
  }

  #hear(reply: CopyReply): void {
    const waiting = this.#waiting.get(reply.id)
    this.#waiting.delete(reply.id)
    if ('failure' in reply) waiting?.reject(new Error(reply.failure))
    else waiting?.resolve(reply.answer as never)
  }

  /** Nobody waits for a thread that broke down: the database is what counts. */
  #giveUp(): void {
    this.#isGone = true
    this.#worker?.terminate()
    this.#worker = undefined
    for (const each of this.#waiting.values()) each.reject(new Error('no answer'))
    this.#waiting.clear()
  }
}
