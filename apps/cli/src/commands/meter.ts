import type { Cold, ColdState, Job } from '@tubwright/core'
import {
  allPlugged,
  celsiusFromKelvins,
  coldOf,
  insulationBetween,
  ohmsBetween,
  parseQuantity,
  pointNames,
  pointNode,
} from '@tubwright/core'
import { nearest, wireColdReading, wireInsulation } from '@tubwright/formats'
import { METER_EN, say, tellColdReading, tellInsulation } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { findSurvey } from '../catalogue.ts'
import { BadInput, EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'
import type { VerifyOptions } from './verify.ts'
import { jobAndLanding } from './verify.ts'

export interface MeterOptions extends VerifyOptions {
  readonly from: string
  readonly to: string
  readonly plugged: string
  readonly supply: string
  readonly atTemperature: string
  readonly insulation?: boolean
}

const didYouMean = (word: string, words: readonly string[]): string => {
  const near = nearest(word, words)
  return near === undefined ? `It may be one of: ${words.join(', ')}.` : `Did you mean "${near}"?`
}

/** Loads by id, or single ends; all, or none. */
function pluggedIn(job: Job, words: string): ReadonlySet<string> {
  if (words === 'all') return allPlugged(job)
  if (words === 'none') return new Set()
  const leads = job.ends.filter(each => each.of === 'lead').map(each => each.id)
  const may = [...allPlugged(job), ...leads]
  const wanted = words.split(',').map(each => each.trim())
  for (const each of wanted)
    if (!may.includes(each))
      throw new BadInput(
        `--plugged ${each}: there is no such load. ${didYouMean(each, ['all', 'none', ...allPlugged(job)])}`,
      )
  return new Set(wanted)
}

const SUPPLIES = ['off', 'open', 'closed'] as const

function stateOf(job: Job, { plugged, supply, atTemperature }: MeterOptions): Required<ColdState> {
  const how = SUPPLIES.find(each => each === supply)
  if (!how) throw new BadInput(`--supply ${supply}: it may be off, open or closed.`)
  const temperature = parseQuantity('K', atTemperature)
  if (!temperature.ok)
    throw new BadInput(
      `--at-temperature is ${temperature.failure.is}. It may be ${temperature.failure.may}.`,
    )
  return {
    plugged: pluggedIn(job, plugged),
    supply: how,
    celsius: celsiusFromKelvins(temperature.value.si),
  }
}

function nodeAt(cold: Cold, option: string, name: string): string {
  const node = pointNode(cold, name)
  if (node !== undefined) return node
  throw new BadInput(
    `${option} ${name}: there is no such point. ${didYouMean(name, pointNames(cold.job))}`,
  )
}

function showState(job: Job, state: Required<ColdState>, { from, to }: MeterOptions, talk: Talk) {
  const labels = [...state.plugged].map(id => job.loads.find(each => each.id === id)?.label ?? id)
  talk.data(talk.bold(say(METER_EN.points, { a: from, b: to })))
  talk.data(
    [
      labels.length > 0
        ? say(METER_EN.plugged, { loads: labels.join('; ') })
        : METER_EN['plugged-none'],
      METER_EN[`supply-${state.supply}`],
      say(METER_EN.celsius, { celsius: state.celsius }),
    ].join(' '),
  )
}

/** What an ohmmeter, or an insulation tester, reads between two points of a cold landing. */
export function runMeter(shelf: Shelf, name: string, options: MeterOptions, talk: Talk): number {
  const { job, landing } = jobAndLanding(shelf, findSurvey(shelf, name), options, 'measuring', talk)
  const state = stateOf(job, options)
  const cold = coldOf(job, landing, state)
  const a = nodeAt(cold, '--from', options.from)
  const b = nodeAt(cold, '--to', options.to)
  const nameOf = (load: string) => job.loads.find(each => each.id === load)?.label ?? load
  const at = { from: options.from, to: options.to, state }
  if (options.insulation) {
    const test = insulationBetween(cold, [a], [b])
    if (options.json) showWire(wireInsulation(at, test), shelf, talk)
    else {
      showState(job, state, options, talk)
      for (const line of tellInsulation(test, nameOf)) talk.data(line)
    }
    return test.kind === 'joined' ? EXIT.found : EXIT.fine
  }
  const reading = ohmsBetween(cold, a, b)
  if (options.json) showWire(wireColdReading(at, reading), shelf, talk)
  else {
    showState(job, state, options, talk)
    for (const line of tellColdReading(reading, nameOf)) talk.data(line)
  }
  return reading.kind === 'not-shown' ? EXIT.found : EXIT.fine
}
