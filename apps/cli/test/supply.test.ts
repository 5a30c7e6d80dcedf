import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { ran } from './support/in-process.ts'
import { DATA, dropFolders, freshFolder } from './support/program.ts'

const TUB = 'everyday-240-circulation'

afterAll(dropFolders)

const LAID = `length: 35 ft
      where: outdoors
      material: copper
      insulation: 90 °C
      method: conduit
      ambient: 30 °C
      alongside: '0'
      conduit: { kind: PVC 40, size: '1' }`

/** The demo tub with every answer given, as a file of its own; `size` of its line conductors. */
function surveyed(size = '6 AWG'): string {
  const file = join(freshFolder(), `${TUB}.yaml`)
  const text = readFileSync(join(DATA, 'tubs', `${TUB}.yaml`), 'utf8')
    .replace('length: 35 ft', LAID)
    .replaceAll('size: 6 AWG', `size: ${size}`)
    .replace('device: ground-fault-breaker-2,', '$& terminals: 75 °C, enclosure: 60 A,')
    .replace(
      /^bay:/mu,
      'plate: { draws: 32 A, minimumCircuit: 40 A, maximumProtection: 50 A }\nbay:',
    )
  writeFileSync(file, text)
  return file
}

describe('supply', () => {
  it('ends with 0 where all holds', async () => {
    const { code, stdout } = await ran(['supply', surveyed()])
    expect([code, /It holds\./u.test(stdout)]).toEqual([0, true])
  })

  it('ends with 1 where something breaks', async () => {
    const { code, stdout } = await ran(['supply', surveyed('14 AWG')])
    expect([code, /It breaks\./u.test(stdout)]).toEqual([1, true])
  })

  it('ends with 1 where something is open', async () => {
    const { code, stdout } = await ran(['supply', TUB])
    expect([code, /Not all of it is shown\./u.test(stdout)]).toEqual([1, true])
  })

  it('ends with 2 for a tub that there is not', async () => {
    expect((await ran(['supply', 'no-such-tub'])).code).toBe(2)
  })

  it('calls what it asks of by its name', async () => {
    const { stdout } = await ran(['supply', TUB])
    expect(stdout).toContain('Garden wall to tub: copper or aluminium')
  })
})

describe('supply --page', () => {
  it('writes one HTML file, says so, and judges as without it', async () => {
    const page = join(freshFolder(), 'page.html')
    const { code, stdout, stderr } = await ran(['supply', TUB, '--page', page])
    expect(code).toBe(1)
    expect(stderr).toBe(`page written to ${page}\n`)
    expect(stdout).toBe((await ran(['supply', TUB])).stdout)
    const html = readFileSync(page, 'utf8')
    expect(html).toMatch(/^<!doctype html>\n<html lang="en">/u)
    expect(html).toContain('<title>For the electrician: supply of The everyday tub')
    expect(html).not.toContain('<script')
  })

  it('goes with --json, and with a supply that holds', async () => {
    const page = join(freshFolder(), 'page.html')
    const { code, stdout } = await ran(['supply', surveyed(), '--page', page, '--json'])
    expect(code).toBe(0)
    expect((JSON.parse(stdout) as { schema: string }).schema).toBe('supply-report/1')
    expect(readFileSync(page, 'utf8')).toContain('It holds.')
  })

  it('does not write over the survey that it is made of, nor into the catalogue', async () => {
    const survey = surveyed()
    const before = readFileSync(survey, 'utf8')
    for (const page of [survey, join(DATA, 'tubs', `${TUB}.yaml`)]) {
      const { code, stderr } = await ran(['supply', survey, '--page', page])
      expect([code, /was not written: it is what this was made of/u.test(stderr)]).toEqual([
        2,
        true,
      ])
    }
    expect(readFileSync(survey, 'utf8')).toBe(before)
  })

  it('refuses a folder that there is not', async () => {
    const page = join(freshFolder(), 'none', 'page.html')
    const { code, stderr } = await ran(['supply', TUB, '--page', page])
    expect([code, existsSync(page), /there is no folder/u.test(stderr)]).toEqual([2, false, true])
  })
})
