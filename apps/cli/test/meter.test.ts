import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ran } from './support/in-process.ts'
import { dropFolders, freshFolder } from './support/program.ts'

const TUB = 'everyday-240-circulation'
let landing = ''

beforeAll(async () => {
  landing = join(freshFolder(), 'landing.yaml')
  await ran(['plan', TUB, '--box', 'heron-4', '--out', landing])
})
afterAll(dropFolders)

const measured = (from: string, to: string, ...more: readonly string[]) =>
  ran(['meter', TUB, '--landing', landing, '--from', from, '--to', to, ...more])

describe('the ohmmeter', () => {
  it('reads an element in its place, with its band', async () => {
    const { code, stdout } = await measured('box.H1', 'box.H2', '--plugged', 'heater')
    expect(code).toBe(0)
    expect(stdout).toContain('box.H1 to box.H2, power off')
    expect(stdout).toContain('Plugged in: Heater of the box, 5.5 kW at 240 V. Supply landed')
    expect(stdout).toContain('10.5 Ω (9.14 Ω to 11.9 Ω, meter included)')
  })

  it('reads a probe at a temperature', async () => {
    const words = ['--plugged', 'none', '--supply', 'off', '--at-temperature', '40C'] as const
    const { code, stdout } = await measured('water-probe.signal', 'water-probe.common', ...words)
    expect(code).toBe(0)
    expect(stdout).toContain('Plugged in: nothing. Supply off the box. Probes at 40 °C (104 °F).')
    expect(stdout).toContain('5.3 kΩ')
  })

  it('ends with 1 where an unknown decides, and says what would settle it', async () => {
    const { code, stdout } = await measured('pump-a.common', 'pump-a.high', '--plugged', 'none')
    expect(code).toBe(1)
    expect(stdout).toContain('not shown: it may be anything from')
    expect(stdout).toContain(
      'What does Jets pump A, two speeds read cold between the leads of its circuit "high", strapped as it is found?',
    )
    expect(stdout).not.toContain('circuit "low"')
  })

  it('has a wire form without a number that is none', async () => {
    const { code, stdout } = await measured('box.A1', 'box.A3', '--json', '--supply', 'off')
    const form = JSON.parse(stdout)
    expect(code).toBe(0)
    expect(form).toMatchObject({
      schema: 'cold-reading/1',
      from: 'box.A1',
      to: 'box.A3',
      supply: 'off',
      kind: 'open',
      warnings: [],
    })
    expect(stdout).not.toContain('null')
  })
})

describe('the insulation tester', () => {
  it('says what is unplugged first, what it reads, and what that means', async () => {
    const { code, stdout } = await measured('box.A1', 'box.A4', '--insulation')
    expect(code).toBe(0)
    for (const each of [
      '500 V direct: near ',
      'Below 500 kΩ is suspect',
      'the electronics U1 of Heron 4: the test voltage reaches it, and it dies.',
      'Keypad of the box: the test voltage reaches it, and it dies.',
      'Surge suppressors are described in no file',
    ])
      expect(stdout).toContain(each)
  })

  it('ends with 1 where copper joins', async () => {
    const { code, stdout } = await measured('box.B3', 'box.A3', '--insulation')
    expect(code).toBe(1)
    expect(stdout).toContain('there is no insulation to test')
  })

  it('has a wire form', async () => {
    const words = ['--insulation', '--json', '--plugged', 'none', '--supply', 'off'] as const
    const { stdout } = await measured('box.A1', 'box.A2', ...words)
    const form = JSON.parse(stdout)
    expect(form).toMatchObject({ schema: 'insulation-test/1', kind: 'insulated', volts: 500 })
    expect(form.unplug[0]).toMatchObject({ part: { kind: 'primary' }, falsifies: true })
  })
})

describe('bad words', () => {
  it.each([
    [['--from', 'box.H9', '--to', 'box.H2'], '--from box.H9: there is no such point.'],
    [['--from', 'bix.H1', '--to', 'box.H2'], 'Did you mean "box.H1"?'],
    [['--from', 'pump-a.metl', '--to', 'box.H2'], 'Did you mean "pump-a.metal"?'],
    [['--from', 'box.H1'], "required option '--to <point>' not specified"],
    [['--from', 'box.H1', '--to', 'box.H2', '--plugged', 'heatr'], 'Did you mean "heater"?'],
    [['--from', 'box.H1', '--to', 'box.H2', '--supply', 'on'], '--supply on: it may be off, open'],
    [
      ['--from', 'box.H1', '--to', 'box.H2', '--at-temperature', '20'],
      '--at-temperature is "20". It may be a number and a unit',
    ],
  ])('%j', async (words, told) => {
    const { code, stdout, stderr } = await ran(['meter', TUB, '--landing', landing, ...words])
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toContain(told)
  })
})
