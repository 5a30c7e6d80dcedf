import { once } from '../../../base/once.ts'
import type { Possible } from '../../../base/possible.ts'
import { choiceOf, given, numberOf } from '../../../base/possible.ts'
import { celsiusFromKelvins, kelvins } from '../../../base/quantity.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import { isEarth } from '../../../domain/board/board.ts'
import { bookOf } from '../../../domain/codebook/books.ts'
import type { Catalogue } from '../../../domain/job.ts'
import { loadsOf } from '../../../domain/job.ts'
import { isMotor } from '../../../domain/load/load.ts'
import type { SupplyCircuit } from '../../../domain/supply/circuits.ts'
import { circuitAt, circuitsOf, ownFunction } from '../../../domain/supply/circuits.ts'
import type { RatedTemperature } from '../../../domain/supply/run-words.ts'
import {
  type ALONGSIDE,
  MATERIALS,
  SURROUNDINGS,
  WIRING_METHODS,
} from '../../../domain/supply/run-words.ts'
import type { Cable } from '../../../domain/supply/supply.ts'
import { EMFS, LEG_VOLTS } from '../../../domain/wiring/figures.ts'
import { allowedAmps } from '../../../domain/wiring/states.ts'
import type { Span } from '../../../domain/wiring/supply-loads.ts'
import { isOnSupply, loadSpan, NONE, plus } from '../../../domain/wiring/supply-loads.ts'
import type { Survey } from '../../survey/artifact.ts'
import type { Demand, FittedBox } from './artifact.ts'
import type { CableConductor, CircuitEvidence, Segment, SupplyEvidence } from './evidence.ts'
import { isAmerican } from './evidence.ts'
import { supplyNetwork } from './solved.ts'

/** What an unknown may be at a tub; a value outside that was surveyed counts as it is. Common practice, no source. */
const IMAGINABLE = {
  /** Air around a cable [°C]. */
  ambient: { from: -10, to: 50 },
  /** Of a tub's breaker, those between them included [A]. */
  breakers: [10, 20, 32, 50, 125],
} as const

/** Ratings fall as the air warms: ends decide, and this one lies between. */
const TABLE_AMBIENT = 30

/** Ways of holding a conductor that a book tells apart, where nobody knows which it is. */
const METHODS = {
  america: ['conduit', 'sheathed-cable', 'cord'],
  elsewhere: WIRING_METHODS,
} as const

/** Ratings fall as more lie together: none, a few, many. */
const ALONGSIDE_UNKNOWN = ['0', '3', '9'] as const

function ambientOf({ ambient }: Cable, at: string): Possible<number> {
  const inCelsius = numberOf(
    ambient,
    {
      from: IMAGINABLE.ambient.from + 273.15,
      to: IMAGINABLE.ambient.to + 273.15,
    },
    `${at}.ambient`,
  )
  if (inCelsius.kind === 'unknown')
    return { ...inCelsius, values: [IMAGINABLE.ambient.from, TABLE_AMBIENT, IMAGINABLE.ambient.to] }
  return { ...inCelsius, values: inCelsius.values.map(each => celsiusFromKelvins(kelvins(each))) }
}

const degrees = (rated: RatedTemperature): number => Number.parseInt(rated, 10)
const weaker = (a: RatedTemperature, b: RatedTemperature): RatedTemperature =>
  degrees(a) <= degrees(b) ? a : b

/** The weaker of the terminals at both ends of a cable; the box's own are the box's affair. */
function terminalsOf({ supply, region }: Survey, { from, to }: Cable): Possible<RatedTemperature> {
  const usual: readonly RatedTemperature[] = isAmerican(region) ? ['60 °C', '75 °C'] : ['70 °C']
  const ends = [from, to].flatMap((id): readonly Possible<RatedTemperature>[] => {
    const device = supply.devices.find(each => each.id === id)
    return device ? [choiceOf(device.terminals, usual, `supply.devices.${id}.terminals`)] : []
  })
  const [first = given('70 °C'), second] = ends
  if (!second) return first
  const values = first.values.flatMap(one => second.values.map(other => weaker(one, other)))
  // Asked is for the end that decides: the one that is open.
  const open = first.values.length > 1 ? first : second
  return { values: [...new Set(values)], kind: open.kind, at: open.at }
}

const INSULATIONS: Readonly<Record<'america' | 'elsewhere', readonly RatedTemperature[]>> = {
  america: ['60 °C', '75 °C', '90 °C'],
  elsewhere: ['70 °C', '90 °C'],
}

