import type { Entered, Known, Survey, Unit } from '../../src/index.ts'
import { DIMENSIONS } from '../../src/index.ts'

/** A quantity in SI, as if somebody had written it. */
export const si = <U extends Unit>(unit: U, value: number): Entered<U> => ({
  si: value as Entered<U>['si'],
  text: `${value} ${Object.keys(DIMENSIONS[unit].spellings)[0]}`,
})

export const known = <Value>(value: Value): Known<Value> => ({ kind: 'known', value })
export const knownSi = <U extends Unit>(unit: U, value: number): Known<Entered<U>> =>
  known(si(unit, value))

type Cable = Survey['supply']['cables'][number]
type Device = Survey['supply']['devices'][number]
type Yard = NonNullable<Survey['yard']>

/** A survey with one cable changed. */
export const withCable = (survey: Survey, id: string, change: Partial<Cable>): Survey => ({
  ...survey,
  supply: {
    ...survey.supply,
    cables: survey.supply.cables.map(each => (each.id === id ? { ...each, ...change } : each)),
  },
})

export const withDevice = (survey: Survey, id: string, change: Partial<Device>): Survey => ({
  ...survey,
  supply: {
    ...survey.supply,
    devices: survey.supply.devices.map(each => (each.id === id ? { ...each, ...change } : each)),
  },
})

export const withSupply = (survey: Survey, change: Partial<Survey['supply']>): Survey => ({
  ...survey,
  supply: { ...survey.supply, ...change },
})

export const withYard = (survey: Survey, change: Partial<Yard>): Survey => ({
  ...survey,
  yard: { ...survey.yard, ...change },
})
