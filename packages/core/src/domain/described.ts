import * as z from 'zod'
import type { Entered, Unit } from '../base/entered.ts'
import { parseQuantity, quantityShape } from '../base/entered.ts'
import type { Known } from '../base/known.ts'
import { UNKNOWN_REASONS } from '../base/known.ts'

/** A stable name within one file: letters, digits, hyphens. */
export const id = z
  .string()
  .max(40)
  .regex(/^[A-Za-z][A-Za-z0-9-]*$/u, 'a letter, then letters, digits or hyphens, 40 at most')

/** A label that a person reads. */
export const label = z.string().min(1).max(80)

/** What a person writes where a schema only sees text. */
export type WrittenAs =
  | { readonly kind: 'quantity'; readonly unit: Unit }
  | { readonly kind: 'known'; readonly unit: Unit }
  | { readonly kind: 'known-choice'; readonly options: readonly string[] }
  | { readonly kind: 'size' }

/** Which schemas are of quantities: forms ask it, since a text does not say. */
export const writtenAs = z.registry<WrittenAs>()

/** A quantity written with its unit, such as `35 ft`. @param least - where 0 is one, as on a meter */
export const quantity = <U extends Unit>(unit: U, least?: number) =>
  z
    .string()
    .meta(quantityShape(unit))
    .transform((text, context): Entered<U> => {
      const read = parseQuantity(unit, text, least)
      if (read.ok) return read.value
      context.addIssue({
        code: 'custom',
        input: text,
        message: read.failure.may,
        params: { ...read.failure },
      })
      return z.NEVER
    })
    .register(writtenAs, { kind: 'quantity', unit })

/** A surveyed value: known, a range, one of some values, or unknown with its reason. */
export const known = <U extends Unit>(unit: U) =>
  z
    .union([
      z.string().meta(quantityShape(unit)),
      z.strictObject({ from: quantity(unit), to: quantity(unit), source: label }),
      z.strictObject({ oneOf: z.array(quantity(unit)).min(2), source: label }),
      z.strictObject({ unknown: z.enum(UNKNOWN_REASONS) }),
    ])
    .transform((written, context): Known<Entered<U>> => {
      if (typeof written === 'string') {
        const read = quantity(unit).safeParse(written)
        if (read.success) return { kind: 'known', value: read.data }
        for (const issue of read.error.issues)
          context.addIssue({ ...issue, input: written } as Parameters<typeof context.addIssue>[0])
        return z.NEVER
      }
      if ('unknown' in written) return { kind: 'unknown', reason: written.unknown }
      if ('oneOf' in written)
        return { kind: 'one-of', values: written.oneOf, source: written.source }
      if (written.from.si > written.to.si)
        context.addIssue({
          code: 'custom',
          input: written,
          path: ['from'],
          message: `from "${written.to.text}" to "${written.from.text}", the lesser first`,
          params: {
            code: 'contradiction',
            is: `"${written.from.text}", above its end "${written.to.text}"`,
          },
        })
      return { kind: 'range', from: written.from, to: written.to, source: written.source }
    })
    .register(writtenAs, { kind: 'known', unit })

/** A surveyed choice: one of these words, one of some of them, or unknown with its reason. */
export const chosen = <const Option extends string>(options: readonly [Option, ...Option[]]) => {
  const option = z.enum(options)
  return z
    .union([
      option,
      z.strictObject({ oneOf: z.array(option).min(2), source: label }),
      z.strictObject({ unknown: z.enum(UNKNOWN_REASONS) }),
    ])
    .transform((written): Known<Option> => {
      if (typeof written === 'string') return { kind: 'known', value: written as Option }
      return 'unknown' in written
        ? { kind: 'unknown', reason: written.unknown }
        : { kind: 'one-of', values: written.oneOf as Option[], source: written.source }
    })
    .register(writtenAs, { kind: 'known-choice', options })
}

export const YES_NO = ['yes', 'no'] as const

export const REGIONS = ['US', 'CA', 'UK', 'EU', 'AU', 'NZ'] as const
export type Region = (typeof REGIONS)[number]
/**
 * What the source is: 120/240 V on two legs, 120 V on one, 120/208 V on two legs of a wye, 230 V and
 * neutral, 230 V between two lives without neutral, 230/400 V on three phases with neutral; and the
 * delta with one leg near 208 V to neutral, which is recognised and refused.
 */
export const SYSTEMS = [
  'split-phase',
  'single-leg',
  'two-legs-of-wye',
  'single-phase-230',
  'two-lives-230',
  'three-phase-230-400',
  'high-leg-delta',
] as const
export type System = (typeof SYSTEMS)[number]

/** Colours by name; the letters printed beside them are those of IEC 60757. */
export const COLOURS = [
  'black',
  'brown',
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'violet',
  'grey',
  'white',
  'pink',
  'turquoise',
  'green-yellow',
  'bare',
] as const
export type Colour = (typeof COLOURS)[number]

/** The letter code of a colour. @source [IEC-60757] table 1 (from memory) */
export const COLOUR_LETTERS: Readonly<Record<Colour, string>> = {
  black: 'BK',
  brown: 'BN',
  red: 'RD',
  orange: 'OG',
  yellow: 'YE',
  green: 'GN',
  blue: 'BU',
  violet: 'VT',
  grey: 'GY',
  white: 'WH',
  pink: 'PK',
  turquoise: 'TQ',
  'green-yellow': 'GNYE',
  bare: '--',
}