/**
 * How many conductors carry current. With two lines of a wye the neutral carries what a line does; with
 * three, what it carries the lines carry less.
 *
 * @source [NEC-310.15-E] from memory; HD 60364-5-52 523.6.1, from memory
 */
function loadedOf({ supply }: Survey, lines: number, hasNeutral: boolean): number {
  if (lines !== 2) return lines === 1 ? 2 : lines
  const isWye = supply.system === 'two-legs-of-wye' || supply.system === 'three-phase-230-400'
  return isWye && hasNeutral ? 3 : 2
}

/** A cord that is listed with its tub: by the table of cords, as it was tested. */
const LISTED_CORD = {
  material: given('copper' as const),
  insulation: given('60 °C' as const),
  method: given('cord' as const),
  ambient: given(30),
  alongside: given(0),
  terminals: given('60 °C' as const),
} satisfies Partial<Segment>

/** A conductor that was found thinner at its other end is that thin somewhere. */
function thinnerEnd(conductor: CableConductor): CableConductor {
  const other = conductor.otherEnd?.size
  return other && other.mm2 < conductor.size.mm2 ? { ...conductor, size: other } : conductor
}

function segmentOf(survey: Survey, cable: Cable): Segment {
  const at = `supply.cables.${cable.id}`
  const conductors = cable.conductors.map(thinnerEnd)
  const of = (test: (does: FeedFunction) => boolean) =>
    conductors.filter(each => test(ownFunction(each.function)))
  const lines = of(does => /^leg\d$/u.test(does))
  const [neutral] = of(does => does === 'neutral')
  const [earth] = of(isEarth)
  const america = isAmerican(survey.region) ? 'america' : 'elsewhere'
  const alongside = choiceOf<(typeof ALONGSIDE)[number]>(
    cable.alongside,
    ALONGSIDE_UNKNOWN,
    `${at}.alongside`,
  )
  // Flexible cord is of copper everywhere.
  const elsewhere = { material: LISTED_CORD.material }
  const cord = cable.moulded ? (america === 'america' ? LISTED_CORD : elsewhere) : {}
  return {
    cable,
    at,
    isLast: cable.to === 'box',
    lines,
    neutral,
    earth,
    loaded: loadedOf(survey, lines.length, neutral !== undefined),
    material: choiceOf(cable.material, MATERIALS, `${at}.material`),
    insulation: choiceOf(cable.insulation, INSULATIONS[america], `${at}.insulation`),
    method: choiceOf<(typeof WIRING_METHODS)[number]>(
      cable.method,
      METHODS[america],
      `${at}.method`,
    ),
    where: choiceOf(cable.where, SURROUNDINGS, `${at}.where`),
    ambient: ambientOf(cable, at),
    alongside: { ...alongside, values: alongside.values.map(Number) },
    terminals: terminalsOf(survey, cable),
    ...cord,
  }
}

/** All loads on one line: plates are added as they are, and nobody knows yet which leg a load goes to. */
function demandOf({ loads }: Survey): Demand {
  const own = loads.filter(isOnSupply)
  const spans = own.map(load => ({ load, span: loadSpan(load) }))
  const sum = (those: typeof spans): Span =>
    those.reduce((all, { span }) => plus(all, span ?? NONE), NONE)
  const isListed = spans.every(({ span }) => span !== undefined)
  return {
    everything: sum(spans),
    heater: sum(spans.filter(({ load }) => load.kind === 'heater')),
    others: sum(spans.filter(({ load }) => load.kind !== 'heater')),
    isListed,
    // No tub is without a heater: one that is not listed comes with a box, and takes the most of all.
    isKnown: isListed && spans.some(({ load }) => load.kind === 'heater'),
  }
}

const MOST_UNKNOWN_DRAW = 100 // [A] more than any tub takes; common practice, no source

/**
 * What the tub takes, everything at once: its loads added up, or its plate where that says more.
 *
 * A plate that says less holds something back, which a rule of the supply does not count on.
 */
function drawsOf({ plate }: Survey, demand: Demand, isSplit: boolean): Possible<number> {
  const at = 'plate.draws'
  const { from, to } = demand.everything
  const least = (value: number): number =>
    demand.isListed && !isSplit ? Math.max(value, to) : value
  const draws = plate?.draws
  if (draws && draws.kind !== 'unknown') {
    const possible = numberOf(draws, { from: 0, to: MOST_UNKNOWN_DRAW }, at)
    return { ...possible, values: [...new Set(possible.values.map(least))] }
  }
  if (!demand.isKnown || isSplit)
    return { values: [isSplit ? 0 : from, Math.max(to, MOST_UNKNOWN_DRAW)], kind: 'unknown', at }
  return from === to ? given(to, at) : { values: [from, to], kind: 'range', at }
}

