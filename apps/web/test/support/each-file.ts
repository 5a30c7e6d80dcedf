import { afterAll, expect } from 'vitest'
import { closeAll } from './open.ts'
import { leftRunning } from './processes.ts'

afterAll(async () => {
  try {
    await closeAll()
  } finally {
    expect(await leftRunning(), 'browsers still running after the tests').toEqual([])
  }
})
