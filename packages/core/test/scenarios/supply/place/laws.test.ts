import { describe, expect, test } from 'vitest'
import type { CodeFinding, Known, Region, Survey } from '../../../../src/index.ts'
import { REGIONS, SUPPLY_RULES, service, yard } from '../../../../src/index.ts'
import { gatherSupply } from '../../../../src/stages/verify/supply/gather.ts'
import { demoDevices } from '../../../support/demo.ts'
import { known, knownSi, si } from '../../../support/surveyed.ts'
import type { ServiceText, YardText } from './yard-tub.ts'
import { tubIn } from './yard-tub.ts'

const SEED = 20_261_127
const SURVEYS = Number(process.env['LAWS'] ?? 150)
const RULES = SUPPLY_RULES.filter(
  ({ about, id }) =>
    (about !== 'circuit' && Number(id.slice('SUPPLY-'.length)) >= 40) || id === 'SUPPLY-51',
)

/** Numbers from 0 to 1, the same for a seed everywhere. */
function numbersFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0
    return state / 2 ** 32
  }
}

type Random = () => number
const pick = <Value>(random: Random, all: readonly Value[]): Value =>
  all[Math.floor(random() * all.length)] as Value

/** Distances and heights at the figures of all books, and between them [m]. */
const LENGTHS = [
  0, 0.7112, 0.9, 1.25, 1.5, 1.524, 1.7, 1.8288, 2, 2.2, 2.286, 2.5, 3, 3.048, 3.2,
].concat([3.5, 3.6576, 4, 4.572, 5, 6.096, 7, 9, 12, 15.24, 16])
const length = (random: Random): string => `${pick(random, LENGTHS)} m`
const yesNo = (random: Random) => pick(random, ['yes', 'no'] as const)

function some<Thing>(random: Random, make: (id: string) => Thing): Thing[] {
  return Array.from({ length: Math.floor(random() * 3) }, (_, index) => make(`t${index}`))
}

function yardAtRandom(random: Random): YardText {
  const thing = (id: string) => ({ id, label: id, distance: length(random) })
  return {
    setting: pick(random, ['indoors', 'outdoors'] as const),
    dwelling: pick(random, ['one-family', 'other'] as const),
    selfContained: yesNo(random),
    rimHeight: length(random),
    groundBonded: yesNo(random),
    disconnect: {
      distance: length(random),
      inSight: yesNo(random),
      ...(random() < 0.5 ? { reach: length(random) } : {}),
    },
    receptacles: some(random, id => ({
      ...thing(id),
      groundFault: yesNo(random),
      feedsTub: yesNo(random),
    })),
    lights: some(random, id => ({
      ...thing(id),
      height: length(random),
      groundFault: yesNo(random),
    })),
    switches: some(random, thing),
    metal: some(random, id => ({ ...thing(id), bonded: yesNo(random) })),
    ...(random() < 0.6
      ? {
          bond: {
            size: pick(random, ['10 AWG', '8 AWG', '6 AWG']),
            strands: pick(random, ['solid', 'stranded'] as const),
          },
        }
      : {}),
  }
}

const serviceAtRandom = (random: Random): ServiceText => ({
  main: `${pick(random, [60, 100, 125, 200])} A`,
  area: `${Math.round(60 + 300 * random())} m2`,
  complete: yesNo(random),
  loads: some(random, id => ({
    id,
    label: id,
    kind: pick(random, ['range', 'dryer', 'heating', 'vehicle', 'tub', 'other'] as const),
    power: `${Math.round(1000 + 12_000 * random())} W`,
  })),
})

function surveyAtRandom(random: Random): Survey {
  const survey = tubIn(pick(random, REGIONS) as Region)
  return {
    ...survey,
    supply: { ...survey.supply, earthing: known(pick(random, ['TN-S', 'TN-C-S', 'TT'] as const)) },
    codeEdition: known(pick(random, ['2017', '2020', '2023'] as const)),
    plate: { draws: knownSi('A', pick(random, [16, 32, 40, 48])) },
    yard: yard.parse(yardAtRandom(random)),
    service: service.parse(serviceAtRandom(random)),
  }
}

