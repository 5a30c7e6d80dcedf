import { availableParallelism, cpus } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { freshnessOf } from '../build/inputs.ts'
import type { Bench, Line } from './line.ts'
import { stated } from './line.ts'
import { LINES } from './lines.ts'

/** This file runs from the folder that it is built to, apps/web/bench/dist. */
const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..', '..')
const BUNDLE = join(ROOT, 'apps', 'web', 'dist')

const digits = (value: number): string => (value >= 100 ? value.toFixed(0) : value.toPrecision(3))

/** What went wrong in place of a figure is a goal not reached. */
async function figureOf(line: Line, bench: Bench): Promise<number> {
  try {
    return await line.measure(bench)
  } catch (error) {
    console.error(`${line.name}: ${error instanceof Error ? error.message : String(error)}`)
    return Number.NaN
  }
}

/** Measures a line, prints it, and says whether its goal holds. */
async function run(line: Line, bench: Bench): Promise<boolean> {
  const value = await figureOf(line, bench)
  const holds = !Number.isNaN(value) && line.goal.holds(value)
  const verdict = !holds ? 'falls short' : line.goal === stated ? 'stated' : 'holds'
  const { name, unit, goal } = line
  const columns = [name.padEnd(58), digits(value).padStart(8), unit.padEnd(8), goal.text.padEnd(8)]
  console.log([...columns, verdict].join(' '))
  return holds
}

async function runAll(wanted: string): Promise<boolean> {
  const lines = LINES.filter(each => each.name.includes(wanted))
  if (lines.length === 0) throw new Error(`No line is called "${wanted}".`)
  const held: boolean[] = []
  for (const line of lines) held.push(await run(line, { bundle: BUNDLE }))
  return held.every(Boolean)
}

if (freshnessOf(ROOT, BUNDLE) !== 'fresh') throw new Error('Run "npm run build:web" first.')
console.log(`On ${availableParallelism()} cores, ${cpus()[0]?.model ?? 'unknown'}.`)
process.exitCode = (await runAll(process.argv[2] ?? '')) ? 0 : 1
