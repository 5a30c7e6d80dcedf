import { run } from '../../src/run.ts'
import type { Environment, Streams } from '../../src/talk.ts'

/** Streams that keep what is written. */
export function kept(isTTY = false): {
  readonly texts: { stdout: string; stderr: string }
  readonly streams: Streams
} {
  const texts = { stdout: '', stderr: '' }
  const sink = (name: keyof typeof texts) => ({
    isTTY,
    write: (text: string) => {
      texts[name] += text
    },
  })
  return { texts, streams: { stdout: sink('stdout'), stderr: sink('stderr') } }
}

/** Runs the program in this process. */
export async function ran(
  words: readonly string[],
  environment: Environment = {},
  isTTY = false,
): Promise<{ readonly code: number; readonly stdout: string; readonly stderr: string }> {
  const { texts, streams } = kept(isTTY)
  return { code: await run(words, streams, environment), ...texts }
}
