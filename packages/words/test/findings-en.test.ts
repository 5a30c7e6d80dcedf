import { readdirSync, readFileSync } from 'node:fs'
import type { Finding, Job, Landing } from '@tubwright/core'
import { jobOf, judgeLanding, planAndProve, planRefit } from '@tubwright/core'
import { readControlBox, readSupplyDevice, readSurvey } from '@tubwright/formats'
import { describe, expect, it } from 'vitest'
import { tellFinding } from '../src/en/index.ts'
import { VERDICT_EN } from '../src/en/terms.ts'
import type { VerifyMessage } from '../src/en/verify.ts'
import { ROUND_EN, VERIFY_EN } from '../src/en/verify.ts'
import { holesOf } from '../src/say.ts'

/** What each rule gives with its message; a name in brackets is given and left unsaid. */
const GIVEN: Readonly<Record<VerifyMessage, string>> = {
  'above-rating': 'kind label amps rated',
  'protection-overloaded': 'kind label amps rated',
  'load-over-volts': 'load volts plate share',
  'motor-starved': 'load volts plate share',
  'mains-on-low-voltage': 'terminal volts',
  'transformer-over-volts': 'part volts plate',
  'low-voltage-joined-to-mains': 'terminal',
  'load-across-mains-and-low-voltage': 'load',
  'low-voltage-load-on-mains': 'load',
  'no-earth-lead': 'load',
  'main-earth-on-small-terminal': 'terminal rated breaker',
  'load-earth-on-small-terminal': 'load terminal rated amps',
  'run-without-earth': 'cable',
  'metal-not-on-earth': 'thing',
  'mains-tied-to-earth': 'terminal',
  'metal-live': 'thing volts',
  'earth-carries-current': 'conductor amps limit',
  'ground-fault-bypassed': 'terminal volts',
  'ground-fault-blind': 'device',
  'ground-fault-near-trip': 'device amps limit',
  'disconnect-wired-round': 'device terminal volts',
  'tub-side-live': 'device terminal',
  'ground-fault-too-coarse': 'device amps limit',
  'no-ground-fault-device': 'device',
  'on-when-off': 'load',
  'only-neutral-switched': 'load',
  'heater-without-water': 'heater',
  'heater-past-contact': 'heater',
  'heater-past-limit': 'heater',
  'two-speeds-together': 'load',
  'probe-open': 'input',
  'probe-shorted': 'input',
  'reads-low': 'input shown true',
  'reads-high': 'input shown true',
  'probe-misplaced': 'input probe',
  'probe-elsewhere': 'input probe',
  'loose-and-live': 'end amps',
  'loose-and-dead': 'end [amps]',
  'loose-not-shown-dead': 'end [amps]',
  'dead-short': 'part amps rated',
  'overload-trips': 'part amps rated',
  'ground-fault-trips': 'part amps rated',
  'jumper-against-feed': 'jumper label found feed needed',
  'load-dead': 'load',
  'load-weak': 'load share',
  'heater-reduced': 'load share power',
  'load-on-wrong-command': 'load',
  'load-elsewhere': 'load place',
  'draw-above-limit': 'amps limit',
  'draw-above-breaker': 'amps limit',
  'limit-not-offered': 'setting',
  'breaker-unknown': 'setting',
  'breaker-too-large': 'breaker largest',
  'limit-above-breaker': 'allowed share',
  'no-margin': 'allowed share',
  'never-heats': 'heater',
  'conductor-behind-breaker': 'cable conductor size breaker most',
  'earth-too-small': 'cable conductor size breaker least',
  'neutral-too-small': 'cable conductor size breaker least',
  'lead-earth-thin': 'load size live',
  'earth-size-not-shown': 'cable conductor size breaker',
  'too-many-on-a-terminal': 'terminal count most',
  'size-not-held': 'terminal end size from to',
  'neutral-carries-line': 'end colour function',
  'leg-carries-no-line': 'end colour function',
  're-identify': 'end colour function',
  'earth-colour-live': 'end colour function',
  'earth-not-green': 'end colour function',
  'neutral-colour': 'end colour function',
  'live-when-off': 'load',
  'dry-after-reset': 'box',
  'unsafe-after-reset': 'box',
  'overdrawn-after-reset': 'box',
  'flow-proof-unproven': 'heater proof',
  'light-on-wrong-current': 'load needs gives',
  'below-least-load': 'part amps least',
  'wrong-frequency': 'thing plate hertz',
}

const givenFor = (message: VerifyMessage): readonly string[] =>
  GIVEN[message].split(' ').filter(Boolean)

const rules = new URL('../../core/src/stages/verify/rules/', import.meta.url)
const sources = readdirSync(rules)
  .filter(name => name.endsWith('.ts'))
  .map(name => readFileSync(new URL(name, rules), 'utf8'))

