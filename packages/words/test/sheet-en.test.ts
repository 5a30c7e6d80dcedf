import type { SheetMessage } from '@tubwright/core'
import { SHEET_MESSAGES } from '@tubwright/core'
import { expect, test } from 'vitest'
import { SHEET_EN, SHEET_PAGE_EN } from '../src/en/sheet.ts'
import { holesOf } from '../src/say.ts'

test('every message of the sheet has a sentence, and no sentence is left over', () => {
  expect(Object.keys(SHEET_EN).sort()).toEqual(Object.keys(SHEET_MESSAGES).sort())
})

test('every sentence uses every parameter that it is given, and no other', () => {
  for (const [message, params] of Object.entries(SHEET_MESSAGES))
    expect([message, [...holesOf(SHEET_EN[message as SheetMessage])].sort()]).toEqual([
      message,
      [...params].sort(),
    ])
})

test('no sentence helps round a protection', () => {
  for (const each of Object.values(SHEET_EN)) {
    expect(each).not.toMatch(/\bbypass|\bdefeat|\bdisable|for tonight|temporar/iu)
    if (/\bbridge (it|a )/iu.test(each)) expect(each).toMatch(/\bnever bridge/iu)
  }
})

test('no sentence borrows a word of a product', () => {
  for (const each of [...Object.values(SHEET_EN), ...Object.values(SHEET_PAGE_EN)])
    expect(each).not.toMatch(/\bspa\b|\bjets? \d|universal|plug-and-play|topside|\bpack\b/iu)
})

test('flow is proved by less of it, never by stopping the pump or on an empty heater', () => {
  const proofs = ['protect.probe-pair', 'protect.pressure-switch', 'protect.flow-switch'] as const
  for (const each of proofs) {
    expect(SHEET_EN[each]).toMatch(/slowly (throttle|shut)/iu)
    expect(SHEET_EN[each]).toMatch(/Heat must stop/iu)
    expect(SHEET_EN[each]).not.toMatch(/stop the pump/iu)
  }
  expect(SHEET_EN['protect.probe-pair']).toContain('never quite shut')
  // Behind the heater a shut valve raises the pressure: the switch would stay closed.
  expect(SHEET_EN['protect.pressure-switch']).toContain('between pump and heater')
  expect(SHEET_EN['protect.flow-maker']).toMatch(/maker’s own test.*Never an empty heater/u)
})

test('what the plan holds with is not called proven', () => {
  for (const each of ['head.provided', 'head.not-proven'] as const)
    expect(SHEET_EN[each]).not.toMatch(/proven/iu)
  for (const each of ['head.proof', 'head.proof-modes', 'head.margin-greatest'] as const)
    expect(SHEET_EN[each]).not.toMatch(/proven/iu)
})

test('a motor outside its band is stopped before its cause is looked for', () => {
  for (const each of ['outside.motor-high', 'outside.motor-low'] as const)
    expect(SHEET_EN[each]).toMatch(/off, lock, do not go on\. Likely: /u)
})

test('what got hot is cut out, never tightened again', () => {
  for (const of of ['load', 'device', 'cable'] as const) {
    expect(SHEET_EN[`open.heat-${of}`]).toMatch(/bright copper.*never tightened again/u)
    expect(SHEET_EN[`cut.heat-${of}`]).toMatch(/bright copper.*Tighten no heated screw/u)
  }
})

test('of two circuits both are off before anything is dead', () => {
  expect(SHEET_EN['caution.lock-circuits']).toMatch(/one off is NOT off/u)
  expect(SHEET_EN['lock.circuits-mean']).toMatch(/“dead” mean BOTH|“prove dead” mean BOTH/u)
  expect(SHEET_EN['close.owner-circuits']).toMatch(/BOTH off switches/u)
})
