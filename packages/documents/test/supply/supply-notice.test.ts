import { checkSupply } from '@tubwright/core'
import { ENGLISH } from '@tubwright/words'
import { expect, test } from 'vitest'
import { demoDevices, demoTub } from '../../../core/test/support/demo.ts'
import { supplyNotice } from '../../src/index.ts'

const noticeOf = (tub: string) =>
  supplyNotice(checkSupply(demoTub(tub), demoDevices), undefined, ENGLISH)

test('what is dangerous about a supply is told whole, what is open by number', () => {
  const { outcome, dangers, open, lead } = noticeOf('plain-breaker-230')
  expect(outcome).toBe('breaks')
  expect(lead).toBe('It breaks.')
  expect(dangers).toContain('No ground-fault device watches this circuit.')
  expect(open).toBeGreaterThan(0)
})

test('a supply that holds says no more than that', () => {
  expect(noticeOf('told-run-240')).toEqual({
    outcome: 'holds',
    lead: 'It holds.',
    dangers: [],
    open: 0,
  })
})
