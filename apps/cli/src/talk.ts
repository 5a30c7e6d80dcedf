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

/** Control characters of an untrusted text never reach the terminal. */
export const plain = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
  text.replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/gu, '\uFFFD')

export function talkTo(
  stdout: NodeJS.WriteStream,
  stderr: NodeJS.WriteStream,
  environment: NodeJS.ProcessEnv,
): Talk {
  const wanted = stdout.isTTY === true && !environment['NO_COLOR']
  return {
    data: text => stdout.write(`${text}\n`),
    note: text => stderr.write(`${text}\n`),
    bold: paint('1', wanted),
    red: paint('31;1', wanted),
    yellow: paint('33;1', wanted),
    green: paint('32;1', wanted),
    dim: paint('2', wanted),
  }
}