const MOST_UNKNOWN_MOTOR = 25 // [A] more than the largest pump of a tub takes; common practice, no source

/** By its plate, running. */
function largestMotorOf({ loads }: Survey): Possible<number> {
  const motors = loads.filter(isOnSupply).filter(isMotor)
  const spans = motors.map(load => ({ load, span: loadSpan(load) }))
  const known = spans.flatMap(({ span }) => span ?? [])
  const silent = spans.find(({ span }) => span === undefined)
  const [from, to] = [
    Math.max(0, ...known.map(each => each.from)),
    Math.max(0, ...known.map(each => each.to)),
  ]
  if (silent)
    return {
      values: [from, Math.max(to, MOST_UNKNOWN_MOTOR)],
      kind: 'unknown',
      at: `loads.${silent.load.id}.circuits`,
    }
  if (from === to) return given(to)
  const open = spans.find(({ span }) => span?.to === to)
  return { values: [from, to], kind: 'range', at: `loads.${open?.load.id ?? ''}.circuits` }
}

function circuitEvidence(survey: Survey, circuit: SupplyCircuit, index: number): CircuitEvidence {
  const { supply } = survey
  const at = index === 0 ? 'supply.breaker' : `supply.devices.${circuit.device}.breaker`
  const { breaker } = circuit
  const possible: Possible<number> =
    breaker.kind === 'unknown'
      ? { values: IMAGINABLE.breakers, kind: 'unknown', at }
      : numberOf(breaker, { from: 0, to: 0 }, at)
  const lineCount = Object.values(circuit.lines).filter(each => EMFS[supply.system][each]).length
  const demand = demandOf(survey)
  return {
    index,
    circuit,
    at,
    breaker: possible,
    segments: supply.cables
      .filter(cable => circuitAt(supply, cable.from)?.device === circuit.device)
      .map(cable => segmentOf(survey, cable)),
    demand,
    draws: drawsOf(survey, demand, circuitsOf(supply).length > 1),
    largestMotor: largestMotorOf(survey),
    volts: voltsBetween(survey),
    lineCount,
  }
}

/** Volts between two lines, or from the only line to neutral, at nominal [V]. */
function voltsBetween({ supply }: Survey): number {
  const { leg1, leg2 } = EMFS[supply.system]
  if (!leg1 || !leg2 || supply.system === 'three-phase-230-400') return LEG_VOLTS[supply.system]
  const [re, im] = [leg1.re - leg2.re, leg1.im - leg2.im]
  return Math.sqrt(re * re + im * im)
}

const EDITIONS = ['2017', '2020', '2023'] as const
const SETTINGS = ['indoors', 'outdoors'] as const

/** The edition that was read whole speaks where nobody knows which one is adopted. */
const READ_WHOLE = '2020'

function editionOf({ codeEdition }: Survey): SupplyEvidence['place']['edition'] {
  const edition = choiceOf(codeEdition, EDITIONS, 'codeEdition')
  const readFirst = (each: string): number => Number(each === READ_WHOLE)
  return { ...edition, values: edition.values.toSorted((a, b) => readFirst(b) - readFirst(a)) }
}

/** What the first circuit gives never more than the box is set to: it sheds before. */
function held(circuit: CircuitEvidence, fitted: FittedBox | undefined): CircuitEvidence {
  const { draws, index } = circuit
  if (index > 0 || fitted?.currentLimit === undefined) return circuit
  const most = allowedAmps(fitted.box, fitted.currentLimit)
  const values = [...new Set(draws.values.map(each => Math.min(each, most)))]
  return { ...circuit, draws: { ...draws, values } }
}

/** Joins a survey, its devices, the code book of its region and the box, where one is chosen. */
export function gatherSupply(
  surveyed: Survey,
  catalogue: Catalogue,
  fitted?: FittedBox,
): SupplyEvidence {
  const survey = fitted ? { ...surveyed, loads: [...loadsOf(surveyed, fitted.box)] } : surveyed
  const devices = new Map(
    survey.supply.devices.flatMap(({ id, device }) => {
      const found = catalogue.get(device)
      return found ? [[id, found] as const] : []
    }),
  )
  const circuits = circuitsOf(survey.supply).map((circuit, index) =>
    held(circuitEvidence(survey, circuit, index), fitted),
  )
  return {
    survey,
    devices,
    book: bookOf(survey.region),
    place: {
      edition: editionOf(survey),
      setting: choiceOf(survey.yard?.setting, SETTINGS, 'yard.setting'),
    },
    circuits,
    network: once(() => supplyNetwork(survey, devices, circuits)),
  }
}
