import { describe, expect, test } from 'vitest'
import type { CodeFinding, Known, Region, Survey } from '../../../../../src/index.ts'
import { checkSupply, SUPPLY_RULES } from '../../../../../src/index.ts'
import { demoDevices, demoIds, demoTub } from '../../../../support/demo.ts'
import {
  known,
  knownSi,
  si,
  withCable,
  withDevice,
  withSupply,
} from '../../../../support/surveyed.ts'

const SEED = 20_261_126
const SURVEYS = Number(process.env['LAWS'] ?? 60)

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

type AnyKnown = Known<unknown>

/** One known input of a survey: how to read and replace it, and what else it may be. */
interface Place {
  readonly name: string
  readonly get: (survey: Survey) => AnyKnown | undefined
  readonly set: (survey: Survey, value: never) => Survey
  readonly options?: readonly string[]
}

const amps = [15, 20, 30, 32, 40, 50, 60]
const cablesOf = (survey: Survey) => survey.supply.cables
const devicesOf = (survey: Survey) => survey.supply.devices

const OPTIONS = {
  where: ['indoors', 'outdoors', 'underground'],
  material: ['copper', 'aluminium'],
  insulation: ['60 °C', '70 °C', '75 °C', '90 °C'],
  method: [
    'conduit',
    'flexible-conduit',
    'sheathed-cable',
    'sheathed-cable-in-insulation',
    'cable-in-conduit',
    'armoured-cable',
    'buried-cable',
    'cord',
  ],
  alongside: ['0', '1', '3', '6', '9'],
} as const

/** Each side of the ocean has its own classes. */
const insulations = ({ region }: Survey): readonly string[] =>
  region === 'US' || region === 'CA' ? ['60 °C', '75 °C', '90 °C'] : ['70 °C', '90 °C']

/** The amps of a load's first circuit, where its plate has them. */
function ampsOf(survey: Survey, id: string): readonly Place[] {
  const circuitsOf = (tub: Survey): readonly { readonly amps?: AnyKnown | undefined }[] => {
    const load = tub.loads.find(each => each.id === id)
    return load && 'circuits' in load ? load.circuits : []
  }
  const [circuit] = circuitsOf(survey)
  if (!circuit?.amps) return []
  return [
    {
      name: `loads.${id}`,
      get: tub => circuitsOf(tub)[0]?.amps,
      set: (tub, value) => ({
        ...tub,
        loads: tub.loads.map(each =>
          each.id === id && 'circuits' in each
            ? ({
                ...each,
                circuits: each.circuits.map((one, index) =>
                  index === 0 ? { ...one, amps: value } : one,
                ),
              } as typeof each)
            : each,
        ),
      }),
    },
  ]
}

function placesOf(survey: Survey): readonly Place[] {
  const cables = cablesOf(survey).flatMap(({ id }): readonly Place[] => {
    const at = (tub: Survey) => cablesOf(tub).find(each => each.id === id)
    return [
      ...(Object.keys(OPTIONS) as (keyof typeof OPTIONS)[]).map(key => ({
        name: `${id}.${key}`,
        get: (tub: Survey) => at(tub)?.[key] as AnyKnown | undefined,
        set: (tub: Survey, value: never) => withCable(tub, id, { [key]: value }),
        options: key === 'insulation' ? insulations(survey) : OPTIONS[key],
      })),
      {
        name: `${id}.ambient`,
        get: tub => at(tub)?.ambient,
        set: (tub, value) => withCable(tub, id, { ambient: value }),
      },
    ]
  })
  const devices = devicesOf(survey).map(
    ({ id }): Place => ({
      name: `${id}.enclosure`,
      get: tub => devicesOf(tub).find(each => each.id === id)?.enclosure,
      set: (tub, value) => withDevice(tub, id, { enclosure: value }),
    }),
  )
  const plates = (['draws', 'minimumCircuit', 'maximumProtection'] as const).map(
    (key): Place => ({
      name: `plate.${key}`,
      get: tub => tub.plate?.[key],
      set: (tub, value) => ({ ...tub, plate: { ...tub.plate, [key]: value } }),
    }),
  )
  // A plate that says what everything takes speaks for loads of which nobody knows.
  const loads = survey.plate?.draws ? [] : survey.loads.flatMap(({ id }) => ampsOf(survey, id))
  return [
    ...cables,
    ...devices,
    ...plates,
    ...loads,
    {
      name: 'earthing',
      get: tub => tub.supply.earthing,
      set: (tub, value) => withSupply(tub, { earthing: value }),
      options: ['TN-S', 'TN-C-S', 'TT'],
    },
    {
      name: 'breaker',
      get: tub => tub.supply.breaker,
      set: (tub, value) => withSupply(tub, { breaker: value }),
    },
    {
      name: 'earthLoop',
      get: tub => tub.supply.earthLoop,
      set: (tub, value) => withSupply(tub, { earthLoop: value }),
    },
    {
      name: 'breakerType',
      get: tub => tub.supply.breakerType,
      set: (tub, value) => withSupply(tub, { breakerType: value }),
      options: ['B', 'C', 'D'],
    },
  ]
}

