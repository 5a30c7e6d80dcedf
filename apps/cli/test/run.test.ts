import { chmodSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { CommanderError } from 'commander'
import { afterAll, describe, expect, it } from 'vitest'
import { BadInput } from '../src/exits.ts'
import { readText, writeWhole } from '../src/files.ts'
import { report } from '../src/run.ts'
import { talkTo } from '../src/talk.ts'
import { kept, ran } from './support/in-process.ts'
import { dropFolders, freshFolder } from './support/program.ts'

const PAINT = '\u001b['
afterAll(dropFolders)

async function reported(error: unknown) {
  const { texts, streams } = kept()
  return { code: await report(error, talkTo(streams, {})), ...texts }
}

describe('what the program ends with', () => {
  it('0 where all is fine', async () => {
    const { code, stderr } = await ran(['match', 'everyday-240-circulation'])
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
  })

  it('1 where no box may serve, with what cannot be had together', async () => {
    const { code, stdout } = await ran(['match', 'no-box-120-ozonator-no-neutral'])
    expect(code).toBe(1)
    expect(stdout).toContain('No box may serve. These cannot be had together:')
  })

  it('2 on bad input, told by its place', async () => {
    const at = { file: 'a.yaml', line: 3, column: 7 }
    const slip = { code: 'wrong-value', path: ['region'], is: '"USA"', may: 'US, CA' } as const
    const error = new BadInput('a.yaml cannot be used', [{ ...at, ...slip, didYouMean: 'US' }])
    expect(await reported(error)).toEqual({
      code: 2,
      stdout: '',
      stderr:
        'a.yaml cannot be used\na.yaml:3:7: region is "USA". It may be: US, CA. Did you mean "US"?\n',
    })
  })

  it('2 on bad words, 0 on help', async () => {
    expect((await reported(new CommanderError(1, 'some', 'words'))).code).toBe(2)
    expect((await reported(new CommanderError(0, 'some', 'words'))).code).toBe(0)
  })

  it.each([
    new Error('invariant: no sentence'),
    new TypeError('x is undefined'),
    'a text',
    undefined,
  ])('3 on a fault of ours: %s', async error => {
    const { code, stdout, stderr } = await reported(error)
    expect({ code, stdout }).toEqual({ code: 3, stdout: '' })
    expect(stderr).toContain('This is a fault of tubwright, not of what you gave it:')
    expect(stderr).toContain(error instanceof Error ? error.message : String(error))
  })
})

describe('changes at the tub', () => {
  const TUB = 'no-box-120-ozonator-no-neutral'
  const ozonator = 'Ozonator: an ozonator of 240 V, for the one of 120 V. [BUY]'

  it('are worked out only when asked for', async () => {
    expect((await ran(['match', TUB])).stdout).not.toContain('Cheapest changes')
    const { code, stdout } = await ran(['match', TUB, '--changes'])
    expect(code).toBe(1)
    expect(stdout).toContain('Cheapest changes with which a plan holds, cost 7 (relative):')
    expect(stdout).toContain(ozonator)
    expect(stdout).toContain(
      'Only a change of the supply would help: a run that brings neutral too.',
    )
  })

  it('stand in the wire form of a match', async () => {
    const { stdout } = await ran(['match', TUB, '--changes', '--json'])
    const { boxes } = JSON.parse(stdout) as { boxes: { box: string; changes?: object }[] }
    expect(boxes.find(each => each.box === 'alder-240')?.changes).toMatchObject({
      outcome: 'found',
      proof: 'holds',
      changes: [{ kind: 'replace', load: 'ozonator', from: { volts: 120 }, to: { volts: 240 } }],
    })
  })

  it('go before a plan, into its landing, and are something to heed', async () => {
    const out = join(freshFolder(), 'landing.yaml')
    const words = ['plan', TUB, '--box', 'alder-240', '--with-changes']
    const { code, stdout } = await ran([...words, '--out', out])
    expect(code).toBe(1)
    expect(stdout).toContain(`First change at the tub\n  - ${ozonator}\n`)
    expect(readFileSync(out, 'utf8')).toMatch(/note: .*Only after these changes/u)
    const wire: unknown = JSON.parse((await ran([...words, '--json'])).stdout)
    expect(wire).toMatchObject({ schema: 'wiring-plan/1', score: { replaced: 1, leftOut: 0 } })
  })

  it('are said to be none where only the supply would help, also in the wire form', async () => {
    const words = ['plan', TUB, '--box', 'heron-4', '--with-changes']
    const { code, stdout } = await ran(words)
    expect(code).toBe(1)
    expect(stdout).toContain('no changes  heron-4\n  Only a change of the supply would help')
    expect(JSON.parse((await ran([...words, '--json'])).stdout)).toMatchObject({
      schema: 'plan-failures/1',
      changes: [{ box: 'heron-4', outcome: 'out-of-reach' }],
    })
  })

  it.each(['match', 'plan'])('have an example in the help of %s', async command => {
    const { stdout } = await ran([command, '--help'])
    expect(stdout).toMatch(/\n {2}tubwright (match|plan) \S+ .*--(with-)?changes\n/u)
  })
})

describe('colour', () => {
  const words = ['match', 'everyday-240-circulation']
  it('shows where a person looks', async () => {
    const { stdout } = await ran(words, {}, true)
    expect(stdout).toContain(`${PAINT}32;1mmay serve${PAINT}0m`)
  })

  it.each([
    ['in a pipe', {}, false],
    ['with NO_COLOR', { NO_COLOR: '1' }, true],
    ['on a terminal without any', { TERM: 'dumb' }, true],
  ] as const)('is left out %s', async (_, environment, isTTY) => {
    const { stdout, stderr } = await ran(words, environment, isTTY)
    expect(stdout).toContain('may serve')
    expect(stdout + stderr).not.toContain(PAINT)
  })

  it.each([true, false])('is all that a terminal is told (terminal: %s)', isTTY => {
    const { texts, streams } = kept(isTTY)
    const talk = talkTo(streams, {})
    talk.data(`${talk.red('red')} a\u0007b\u001b[2Jc\u009b31md\re\tf`)
    talk.note('\u001b]0;title\u0007')
    const red = isTTY ? `${PAINT}31;1mred${PAINT}0m` : 'red'
    expect(texts.stdout).toBe(`${red} a\uFFFDb\uFFFD[2Jc\uFFFD31md\uFFFDe\tf\n`)
    expect(texts.stderr).toBe('\uFFFD]0;title\uFFFD\n')
  })
})

/** Does something as somebody with no rights of ours: root may do everything. */
function asNobody<Value>(does: () => Value): Value {
  if (process.geteuid?.() !== 0) return does()
  process.seteuid?.(65_534)
  try {
    return does()
  } finally {
    process.seteuid?.(0)
  }
}

describe('files', () => {
  it('that may not be read', () => {
    const path = join(freshFolder(), 'locked.yaml')
    writeFileSync(path, 'a: b', { mode: 0o000 })
    expect(() => asNobody(() => readText(path))).toThrow(`${path}: it may not be read or written.`)
  })

  it('in a folder that may only be read: nothing is left there', () => {
    const locked = freshFolder()
    chmodSync(locked, 0o555)
    expect(() => asNobody(() => writeWhole(join(locked, 'a'), 'new'))).toThrow(
      'was not written: it may not be read or written.',
    )
    expect(readdirSync(locked)).toEqual([])
  })

  it('keep who may read them', () => {
    const path = join(freshFolder(), 'mine')
    writeFileSync(path, 'old', { mode: 0o600 })
    writeWhole(path, 'new')
    expect(readFileSync(path, 'utf8')).toBe('new')
    expect(statSync(path).mode & 0o777).toBe(0o600)
  })

  it('of many bytes are written whole', () => {
    const path = join(freshFolder(), 'large')
    const text = '灯'.repeat(700_000)
    writeWhole(path, text)
    expect(readText(path)).toBe(text)
  })
})
