import { invariant, unreachable } from '../../base/invariant.ts'
import type { FeedFunction, Line } from '../board/board.ts'
import { isEarth, LINES } from '../board/board.ts'
import type { System } from '../described.ts'
import { circuitsOf, isSecond, ownFunction } from '../supply/circuits.ts'
import type { Supply } from '../supply/supply.ts'
import { FIGURES } from './figures.ts'
import type { RunStep, SupplyAlone, SupplyPlace, SupplySite } from './supply-alone.ts'

/** One thing that is not as described between the source and the tub: a change of the network. */
export type SupplyFault =
  | { readonly kind: 'sound' }
  /** The source is another one than the survey says. */
  | { readonly kind: 'split-phase' | 'wye' }
  | { readonly kind: 'high-leg'; readonly line: 'leg1' | 'leg2' }
  /** Every hot on one leg of the panel. */
  | { readonly kind: 'same-leg' }
  /** Every pole and switch of a device open: off, or tripped. */
  | { readonly kind: 'off'; readonly device: string }
  | Opened<'leg-open'>
  | Opened<'neutral-open'>
  | Opened<'earth-open'>
  | Poor<'joint'>
  | Poor<'neutral-poor'>
  /** Two ends exchanged at the tub. */
  | Exchanged<'neutral-earth-swapped'>
  | Exchanged<'line-neutral-swapped'>

interface Opened<Kind extends string> {
  readonly kind: Kind
  readonly conductor: FeedFunction
  readonly step: RunStep
}

/** Ohms that should not be there, in series with a conductor. */
interface Poor<Kind extends string> extends Opened<Kind> {
  readonly ohms: number
}

interface Exchanged<Kind extends string> {
  readonly kind: Kind
  readonly ends: readonly [FeedFunction, FeedFunction]
}

export type SupplyFaultKind = SupplyFault['kind']
export type PoorFault = Extract<SupplyFault, { readonly ohms: number }>
export type PlacedFault = Extract<SupplyFault, { readonly step: RunStep }>

export const isPoor = (fault: SupplyFault): fault is PoorFault => 'ohms' in fault
export const isPlaced = (fault: SupplyFault): fault is PlacedFault => 'step' in fault

export const placeOfFault = (fault: SupplyFault): SupplyPlace | undefined =>
  isPlaced(fault) ? fault.step.place : undefined

/** Two legs and a neutral in a house or a block of North America, in whatever way they are made. */
const TWO_LEGS: readonly System[] = ['split-phase', 'two-legs-of-wye', 'high-leg-delta']

/** The supply with each of its lines taken from another line of the source. */
const relined = (supply: Supply, from: (line: Line) => Line): Supply => {
  const lines = new Map(circuitsOf(supply).map(each => [each.device, each.lines] as const))
  return {
    ...supply,
    devices: supply.devices.map(each => {
      const own = lines.get(each.id)
      if (!own) return each
      const fedBy = LINES.flatMap(at => {
        const line = own[at]
        return line === undefined ? [] : [[at, from(line)] as const]
      })
      return { ...each, fedBy: Object.fromEntries(fedBy) }
    }),
  }
}

const withSystem = (supply: Supply, system: System): Supply => ({ ...supply, system })

const OTHER_LEG: Readonly<Record<Line, Line>> = { leg1: 'leg2', leg2: 'leg1', leg3: 'leg3' }

/** The site as a fault makes it before it is wired; most faults only change values of what is wired. */
export function siteWith(site: SupplySite, fault: SupplyFault): SupplySite {
  const { supply } = site.tub
  const described = (other: Supply): SupplySite => ({
    ...site,
    tub: { ...site.tub, supply: other },
  })
  switch (fault.kind) {
    case 'split-phase':
      return described(withSystem(supply, 'split-phase'))
    case 'wye':
      return described(withSystem(supply, 'two-legs-of-wye'))
    case 'high-leg': {
      const delta = withSystem(supply, 'high-leg-delta')
      return described(fault.line === 'leg2' ? delta : relined(delta, line => OTHER_LEG[line]))
    }
    case 'same-leg':
      return described(relined(supply, () => 'leg1'))
    case 'neutral-earth-swapped':
    case 'line-neutral-swapped':
      return { ...site, exchanged: fault.ends }
    case 'sound':
    case 'off':
    case 'leg-open':
    case 'neutral-open':
    case 'earth-open':
    case 'joint':
    case 'neutral-poor':
      return site
    default:
      return unreachable(fault)
  }
}

/** Whether nothing is other than the survey says: sound, or the high leg that it tells of itself. */
export const isAsDescribed = ({ tub }: SupplySite, fault: SupplyFault): boolean =>
  fault.kind === 'sound' ||
  (fault.kind === 'high-leg' && fault.line === 'leg2' && tub.supply.system === 'high-leg-delta')

