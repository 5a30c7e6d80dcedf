import type { Diagnostic } from '../base/diagnostic.ts'
import type { Entered } from '../base/entered.ts'
import type { Known } from '../base/known.ts'

type Path = Diagnostic['path']

interface Usual {
  readonly from: number
  readonly to: number
  readonly may: string
}

/**
 * What the trade meets at a tub, in SI. Outside it a value is taken as it is written, with a warning:
 * it is more often a slip of a unit or a digit than a strange tub. Common practice, no source.
 */
export const PLAUSIBLE = {
  /** Of a load [1]. */
  powerFactor: { from: 0.2, to: 1, may: 'from 0.2 to 1' },
  /** Of the tub's own circuit [A]. */
  breaker: { from: 5, to: 200, may: 'from 5 A to 200 A' },
  /** Of one line conductor, up to the first device [Ω]. */
  sourceImpedance: { from: 0, to: 2, may: 'at most 2 ohm' },
  cableLength: { from: 0, to: 300, may: 'at most 300 m' },
  /** Of one circuit of a load [A], [W]. */
  loadAmps: { from: 0, to: 100, may: 'at most 100 A' },
  loadPower: { from: 0, to: 24e3, may: 'at most 24 kW' },
  /** Each side of the bay and of the keypad hole [m]. */
  opening: { from: 0, to: 5, may: 'at most 5 m' },
} as const satisfies Readonly<Record<string, Usual>>

/** A warning where a plain number lies outside what is usual. */
export const unusualNumber = (path: Path, value: number, usual: Usual): readonly Diagnostic[] =>
  unusual(path, value, String(value), usual)

/** A warning where a quantity lies outside what is usual; nothing where it is not written. */
export const unusualQuantity = <U extends string>(
  path: Path,
  value: Entered<U> | undefined,
  usual: Usual,
): readonly Diagnostic[] => (value ? unusual(path, value.si, `"${value.text}"`, usual) : [])

/** The same for a surveyed value: at each of the values that it may have. */
export function unusualKnown<U extends string>(
  path: Path,
  value: Known<Entered<U>> | undefined,
  usual: Usual,
): readonly Diagnostic[] {
  switch (value?.kind) {
    case 'known':
      return unusualQuantity(path, value.value, usual)
    case 'range':
      return [
        ...unusualQuantity([...path, 'from'], value.from, usual),
        ...unusualQuantity([...path, 'to'], value.to, usual),
      ]
    case 'one-of':
      return value.values.flatMap((each, index) =>
        unusualQuantity([...path, 'oneOf', index], each, usual),
      )
    default:
      return []
  }
}

const unusual = (
  path: Path,
  value: number,
  is: string,
  { from, to, may }: Usual,
): readonly Diagnostic[] =>
  value >= from && value <= to ? [] : [{ code: 'implausible', severity: 'warning', path, is, may }]
