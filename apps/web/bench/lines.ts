import { firstScreenLines } from './first-screen.ts'
import { jobLines } from './jobs.ts'
import { lighthouseLines } from './lighthouse.ts'
import type { Line } from './line.ts'
import { offlineLines } from './offline-start.ts'
import { wiringLines } from './wiring.ts'

/** All that is measured, in the order in which it is printed: a new line goes here. */
export const LINES: readonly Line[] = [
  ...firstScreenLines,
  ...offlineLines,
  ...jobLines,
  ...wiringLines,
  ...lighthouseLines,
]