type AnyKnown = Known<unknown>

const isKnown = (value: unknown): value is AnyKnown =>
  typeof value === 'object' && value !== null && 'kind' in value && 'value' in value

/** Every known input under a part of a survey, by its path as a finding asks for it. */
function pathsOf(value: unknown, path: readonly string[]): readonly (readonly string[])[] {
  if (isKnown(value)) return [path]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, each]) => pathsOf(each, [...path, key]))
}

const PARTS = ['yard', 'service', 'codeEdition'] as const
const placesOf = (survey: Survey) => [
  ...PARTS.flatMap(part => pathsOf(survey[part], [part])),
  ['supply', 'earthing'],
]

const at = (value: unknown, path: readonly string[]): unknown =>
  path.reduce<unknown>((inner, key) => (inner as Record<string, unknown>)[key], value)

function changed<Whole>(whole: Whole, [key, ...rest]: readonly string[], to: unknown): Whole {
  if (key === undefined) return to as Whole
  if (Array.isArray(whole))
    return whole.map((each, index) =>
      String(index) === key ? changed(each, rest, to) : each,
    ) as Whole
  const inner = (whole as Record<string, unknown>)[key]
  return { ...whole, [key]: changed(inner, rest, to) }
}

const OPTIONS = [
  ['yes', 'no'],
  ['indoors', 'outdoors'],
  ['one-family', 'other'],
  ['solid', 'stranded'],
  ['2017', '2020', '2023'],
  ['TN-S', 'TN-C-S', 'TT'],
]

/** The same input known less well: a set or a range that contains it, or not at all. */
function wider(random: Random, was: AnyKnown): AnyKnown {
  if (random() < 0.3) return { kind: 'unknown', reason: 'not visible' }
  const { value } = was as { value: unknown }
  if (typeof value === 'string') {
    const others = OPTIONS.find(each => each.includes(value))?.filter(each => each !== value) ?? []
    return { kind: 'one-of', values: [value, pick(random, others)], source: 'owner' }
  }
  const { si: figure } = value as { si: number }
  const spread = random() < 0.3 ? 10 : 1
  const from = si('m', Math.max(0, figure - spread * random()))
  const to = si('m', figure + spread * random())
  return random() < 0.5
    ? { kind: 'range', from, to, source: 'owner' }
    : { kind: 'one-of', values: [from, si('m', figure), to], source: 'owner' }
}

const keyOf = ({ rule, topic, subjects }: CodeFinding): string =>
  `${rule} ${topic} ${subjects.join(' ')}`

const judged = (survey: Survey): ReadonlyMap<string, CodeFinding> => {
  const evidence = gatherSupply(survey, demoDevices)
  return new Map(
    RULES.flatMap(rule => rule.check(evidence)).map(each => [keyOf(each), each] as const),
  )
}

const OPEN = ['provided', 'not-shown']

