/** Where words go: a stream, or something that stands in for one. */
export interface Sink {
  readonly write: (text: string) => unknown
  readonly isTTY?: boolean | undefined
}

export interface Streams {
  readonly stdout: Sink
  readonly stderr: Sink
}

export type Environment = Readonly<Record<string, string | undefined>>

/** Data goes to stdout, talk to stderr; colour only where a person looks and wants it. */
export interface Talk {
  readonly data: (text: string) => void
  readonly note: (text: string) => void
  readonly bold: (text: string) => string
  readonly red: (text: string) => string
  readonly yellow: (text: string) => string
  readonly green: (text: string) => string
  readonly dim: (text: string) => string
}

type Paint = (text: string) => string
const paint =
  (code: string, wanted: boolean): Paint =>
  text =>
    wanted ? `\u001b[${code}m${text}\u001b[0m` : text

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/gu
// biome-ignore lint/suspicious/noControlCharactersInRegex: our own paint is left in
const CONTROL_BUT_PAINT = /(\u001b\[[\d;]*m)|[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/gu

/** Control characters of an untrusted text never reach the terminal. */
export const plain = (text: string): string => text.replace(CONTROL, '\uFFFD')

const painted = (text: string): string =>
  text.replace(CONTROL_BUT_PAINT, (_, paint: string | undefined) => paint ?? '\uFFFD')

export function talkTo({ stdout, stderr }: Streams, environment: Environment): Talk {
  const dumb = environment['TERM'] === 'dumb'
  const wanted = stdout.isTTY === true && !environment['NO_COLOR'] && !dumb
  const clean = wanted ? painted : plain
  return {
    data: text => stdout.write(`${clean(text)}\n`),
    note: text => stderr.write(`${plain(text)}\n`),
    bold: paint('1', wanted),
    red: paint('31;1', wanted),
    yellow: paint('33;1', wanted),
    green: paint('32;1', wanted),
    dim: paint('2', wanted),
  }
}
