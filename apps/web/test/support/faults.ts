import type { BrowserContext } from 'playwright-core'
import type { Outside } from './outside.ts'

export interface Faults {
  /** Tells what went wrong so far, and forgets it: for a test that causes a fault on purpose. */
  readonly take: () => readonly string[]
}

export interface FaultOptions {
  /** Where the page may come from. */
  readonly origin: () => string
  /** True while the test keeps the network away, when a request may well fail. */
  readonly cut: () => boolean
  readonly outside: Outside
}

const OWN_SCHEMES = new Set(['blob:', 'data:', 'about:'])

/** Chromium writes a failed request to the console. Without a network that is no fault of the page. */
const NO_NETWORK =
  /net::ERR_(?:INTERNET_DISCONNECTED|CONNECTION_REFUSED|CONNECTION_RESET|EMPTY_RESPONSE|FAILED|NETWORK_CHANGED)/u

/** Everything a page does that no page should: a console error also tells a breach of the policy. */
export function watch(context: BrowserContext, options: FaultOptions): Faults {
  const faults: string[] = []
  context.on('console', message => {
    if (message.type() !== 'error') return
    const text = message.text()
    if (options.cut() && NO_NETWORK.test(text)) return
    faults.push(`console: ${text} (${message.location().url})`)
  })
  context.on('weberror', error => faults.push(`uncaught: ${String(error.error())}`))
  context.on('request', request => {
    const url = new URL(request.url())
    if (url.origin === options.origin() || OWN_SCHEMES.has(url.protocol)) return
    faults.push(`third party: ${request.url()}`)
  })
  return { take: () => [...faults.splice(0), ...asked(options.outside)] }
}

const asked = ({ asked }: Outside): readonly string[] =>
  (asked as string[]).splice(0).map(each => `third party: ${each}`)