/** Elements of a device that open when it is switched off or trips. */
export const openedBy = ({ site }: SupplyAlone, device: string): readonly string[] =>
  (site.devices.get(device)?.board.parts ?? []).flatMap(({ kind, id }) =>
    kind === 'pole' || kind === 'switch' ? [`part:${device}.${id}`] : [],
  )

/** Ohms that a fault puts in series, by element [Ω]. */
export function seriesOf(alone: SupplyAlone, fault: SupplyFault): ReadonlyMap<string, number> {
  if (fault.kind === 'off')
    return new Map(openedBy(alone, fault.device).map(each => [each, FIGURES.openOhms] as const))
  if (!isPlaced(fault)) return new Map()
  return new Map([[fault.step.element, isPoor(fault) ? fault.ohms : FIGURES.openOhms]])
}

const isLine = (name: FeedFunction): boolean => LINES.some(each => each === ownFunction(name))
const isNeutral = (name: FeedFunction): boolean => ownFunction(name) === 'neutral'

/** Lines of the source that the circuits bring, each once. */
const linesOf = (supply: Supply, names: readonly FeedFunction[]): ReadonlySet<Line> => {
  const circuits = circuitsOf(supply)
  return new Set(
    names.flatMap(name => {
      const at = LINES.find(each => each === ownFunction(name))
      const line = at && circuits[isSecond(name) ? 1 : 0]?.lines[at]
      return line === undefined ? [] : [line]
    }),
  )
}

function sourceFaults({ site, ends }: SupplyAlone): readonly SupplyFault[] {
  const { supply } = site.tub
  const { size } = linesOf(supply, [...ends.keys()])
  if (size < 2) return [{ kind: 'sound' }]
  const others: readonly SupplyFault[] = [
    { kind: 'split-phase' },
    { kind: 'wye' },
    { kind: 'high-leg', line: 'leg1' },
    { kind: 'high-leg', line: 'leg2' },
  ]
  const surveyed = (each: SupplyFault): boolean =>
    each.kind === 'split-phase'
      ? supply.system === 'split-phase'
      : each.kind === 'wye' && supply.system === 'two-legs-of-wye'
  return [
    // A high leg is never sound, whatever the survey says: it stands among the others.
    ...(supply.system === 'high-leg-delta' ? [] : [{ kind: 'sound' } as const]),
    ...(TWO_LEGS.includes(supply.system) ? others.filter(each => !surveyed(each)) : []),
    { kind: 'same-leg' },
  ]
}

/** A device that opens more than one line; with one line it is a line that is open. */
const offFaults = ({ site, runs }: SupplyAlone): readonly SupplyFault[] =>
  site.tub.supply.devices.flatMap(({ id: device }): readonly SupplyFault[] => {
    const passes = [...runs].filter(
      ([name, steps]) =>
        isLine(name) &&
        steps.some(({ place }) => place.kind === 'device' && place.device === device),
    )
    return passes.length > 1 ? [{ kind: 'off', device }] : []
  })

function conductorFaults(
  [conductor, steps]: readonly [FeedFunction, readonly RunStep[]],
  leastOhms: number,
): readonly SupplyFault[] {
  const ohms = leastOhms
  return steps.flatMap((step): readonly SupplyFault[] => {
    const at = { conductor, step }
    if (isEarth(conductor)) return [{ kind: 'earth-open', ...at }]
    return isNeutral(conductor)
      ? [
          { kind: 'neutral-open', ...at },
          { kind: 'neutral-poor', ...at, ohms },
        ]
      : [
          { kind: 'leg-open', ...at },
          { kind: 'joint', ...at, ohms },
        ]
  })
}

function exchanges({ ends }: SupplyAlone): readonly SupplyFault[] {
  const names = [...ends.keys()]
  return names.filter(isNeutral).flatMap((neutral): readonly SupplyFault[] => {
    const own = (name: FeedFunction): readonly FeedFunction[] =>
      names.filter(each => isSecond(each) === isSecond(neutral) && ownFunction(each) === name)
    return [
      ...own('earth').map(earth => ({
        kind: 'neutral-earth-swapped' as const,
        ends: [neutral, earth] as const,
      })),
      ...LINES.flatMap(own).map(line => ({
        kind: 'line-neutral-swapped' as const,
        ends: [line, neutral] as const,
      })),
    ]
  })
}

/**
 * Every single fault that a supply may have, one for each place of it, what is sound first.
 *
 * Two faults at once are left out.
 *
 * @param leastOhms - what a poor joint or neutral starts from [Ω]
 */
export function possibleFaults(alone: SupplyAlone, leastOhms: number): readonly SupplyFault[] {
  invariant(leastOhms > 0, `a poor joint has more than ${leastOhms} Ω`)
  return [
    ...sourceFaults(alone),
    ...offFaults(alone),
    ...[...alone.runs].flatMap(each => conductorFaults(each, leastOhms)),
    ...exchanges(alone),
  ]
}