/** Every word in quotes that may be a message: what stands behind `message:` or `finding(`. */
const used = sources.flatMap(source =>
  [...source.matchAll(/(?:finding\(|message:|return amps|return \w+ \? |return)\s*([^\n;]*)/gu)]
    .flatMap(each => [...(each[1] ?? '').matchAll(/'([a-z]+(?:-[a-z]+)+)'/gu)])
    .map(each => each[1] ?? '')
    .filter(word => !Object.hasOwn(VERDICT_EN, word)),
)

const data = new URL('../../catalog/data/', import.meta.url)
const textOf = (path: string): string => readFileSync(new URL(path, data), 'utf8')
const present = <Value>(value: Value | undefined): Value => {
  if (value === undefined) throw new Error('the demo cannot be read')
  return value
}
const devices = new Map(
  readdirSync(new URL('devices/', data))
    .map(name => present(readSupplyDevice(name, textOf(`devices/${name}`)).value))
    .map(each => [each.id, each]),
)
const tubOf = (id: string) => present(readSurvey(id, textOf(`tubs/${id}.yaml`), devices).value)
const boxOf = (id: string) => present(readControlBox(id, textOf(`boxes/${id}.yaml`)).value)

function planned(tub: string, box: string): { job: Job; landing: Landing } {
  const job = jobOf(tubOf(tub), boxOf(box), devices)
  const plan = planAndProve(job)
  if (!plan.ok) throw new Error(`${tub} has no plan on ${box}`)
  return { job, landing: plan.value.plan.landing }
}

interface Change {
  readonly ends?: Readonly<Record<string, string>>
  readonly jumpers?: Readonly<Record<string, string>>
  readonly settings?: Partial<Landing['settings']>
}

const changed = (landing: Landing, { ends, jumpers, settings }: Change): Landing => ({
  ...landing,
  ends: { ...landing.ends, ...ends },
  jumpers: { ...landing.jumpers, ...jumpers },
  settings: { ...landing.settings, ...settings },
})

/** Landings that go wrong in as many ways as one-wire and one-jumper slips can. */
function slipsOf(job: Job, landing: Landing): readonly Change[] {
  const swap = (a: string, b: string): Change => ({
    ends: { [a]: landing.ends[b] ?? '', [b]: landing.ends[a] ?? '' },
  })
  const ends = job.ends.map(each => each.id)
  const neighbours = ends.slice(1).map((end, index) => swap(ends[index] ?? '', end))
  const positions = job.box.board.jumpers.flatMap(jumper =>
    jumper.positions.map(at => ({ jumpers: { [jumper.id]: at.id } })),
  )
  const limits = [4, 48, 100].map(si => ({
    settings: { currentLimit: { si: si as never, text: `${si} A` } },
  }))
  return [
    ...neighbours,
    ...ends.filter((_, index) => index % 3 === 0).map(end => ({ ends: { [end]: 'loose' } })),
    ...positions,
    ...limits,
    swap('run.neutral@gf', 'run.earth@gf'),
    swap('run.neutral@box', 'run.earth@box'),
    { ends: { 'run.neutral@gf': 'gf.EB' } },
    { ends: { 'run.leg1@box': landing.ends['pump-a.high'] ?? 'loose' } },
  ]
}

function findings(tub: string, box: string): readonly Finding[] {
  const { job, landing } = planned(tub, box)
  return slipsOf(job, landing).flatMap(slip => {
    const judged = judgeLanding(job, changed(landing, slip))
    return judged.ok ? judged.value : []
  })
}

describe('the sentence of every finding', () => {
  it('stands for every message in the rules, and none is left over', () => {
    expect([...new Set(used)].sort()).toEqual(Object.keys(VERIFY_EN).sort())
  })

  it.each(Object.keys(VERIFY_EN) as VerifyMessage[])('%s says all that it is given', message => {
    const said = givenFor(message).filter(each => !each.startsWith('['))
    expect([...holesOf(VERIFY_EN[message])].sort()).toEqual(said.toSorted())
  })

  const real = [
    ...findings('everyday-240-circulation', 'heron-4'),
    ...findings('everyday-120-plain', 'heron-4'),
  ]

  it('is given what it says by the rules themselves', () => {
    for (const { message, params } of real) {
      const given = givenFor(message as VerifyMessage).map(each => each.replace(/[[\]]/gu, ''))
      expect([message, ...Object.keys(params).sort()]).toEqual([message, ...given.toSorted()])
    }
  })

  it('is whole for wrong landings of many kinds', () => {
    const told = new Set(real.map(each => each.message))
    expect(told.size).toBeGreaterThanOrEqual(28)
    for (const finding of real) {
      const text = tellFinding(finding)
      expect(text).toMatch(/^[A-ZÀ-Ýa-z0-9“].*\.$/u)
      expect(text).not.toMatch(/[{}]|undefined|NaN|–|\.\.| {2}|-0 /u)
    }
  })

  it('names what has to hold where it holds only provided', () => {
    const survey = tubOf('burnt-plate-240')
    const boxes = readdirSync(new URL('boxes/', data)).map(name => boxOf(name.replace('.yaml', '')))
    const provided = planRefit(survey, boxes, devices).plans.flatMap(each =>
      each.verification.findings.filter(({ provided }) => provided !== undefined),
    )
    const [before = '', after = ''] = ROUND_EN.provided.replace('{sentence}', '').split('{assumed}')
    const bounded = new RegExp(`${before}.* [≤≥] [\\d.]+ A${after}$`, 'u')
    for (const each of provided) expect(tellFinding(each)).toMatch(bounded)
    expect(provided.length).toBeGreaterThan(0)
  })

  it('says a bound once where two circuits of a load share it', () => {
    const bound = (circuit: string, atMost: number) => ({
      load: 'pump',
      circuit,
      label: 'Pump',
      atMost,
    })
    const told = (provided: Finding['provided']) =>
      tellFinding({
        rule: 'VERIFY-0',
        message: 'draw-above-limit',
        verdict: 'provided',
        severity: 'warning',
        subjects: [],
        params: { amps: 35.6, limit: 32 },
        ...(provided ? { provided } : {}),
      })
    expect(told([bound('high', 12.3), bound('low', 12.3)])).toMatch(
      / Not so as long as Pump ≤ 12\.3 A\.$/u,
    )
    const { atMost: _, ...open } = bound('low', 0)
    expect(told([bound('high', 9), { ...open, atLeast: 2 }])).toMatch(
      / Not so as long as Pump ≤ 9 A, Pump ≥ 2 A\.$/u,
    )
    expect(told(undefined)).not.toContain('Not so as long as')
  })
})
