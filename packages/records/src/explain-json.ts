import { tooDeep } from './check-json.ts'
import type { Fault } from './fault.ts'
import { told } from './fault.ts'
import { byText } from './json.ts'

/** A list or object that the scanner is inside of. */
type Frame =
  | { readonly kind: 'list'; step: number }
  | { readonly kind: 'object'; step: string | undefined; readonly keys: Set<string> }

type Found = Omit<Fault, 'path'>

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/uy
const WORD = /true|false|null/uy

function parsed(token: string | undefined): unknown {
  try {
    return token === undefined ? undefined : JSON.parse(token)
  } catch {
    return undefined
  }
}

/** Reads a text for what keeps it from being canonical JSON: slow, only for telling where and what. */
class Scanner {
  readonly #text: string
  readonly #depth: number
  readonly #frames: Frame[] = []
  #at = 0

  constructor(text: string, depth: number) {
    this.#text = text
    this.#depth = depth
  }

  explain(): Fault {
    for (;;) {
      const found = this.#value() ?? this.#after()
      if (found === 'end') return { path: [], is: 'JSON', may: 'canonical JSON' }
      if (found) return { path: this.#frames.flatMap(each => each.step ?? []), ...found }
    }
  }

  #here(may: string): Found {
    const rest = this.#text.slice(this.#at, this.#at + 12)
    const is = rest === '' ? 'the end of the text' : told(rest)
    return { is: `${is} at character ${this.#at}`, may }
  }

  #takes(sign: string): boolean {
    const isIt = this.#text.startsWith(sign, this.#at)
    if (isIt) this.#at += sign.length
    return isIt
  }

  #match(shape: RegExp): string | undefined {
    shape.lastIndex = this.#at
    const found = shape.exec(this.#text)?.[0]
    this.#at += found?.length ?? 0
    return found
  }

  #value(): Found | undefined {
    if (this.#takes('[]') || this.#takes('{}')) return undefined
    if (this.#takes('[')) return this.#open({ kind: 'list', step: 0 })
    if (this.#takes('{')) return this.#open({ kind: 'object', step: undefined, keys: new Set() })
    if (this.#text[this.#at] === '"') return this.#string()
    const number = this.#match(NUMBER)
    if (number !== undefined) return this.#plain(number)
    return this.#match(WORD) === undefined ? this.#here('a JSON value') : undefined
  }

  /** The text from here to the quote that ends it; by hand, since it may be long. */
  #quoted(): string | undefined {
    if (this.#text[this.#at] !== '"') return undefined
    for (let index = this.#at + 1; index < this.#text.length; index++) {
      if (this.#text[index] === '"') return this.#text.slice(this.#at, index + 1)
      if (this.#text[index] === '\\') index++
    }
    return undefined
  }

  #string(): Found | undefined {
    const token = this.#quoted()
    if (token === undefined || parsed(token) === undefined)
      return this.#here('a text in quotes, its control characters escaped')
    this.#at += token.length
    return this.#plain(token)
  }

  #plain(token: string): Found | undefined {
    const canonical = JSON.stringify(JSON.parse(token))
    if (canonical === token) return undefined
    const is = token.length > 40 ? `${token.slice(0, 40)}…` : token
    return { is, may: canonical === 'null' ? 'a finite number' : told(JSON.parse(token)) }
  }

  #open(frame: Frame): Found | undefined {
    if (this.#frames.length >= this.#depth) return tooDeep(this.#depth)
    this.#frames.push(frame)
    return frame.kind === 'object' ? (this.#key(frame) ?? this.#value()) : this.#value()
  }

  #key(frame: Frame & { readonly kind: 'object' }): Found | undefined {
    const token = this.#quoted()
    const key = parsed(token)
    if (token === undefined || typeof key !== 'string') return this.#here('a key in quotes')
    this.#at += token.length
    const last = frame.step
    frame.step = undefined
    if (frame.keys.has(key)) return { is: `the key ${told(key)} twice`, may: 'each key once' }
    if (last !== undefined && byText(last, key) > 0)
      return { is: `the key ${told(key)} after ${told(last)}`, may: 'keys in order' }
    frame.keys.add(key)
    frame.step = key
    return this.#plain(token) ?? (this.#takes(':') ? undefined : this.#here('":"'))
  }

  /** What follows a value: the next one of its list or object, or what ends them. */
  #after(): Found | undefined | 'end' {
    for (;;) {
      const frame = this.#frames.at(-1)
      if (frame === undefined) return this.#at === this.#text.length ? 'end' : this.#here('the end')
      if (this.#takes(',')) return this.#next(frame)
      if (!this.#takes(frame.kind === 'list' ? ']' : '}'))
        return this.#here(frame.kind === 'list' ? '"," or "]"' : '"," or "}"')
      this.#frames.pop()
    }
  }

  #next(frame: Frame): Found | undefined {
    if (frame.kind === 'object') return this.#key(frame)
    frame.step++
    return undefined
  }
}

/** Why a text is not canonical JSON, and where: the way to it, and the character. */
export const explainJson = (text: string, depth: number): Fault =>
  new Scanner(text, depth).explain()
