import { jobOf, landing as landingSchema, statesOf } from '@tubwright/core'
import { describe, expect, test } from 'vitest'
import { boxNamed, devices, tubNamed } from '../../../../bench/demo.ts'
import type { Mode } from '../../src/screens/wiring/modes.ts'
import { ALL_OFF, commandsIn, isSameMode, switched } from '../../src/screens/wiring/modes.ts'
import { planOf } from './taken-job.ts'

function modesOf(tub: string, box: string): readonly Mode[] {
  const job = jobOf(tubNamed(tub), boxNamed(box), devices)
  const states = statesOf(job, landingSchema.parse(planOf(tub, box)))
  if (!states.ok) throw new Error('too many states')
  return states.value.filter(each => each.kind === 'mode').map(each => [...each.commands])
}

describe.each([
  ['large-60', 'bittern-8'],
  ['everyday-240-circulation', 'heron-4'],
  ['wye-208', 'dunlin-208'],
])('the modes of %s on %s', (tub, box) => {
  const modes = modesOf(tub, box)
  const order = boxNamed(box).commands.map(each => each.id)
  const commands = commandsIn(modes, order)

  test('everything off is one of them', () => {
    expect(modes.some(each => isSameMode(each, ALL_OFF))).toBe(true)
  })

  test('switching any command of any mode comes to a mode, and switches that command', () => {
    for (const mode of modes)
      for (const command of commands) {
        const next = switched(modes, mode, command)
        expect(modes.some(each => isSameMode(each, next))).toBe(true)
        if (modes.some(each => each.includes(command) !== mode.includes(command)))
          expect(next.includes(command)).toBe(!mode.includes(command))
      }
  })

  test('every command is one press from everything off', () => {
    for (const command of commands) expect(switched(modes, ALL_OFF, command)).toContain(command)
  })

  test('every mode is reached from everything off by presses', () => {
    const seen = new Map([['', ALL_OFF]])
    const left: Mode[] = [ALL_OFF]
    for (let mode = left.pop(); mode; mode = left.pop())
      for (const command of commands) {
        const next = switched(modes, mode, command)
        const key = [...next].sort().join(' ')
        if (!seen.has(key)) {
          seen.set(key, next)
          left.push(next)
        }
      }
    expect(modes.filter(each => !seen.has([...each].sort().join(' ')))).toEqual([])
  })
})

test('one speed takes the place of the other', () => {
  const modes = [[], ['high'], ['low'], ['high', 'light'], ['low', 'light'], ['light']]
  expect(switched(modes, ['high', 'light'], 'low')).toEqual(['low', 'light'])
  expect(switched(modes, ['low'], 'low')).toEqual([])
  expect(switched(modes, ['low'], 'blower')).toEqual(['low'])
})
