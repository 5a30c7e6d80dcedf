import type { SheetMessage } from '@tubwright/core'
import { SHEET_MESSAGES } from '@tubwright/core'
import { expect, test } from 'vitest'
import { holesOf } from '../src/say.ts'
import { SHEET_EN, SHEET_PAGE_EN } from '../src/sheet.en.ts'

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