/** A survey of the demo with all of these inputs known, at random. */
function surveyedAtRandom(random: Random): Survey {
  let survey = demoTub(pick(random, demoIds('tubs')))
  for (const place of placesOf(survey)) {
    if (random() < 0.15) continue
    const value = place.options
      ? known(pick(random, place.options))
      : place.name.endsWith('ambient')
        ? knownSi('K', 273.15 + Math.round(random() * 50))
        : place.name === 'earthLoop'
          ? knownSi('Ω', 0.05 + random() * 1.9)
          : knownSi('A', pick(random, amps))
    survey = place.set(survey, value as never)
  }
  // A plate that says more than all loads together contradicts them: no survey to compare with.
  const sum = checkSupply(survey, demoDevices).circuits[0]?.demand
  return sum?.isKnown ? { ...survey, plate: { ...survey.plate, draws: knownSi('A', 1) } } : survey
}

/** The same input known less well: a set or a range that contains it, or not at all. */
function wider(random: Random, { options }: Place, was: AnyKnown): AnyKnown {
  if (random() < 0.3) return { kind: 'unknown', reason: 'not visible' }
  if (was.kind !== 'known') return was
  if (options) {
    const others = options.filter(each => each !== was.value)
    return { kind: 'one-of', values: [was.value, pick(random, others)], source: 'owner' }
  }
  const value = (was.value as { si: number }).si
  const unit = value > 200 ? 'K' : 'A'
  const spread = unit === 'K' ? 12 * random() : value * random()
  const [from, to] = [value - spread * random(), value + spread]
  return { kind: 'range', from: si(unit, from), to: si(unit, to), source: 'owner' }
}

const keyOf = ({ rule, topic, subjects }: CodeFinding): string =>
  `${rule} ${topic} ${subjects.join(' ')}`

const verdicts = (survey: Survey): ReadonlyMap<string, CodeFinding> =>
  new Map(checkSupply(survey, demoDevices).findings.map(each => [keyOf(each), each]))

const OPEN = ['provided', 'not-shown']

describe(`over ${SURVEYS} surveys (seed ${SEED})`, () => {
  test('knowing an input less well never turns a verdict round', () => {
    const random = numbersFrom(SEED)
    let [widened, opened] = [0, 0]
    for (let count = 0; count < SURVEYS; count++) {
      const survey = surveyedAtRandom(random)
      const before = verdicts(survey)
      for (const place of placesOf(survey)) {
        const was = place.get(survey)
        if (was?.kind !== 'known') continue
        const less = wider(random, place, was)
        const after = verdicts(place.set(survey, less as never))
        widened++
        for (const [key, finding] of before) {
          const other = after.get(key)
          if (!other || other.verdict === finding.verdict) continue
          opened++
          // An open verdict may stay open in another way; a settled one may only become open.
          const isFine = OPEN.includes(other.verdict)
          expect(
            isFine,
            `${survey.id}: ${key} went from ${finding.verdict} to ${other.verdict} as ${place.name} became ${JSON.stringify(less)}`,
          ).toBe(true)
        }
      }
    }
    process.stdout.write(`${widened} inputs widened, ${opened} verdicts opened\n`)
    expect(widened).toBeGreaterThan(SURVEYS * 5)
    expect(opened).toBeGreaterThan(SURVEYS)
  })

  test('what is asked for moves a verdict, whatever is settled asks for nothing', () => {
    const random = numbersFrom(SEED + 1)
    let asked = 0
    for (let count = 0; count < SURVEYS; count++) {
      const survey = surveyedAtRandom(random)
      const report = checkSupply(survey, demoDevices)
      for (const finding of report.findings) {
        const isOpen = OPEN.includes(finding.verdict)
        if (!isOpen) expect(finding.asks, keyOf(finding)).toEqual([])
        if (finding.asks.length !== 1) continue
        const place = placesOf(survey).find(
          each => `supply.cables.${each.name}` === finding.asks[0],
        )
        if (!place?.options) continue
        asked++
        const told = new Set(
          place.options.map(
            each => verdicts(place.set(survey, known(each) as never)).get(keyOf(finding))?.verdict,
          ),
        )
        expect(told.size, `${survey.id}: ${keyOf(finding)} asks for ${place.name}`).toBeGreaterThan(
          1,
        )
      }
    }
    process.stdout.write(`${asked} questions asked alone, each moves its verdict\n`)
    expect(asked).toBeGreaterThan(5)
  })
})

/** A joint that nobody sees, and a piece that hangs on nothing: no survey at random has them. */
const RARE = ['SUPPLY-8', 'SUPPLY-21']

test('every rule is reached, and no region is judged by the book of another', () => {
  const books: Readonly<Record<Region, string>> = {
    US: 'NEC',
    CA: 'CE Code',
    UK: 'BS 7671',
    EU: 'HD 60364',
    AU: 'AS/NZS',
    NZ: 'AS/NZS',
  }
  const random = numbersFrom(SEED + 2)
  const reached = new Set<string>()
  for (let count = 0; count < SURVEYS; count++) {
    const survey = surveyedAtRandom(random)
    for (const region of Object.keys(books) as Region[])
      for (const { rule, clause } of checkSupply({ ...survey, region }, demoDevices).findings) {
        reached.add(rule)
        if (clause)
          expect(
            clause.standard.startsWith('IEC') || clause.standard.startsWith(books[region]),
          ).toBe(true)
      }
  }
  const electrical = SUPPLY_RULES.filter(
    each => each.about === 'segment' || each.about === 'circuit',
  )
  for (const { id } of electrical.filter(each => !RARE.includes(each.id)))
    expect(reached, `${id} was never judged`).toContain(id)
})
