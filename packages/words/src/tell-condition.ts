import type { FittingFault, Measurable, SupplyCondition, SupplyPlace } from '@tubwright/core'
import { say } from './say.ts'
import type { Tables, ToldDanger } from './words.ts'

type Told = Pick<Tables, 'condition' | 'conditionPage' | 'values'>
type NameOf = (id: string) => string

function placeText({ conditionPage }: Told, place: SupplyPlace, nameOf: NameOf): string {
  switch (place.kind) {
    case 'source':
      return say(conditionPage['place-source'], { thing: nameOf(place.before) })
    case 'device':
      return say(conditionPage['place-device'], { thing: nameOf(place.device) })
    case 'cable':
      return say(conditionPage['place-cable'], { thing: nameOf(place.cable) })
  }
}

/** The conductor, and the places that no reading tells apart. */
function whereOf(tables: Told, { fault, places }: FittingFault, nameOf: NameOf): string {
  const named: Readonly<Record<string, string>> = tables.values
  const of = 'conductor' in fault ? fault.conductor : 'line' in fault ? fault.line : undefined
  const conductor = of === undefined ? [] : [named[`function.${of}`] ?? of]
  return [...new Set([...conductor, ...places.map(each => placeText(tables, each, nameOf))])].join(
    ', ',
  )
}

/** What fits, where it may sit and with how many ohms. */
function fitText(tables: Told, fit: FittingFault, nameOf: NameOf): string {
  const { conditionPage } = tables
  const { fault, ohms } = fit
  const params = { fault: conditionPage[`may-${fault.kind}`], where: whereOf(tables, fit, nameOf) }
  if (params.where === '') return say(conditionPage['fits-bare'], params)
  return ohms && 'ohms' in fault
    ? say(conditionPage['fits-ohms'], { ...params, ...ohms })
    : say(conditionPage.fits, params)
}

/** Where what is named may sit, and with how many ohms. */
function whereText(tables: Told, fit: FittingFault, nameOf: NameOf): readonly string[] {
  const where = whereOf(tables, fit, nameOf)
  if (where === '') return []
  const { ohms } = fit
  return ohms && 'ohms' in fit.fault
    ? [say(tables.conditionPage['where-ohms'], { where, ...ohms })]
    : [where]
}

function nextText({ conditionPage, values }: Told, next: Measurable): string {
  const situation = conditionPage[`situation-${next.situation}`]
  if (next.kind === 'amps') return say(conditionPage['next-amps'], { situation })
  const [from, to] = next.between.map(each => values[`function.${each}`])
  return say(conditionPage['next-volts'], { situation, from: from ?? '', to: to ?? '' })
}

/** What is dangerous, each reason once: what is shown before what is possible. */
export function tellDangers(
  { conditionPage }: Told,
  { dangers }: SupplyCondition,
): readonly ToldDanger[] {
  const shown = dangers.filter(each => each.certainty === 'shown')
  const possible = dangers.filter(
    ({ reason, certainty }) =>
      certainty === 'possible' && !shown.some(each => each.reason === reason),
  )
  const once = new Map<string, (typeof dangers)[number]>()
  for (const each of [...shown, ...possible])
    if (once.get(each.reason)?.severity !== 'danger') once.set(each.reason, each)
  return [...once.values()].map(({ reason, severity, certainty }) => {
    const danger = conditionPage[`danger-${reason}`]
    if (certainty === 'possible') {
      const text = say(conditionPage.maybe, { danger })
      return { reason, severity, text, line: text }
    }
    const line = severity === 'danger' ? say(conditionPage.stop, { danger }) : danger
    return { reason, severity, text: danger, line }
  })
}

/** What the readings of a supply say: what it is, or what it may be and what to read next. Its dangers are `tellDangers`. */
export function tellCondition(
  tables: Told,
  found: SupplyCondition,
  nameOf: NameOf,
): readonly string[] {
  const { condition, conditionPage } = tables
  const { named, fits, neverShown, next, offBand } = found
  if (offBand) return [say(conditionPage['off-band'], { ...offBand })]
  if (fits.length === 0) return [conditionPage.none]
  const told = [...new Set(fits.map(each => fitText(tables, each, nameOf)))]
  const head = named === undefined ? [conditionPage.unnamed, ...told] : [condition[named]]
  const where =
    named === undefined || named === 'sound'
      ? []
      : [...new Set(fits.flatMap(each => whereText(tables, each, nameOf)))]
  return [
    ...head,
    ...where,
    ...(next ? [nextText(tables, next.of)] : []),
    ...(neverShown.length > 0 ? [conditionPage.beside] : []),
  ]
}
