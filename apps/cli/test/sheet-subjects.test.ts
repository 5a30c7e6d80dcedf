import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { tubwright } from './support/program.ts'

const NO_NEUTRAL = ['no-box-120-ozonator-no-neutral', '--box', 'alder-240'] as const

describe('the sheet of a changed tub', () => {
  const { status, stdout } = tubwright(['sheet', ...NO_NEUTRAL, '--with-changes'])

  it('says what to buy, on top and in the list, and asks to be heeded', () => {
    expect(status).toBe(1)
    expect(stdout).toContain('AFTER the changes below')
    expect(stdout).toContain('Before this plan holds, change: Ozonator: an ozonator of 240 V')
    expect(stdout).toContain('<strong>BUY</strong> Ozonator: an ozonator of 240 V')
  })

  it('is asked for: without it there is no plan, so no sheet', () => {
    expect(tubwright(['sheet', ...NO_NEUTRAL]).status).toBe(2)
  })
})

describe('the sheet of a landing from a file', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'landing-')), 'landing.yaml')
  tubwright(['plan', 'garden-230', '--box', 'sorrel-32', '--out', file])
  const planned = readFileSync(file, 'utf8')
  const sheet = (landing: string, ...words: readonly string[]) => {
    writeFileSync(file, landing)
    return tubwright(['sheet', 'garden-230', '--landing', file, ...words])
  }
  const exchanged = planned
    .replace('line@box: box.V1', 'line@box: box.V2')
    .replace('neutral@box: box.V2', 'neutral@box: box.V1')

  it('that holds says where it comes from', () => {
    const { status, stdout } = sheet(planned)
    expect(status).toBe(0)
    expect(stdout).toContain('Of a landing from a file')
    expect(stdout).toContain('Plan proven')
  })

  it('that does not hold is headed so, page by page, and names what is wrong', () => {
    expect(exchanged).not.toBe(planned)
    const { status, stdout } = sheet(exchanged)
    expect(status).toBe(1)
    expect(stdout).toContain('This plan is NOT shown to hold')
    expect(stdout).toMatch(/@top-left \{ content: "[^"]*NOT shown to hold"/u)
    expect(stdout).toContain('switched in its neutral alone')
    expect(stdout).not.toMatch(/Plan proven|First power/u)
  })

  it('a part alone of it is headed so too', () => {
    expect(sheet(exchanged, '--part', 'wires').stdout).toContain('This plan is NOT shown to hold')
    expect(sheet(planned, '--part', 'wires').stdout).not.toContain('NOT shown to hold')
  })

  it('cannot be had with changes as well', () => {
    expect(sheet(planned, '--with-changes').stderr).toContain('name one of them')
  })
})
