import { expect, it } from 'vitest'
import { simulate } from './support/world.ts'

const SEED = 20_310_504
const OPERATIONS =
  process.env['SOAK'] === 'all' ? 10_000_000 : Number(process.env['SOAK'] ?? 100_000)

it(
  `${OPERATIONS} operations from seed ${SEED}: same entries, same state; nothing missing in silence`,
  () => {
    const began = performance.now()
    const met = simulate(OPERATIONS, SEED)
    console.log(`simulation, ${Math.round(performance.now() - began)} ms`, met)
    expect(met.operations).toBe(OPERATIONS)
    for (const [what, times] of Object.entries(met))
      expect({ what, isMet: times > 0 }).toEqual({ what, isMet: true })
  },
  24 * 3600 * 1000,
)