describe(`the place and the house over ${SURVEYS} surveys (seed ${SEED})`, () => {
  test('knowing an input less well never turns a verdict round', () => {
    const random = numbersFrom(SEED)
    const reached = new Set<string>()
    let opened = 0
    for (let count = 0; count < SURVEYS; count++) {
      const survey = surveyAtRandom(random)
      const before = judged(survey)
      for (const path of placesOf(survey)) {
        const less = wider(random, at(survey, path) as AnyKnown)
        const after = judged(changed(survey, path, less))
        for (const [key, finding] of before) {
          reached.add(`${finding.rule} ${finding.verdict}`)
          const other = after.get(key)
          if (!other || other.verdict === finding.verdict) continue
          opened++
          expect(
            OPEN.includes(other.verdict),
            `${survey.region}: ${key} went from ${finding.verdict} to ${other.verdict} as ${path.join('.')} became ${JSON.stringify(less)}`,
          ).toBe(true)
        }
      }
    }
    expect(opened).toBeGreaterThan(SURVEYS)
    for (const { id } of RULES) {
      expect(reached).toContain(`${id} holds`)
      const isEverWrong = ['breaks', 'experts-differ', 'not-shown'].some(each =>
        reached.has(`${id} ${each}`),
      )
      expect(isEverWrong, `${id} never finds anything`).toBe(true)
    }
  })

  test('what is asked for alone moves its verdict; what is settled asks for nothing', () => {
    const random = numbersFrom(SEED + 1)
    let asked = 0
    for (let count = 0; count < SURVEYS; count++) {
      let survey = surveyAtRandom(random)
      const places = placesOf(survey)
      for (const path of places)
        if (random() < 0.15)
          survey = changed(survey, path, wider(random, at(survey, path) as AnyKnown))
      const whole = survey
      for (const [key, finding] of judged(whole)) {
        if (!OPEN.includes(finding.verdict)) expect(finding.asks, key).toEqual([])
        const [ask] = finding.asks
        if (finding.asks.length !== 1 || ask === undefined) continue
        const path = places.find(each => nameOf(whole, each) === ask)
        if (!path) continue
        const answers = answersTo(at(whole, path) as AnyKnown, ask)
        if (answers.length === 0) continue
        asked++
        const told = answers.map(each => judged(changed(whole, path, each)).get(key)?.verdict)
        expect(new Set(told).size, `${whole.region}: ${key} asks for ${ask}`).toBeGreaterThan(1)
      }
    }
    expect(asked).toBeGreaterThan(SURVEYS / 2)
  })
})

/** A path with the ids of items in place of their numbers, as findings ask for them. */
const nameOf = (survey: Survey, path: readonly string[]): string =>
  path
    .map((key, index) => {
      const inner = at(survey, path.slice(0, index))
      return Array.isArray(inner) ? (inner[Number(key)] as { id: string }).id : key
    })
    .join('.')

/** What may be answered where one thing is asked for: what it may be, from one end to the other. */
function answersTo(open: AnyKnown, ask: string): readonly AnyKnown[] {
  if (ask.startsWith('service.') && ask !== 'service.complete') return []
  switch (open.kind) {
    case 'one-of':
      return open.values.map(known)
    case 'range': {
      const [from, to] = [open.from, open.to].map(each => (each as { si: number }).si)
      return Array.from({ length: 200 }, (_, index) =>
        knownSi('m', (from ?? 0) + (((to ?? 0) - (from ?? 0)) * index) / 199),
      )
    }
    case 'unknown': {
      const last = ask.split('.').at(-1) ?? ''
      const options = {
        setting: OPTIONS[1],
        dwelling: OPTIONS[2],
        strands: OPTIONS[3],
        codeEdition: OPTIONS[4],
        earthing: OPTIONS[5],
      }[last]
      if (['distance', 'height', 'reach', 'rimHeight'].includes(last))
        return LENGTHS.flatMap(each => [knownSi('m', each), knownSi('m', each + 0.01)])
      return (options ?? OPTIONS[0] ?? []).map(each => known(each))
    }
    default:
      return []
  }
}

test('a yard of which nothing is known is judged in any region, and asks', () => {
  const things = Array.from({ length: 12 }, (_, index) => ({ id: `t${index}`, label: `T${index}` }))
  for (const region of REGIONS) {
    const survey = tubIn(region, {
      disconnect: { reach: { unknown: 'not measured' } },
      receptacles: things,
      lights: things,
      switches: things,
      metal: things,
      bond: {},
    })
    const found = [...judged({ ...survey, service: service.parse({}) }).values()]
    expect(found.length).toBeGreaterThan(50)
    expect(found.filter(each => each.verdict === 'breaks')).toEqual([])
  }
})
