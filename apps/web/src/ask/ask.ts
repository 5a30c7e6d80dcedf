import type { Question, Questions, Refusal, Reply, Request, ShelfTexts } from './protocol.ts'

/** How a question is asked. */
export interface AskOptions {
  /** Ends the work itself, not only the waiting. */
  readonly signal?: AbortSignal
  readonly progress?: (detail: string) => void
}

/** Thrown where the core has no answer; says why. */
export class NoAnswer extends Error {
  readonly refusal: Refusal
  constructor(refusal: Refusal) {
    super(`${refusal.reason}: ${refusal.detail}`)
    this.refusal = refusal
  }
}

interface Waiting {
  readonly request: Request
  readonly resolve: (answers: never) => void
  readonly reject: (error: unknown) => void
  readonly progress: AskOptions['progress']
}

/**
 * The core in a thread of its own: every question is one message, and cancelling one ends the thread.
 *
 * A new thread reads the shelf again and is asked what the others still wait for: nothing is lost but
 * the answer that nobody wants.
 */
export class Core {
  #worker: Worker | undefined
  #next = 1
  #shelf: ShelfTexts | undefined
  readonly #waiting = new Map<number, Waiting>()
  readonly #make: () => Worker

  constructor(make: () => Worker) {
    this.#make = make
  }

  /** Asks one question; throws `NoAnswer`, or an AbortError once the signal fires. */
  ask<Asked extends Question>(
    question: Asked,
    asks: Questions[Asked]['asks'],
    { signal, progress }: AskOptions = {},
  ): Promise<Questions[Asked]['answers']> {
    return new Promise((resolve, reject) => {
      if (signal?.aborted) {
        reject(aborted())
        return
      }
      const id = this.#next++
      const request = { id, question, asks } as Request
      this.#waiting.set(id, { request, resolve: resolve as Waiting['resolve'], reject, progress })
      signal?.addEventListener('abort', () => this.#cancel(id), { once: true })
      this.#thread(question !== 'shelf').postMessage(request)
      if (question === 'shelf') this.#shelf = asks as ShelfTexts
    })
  }

  /** Ends the thread; whoever waits is told. */
  close(): void {
    this.#worker?.terminate()
    this.#worker = undefined
    for (const each of this.#waiting.values()) each.reject(aborted())
    this.#waiting.clear()
  }

  /** The thread that is there, or a new one, which first reads the shelf again. */
  #thread(withShelf: boolean): Worker {
    if (this.#worker) return this.#worker
    const worker = this.#make()
    worker.onmessage = ({ data }: MessageEvent<Reply>) => this.#hear(data)
    worker.onerror = event => this.#fail(event.message)
    this.#worker = worker
    if (withShelf && this.#shelf)
      worker.postMessage({ id: 0, question: 'shelf', asks: this.#shelf } as Request)
    return worker
  }

  #hear(reply: Reply): void {
    const waiting = this.#waiting.get(reply.id)
    if (!waiting) return
    if (reply.kind === 'progress') {
      waiting.progress?.(reply.detail)
      return
    }
    this.#waiting.delete(reply.id)
    if (reply.kind === 'answer') waiting.resolve(reply.answers as never)
    else waiting.reject(new NoAnswer(reply.refusal))
  }

  /** A thread that broke down: whoever waits is told, the next question gets a new one. */
  #fail(detail: string): void {
    this.#worker?.terminate()
    this.#worker = undefined
    for (const each of this.#waiting.values())
      each.reject(new NoAnswer({ reason: 'fault', detail }))
    this.#waiting.clear()
  }

  #cancel(id: number): void {
    const waiting = this.#waiting.get(id)
    if (!waiting) return
    this.#waiting.delete(id)
    waiting.reject(aborted())
    this.#worker?.terminate()
    this.#worker = undefined
    const others = [...this.#waiting.values()].map(each => each.request)
    if (others.length === 0) return
    const thread = this.#thread(others.every(each => each.question !== 'shelf'))
    for (const each of others) thread.postMessage(each)
  }
}

const aborted = (): DOMException => new DOMException('cancelled', 'AbortError')
