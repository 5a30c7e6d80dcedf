import type { Printed } from '../../engines/circuit/support/printed.ts'

export const TABLE: Printed & {
  readonly kilowatts: readonly number[]
  readonly ampsAtVolts: Readonly<Record<120 | 208 | 240, readonly number[]>>
} = {
  id: 'heater-currents-table',
  found: 'page',
  why: 'a whole printed table',
  kilowatts: [1, 2, 3, 4, 5, 6, 7.5, 10],
  ampsAtVolts: {
    120: [8.4, 16.7, 25, 33.4, 41.7, 50, 62.5, 83.4],
    208: [4.8, 9.7, 14.5, 19.3, 24.1, 28.9, 36.1, 48.1],
    240: [4.2, 8.4, 12.5, 16.7, 20.9, 25, 31.3, 41.7],
  },
}
