import { invariant } from './invariant.ts'

/** A finite number in one SI unit. The unit lives in the type and costs nothing at run time. */
export type Quantity<Unit extends string> = number & { readonly unit: Unit }
export type Volts = Quantity<'V'>
export type Amperes = Quantity<'A'>
export type Ohms = Quantity<'Ω'>
export type Hertz = Quantity<'Hz'>
export type Watts = Quantity<'W'>
export type VoltAmperes = Quantity<'VA'>
export type Metres = Quantity<'m'>
export type Kelvins = Quantity<'K'>
export type NewtonMetres = Quantity<'N·m'>
export type SquareMetres = Quantity<'m²'>
export type Farads = Quantity<'F'>

/** Arithmetic yields a plain number: naming its unit again is the moment to check the formula. */
const quantity =
  <Unit extends string>(unit: Unit) =>
  (value: number): Quantity<Unit> => {
    invariant(Number.isFinite(value), `a quantity in ${unit} must be finite, got ${value}`)
    return value as Quantity<Unit>
  }

export const volts = quantity('V')
export const amperes = quantity('A')
export const ohms = quantity('Ω')
export const metres = quantity('m')
export const kelvins = quantity('K')

/** Exact by definition of the kelvin. @source [NIST-SP811] app. B.8 */
export const kelvinsFromCelsius = (celsius: number): Kelvins => kelvins(celsius + 273.15)
export const celsiusFromKelvins = (temperature: Kelvins): number => temperature - 273.15
/** Exact by definition. @source [NIST-SP811] app. B.8 */
export const kelvinsFromFahrenheit = (fahrenheit: number): Kelvins =>
  kelvins((fahrenheit - 32) / 1.8 + 273.15)
/** Exact by definition. @source [NIST-SP811] app. B.8 */
export const metresFromFeet = (feet: number): Metres => metres(feet * 0.3048)
