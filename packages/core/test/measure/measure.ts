import { wireLanding } from '@tubwright/formats'
import type { Finding, Job, Landing } from '../../src/index.ts'
import { judgeLanding, landing as landingSchema, planRefit } from '../../src/index.ts'
import type { Judgement, OracleJob, WrongLanding } from '../oracle/oracle.ts'
import { judgeLanding as judgeByOracle, readJob, wrongLandings } from '../oracle/oracle.ts'
import { demoBoxes, demoDevices, demoIds, demoJob, demoText, demoTub } from '../support/demo.ts'

/** What became of the wrong landings of one job. */
export interface Tally {
  readonly job: string
  tried: number
  hazardous: number
  harmless: number
  right: number
  undecided: number
  readonly missed: string[]
  readonly overFlagged: string[]
  readonly rightFlagged: string[]
  readonly undecidedNames: string[]
}

export interface Measured {
  readonly job: Job
  readonly oracle: OracleJob
  readonly name: string
}

/** Every demo tub with a plan, for both judges: on the box of its best plan, or on every box that serves. */
export function demoMeasured(boxes: 'best' | 'every' = 'best'): readonly Measured[] {
  return demoIds('tubs').flatMap(id => {
    const { plans } = planRefit(demoTub(id), demoBoxes(), demoDevices)
    return plans.slice(0, boxes === 'best' ? 1 : undefined).map(({ plan: { landing, box } }) => {
      const files = {
        survey: demoText('tubs', id),
        box: demoText('boxes', box),
        devices: demoIds('devices').map(each => demoText('devices', each)),
      }
      return {
        job: demoJob(id, box),
        oracle: readJob(files, wireLanding(landing)),
        name: `${id} on ${box}`,
      }
    })
  })
}

export const landingOf = (wrong: WrongLanding, job: Job): Landing =>
  landingSchema.parse({
    schema: 'landing/1',
    survey: job.tub.id,
    box: job.box.id,
    ...wrong.landing,
  })

/** The job with probes of another curve than described. */
const withCurves = (job: Job, { overrides }: WrongLanding): Job => {
  const curves = overrides?.probeCurves
  if (!curves) return job
  const loads = job.loads.map(load => {
    const curve = curves[load.id]
    return load.kind === 'probe' && curve ? { ...load, curve } : load
  })
  return { ...job, loads }
}

const isDanger = (each: Finding): boolean =>
  each.severity === 'danger' && (each.verdict === 'breaks' || each.verdict === 'provided')
const isFlagged = (each: Finding): boolean => isDanger(each) || each.severity === 'warning'
const isBroken = (each: Finding): boolean => each.verdict === 'breaks' && each.severity !== 'notice'

const told = (wrong: WrongLanding, judgement: Judgement, findings: readonly Finding[]): string =>
  `${wrong.name}: oracle ${judgement.class} (${judgement.reasons.join('; ')}); verifier ${
    findings.map(each => `${each.severity} ${each.message}`).join(', ') || 'clean'
  }`

function count(
  tally: Tally,
  wrong: WrongLanding,
  judgement: Judgement,
  findings: readonly Finding[],
  plannedFlags: ReadonlySet<string>,
): void {
  const own = findings.filter(each => !plannedFlags.has(keyOf(each)))
  tally.tried++
  tally[judgement.class]++
  const line = told(wrong, judgement, own)
  if (judgement.class === 'hazardous' && !findings.some(isDanger)) tally.missed.push(line)
  if (judgement.class === 'harmless' && own.some(isFlagged)) tally.overFlagged.push(line)
  if (judgement.class === 'right' && own.some(isBroken)) tally.rightFlagged.push(line)
  if (judgement.class === 'undecided') tally.undecidedNames.push(line)
}

const keyOf = ({ message, subjects }: Finding): string => `${message} ${subjects.join(' ')}`

const findingsOf = (job: Job, landing: Landing): readonly Finding[] => {
  const judged = judgeLanding(job, landing)
  if (!judged.ok) throw new Error(`no verdict: ${JSON.stringify(judged.failure)}`)
  return judged.value
}

/** A seeded choice of half: one bit of a multiplicative hash. */
const inHalf = (index: number, seed: number): boolean =>
  ((Math.imul(index + seed, 2654435761) >>> 16) & 1) === 0

export interface MeasureOptions {
  readonly seed: number
  readonly all: boolean
  /** Which of two parts, so that two workers share the work. */
  readonly part: 0 | 1
}

const emptyTally = (job: string): Tally => ({
  job,
  tried: 0,
  hazardous: 0,
  harmless: 0,
  right: 0,
  undecided: 0,
  missed: [],
  overFlagged: [],
  rightFlagged: [],
  undecidedNames: [],
})

/** Judges these landings of one job by both. */
export function measureThese({ job, oracle, name }: Measured, all: Iterable<WrongLanding>): Tally {
  const tally = emptyTally(name)
  const planned = landingOf({ name: 'plan', landing: oracle.plan }, job)
  const plannedFlags = new Set(findingsOf(job, planned).map(keyOf))
  for (const wrong of all) {
    const judgement = judgeByOracle(oracle, wrong.landing, wrong.overrides)
    const findings = findingsOf(withCurves(job, wrong), landingOf(wrong, job))
    count(tally, wrong, judgement, findings, plannedFlags)
  }
  return tally
}

function* chosen({ oracle }: Measured, options: MeasureOptions): Generator<WrongLanding> {
  let index = 0
  for (const wrong of wrongLandings(oracle)) {
    index++
    if (index % 2 === options.part && (options.all || inHalf(index >> 1, options.seed))) yield wrong
  }
}

/** Judges one part of the wrong landings of one job by both. */
export const measure = (measured: Measured, options: MeasureOptions): Tally =>
  measureThese(measured, chosen(measured, options))

/** One line a job: counts by class. */
export const lineOf = (tally: Tally): string =>
  `${tally.job}: ${tally.tried} tried; ${tally.hazardous} hazardous (${tally.missed.length} missed), ` +
  `${tally.harmless} harmless (${tally.overFlagged.length} flagged as danger or warning), ` +
  `${tally.right} right (${tally.rightFlagged.length} flagged), ${tally.undecided} undecided`
