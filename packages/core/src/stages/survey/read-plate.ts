/** What a line of a nameplate says, each as it may be entered; absent where it says nothing of it. */
export interface PlateLine {
  readonly volts?: string
  readonly frequency?: string
  /** In the order of the plate: high speed before low. */
  readonly amps: readonly string[]
  readonly watts?: string
  readonly powerFactor?: number
  /** What was not understood, so that nothing vanishes. */
  readonly rest: string
  /** A figure has a minus, as none on a plate has: nothing of the line is taken. */
  readonly hasMinus?: true
}

const NUMBER = String.raw`(?:\d+(?:[.,]\d+)?|[.,]\d+)`
const LIST = String.raw`${NUMBER}(?:\s*/\s*${NUMBER})*`

const PATTERNS = {
  powerFactor: /(?:cos\s*(?:φ|phi)|p\.?f\.?)\s*[:=]?\s*(0?[.,]\d+|1(?:[.,]0+)?)/iu,
  frequency: new RegExp(String.raw`(${NUMBER})\s*hz\b`, 'iu'),
  volts: new RegExp(String.raw`(${NUMBER})\s*(?:v|volts?)(?:ac|dc)?(?![a-z])`, 'iu'),
  watts: new RegExp(String.raw`(${NUMBER})\s*(kw|w|watts?)(?![a-z])`, 'iu'),
  amps: new RegExp(String.raw`(${LIST})\s*(?:a|amps?)(?![a-z])`, 'iu'),
  /** Figures with a stroke and no unit are amps: nothing else on a plate is written so. */
  bareAmps: new RegExp(String.raw`(?:^|\s)(${LIST})(?=\s|$)`, 'u'),
} as const

/** A sign before a figure: not a stroke between two figures, in a name or between two statements. */
const MINUS = /(?:^\s*[-−–]\s*|(?:[^\d\s]\s+|[/:=(]\s*)[-−–])(?=[.,]?\d)/u

const plain = (text: string): string => text.replace(',', '.').replace(/^\./u, '0.')

const listed = (text: string): readonly string[] =>
  [...text.matchAll(new RegExp(NUMBER, 'gu'))].map(each => `${plain(each[0])} A`)

/**
 * Reads a nameplate line as it is printed, such as `16.4/4.8 A`, `240V 60Hz 10.0/3.0A` or `230 V 550 W`.
 *
 * Never guesses: two voltages are left in the rest, and so is what it does not understand.
 */
export function readPlate(text: string): PlateLine {
  let rest = text.trim().slice(0, 200)
  if (MINUS.test(rest)) return { amps: [], rest, hasMinus: true }
  // A separator before three figures may mean thousands: nobody guesses.
  if (/(?:^|[^\d.,])[1-9]\d{0,2}[.,]\d{3}(?!\d)/u.test(rest)) return { amps: [], rest }
  const take = (pattern: RegExp): RegExpExecArray | undefined => {
    const found = pattern.exec(rest)
    if (!found) return undefined
    rest = `${rest.slice(0, found.index)} ${rest.slice(found.index + found[0].length)}`.trim()
    return found
  }
  const powerFactor = take(PATTERNS.powerFactor)?.[1]
  const frequency = take(PATTERNS.frequency)?.[1]
  const isDual = new RegExp(String.raw`${NUMBER}\s*/\s*${NUMBER}\s*v`, 'iu').test(rest)
  const volts = isDual ? undefined : take(PATTERNS.volts)?.[1]
  const watts = take(PATTERNS.watts)
  const amps = (take(PATTERNS.amps) ?? (isDual ? undefined : take(PATTERNS.bareAmps)))?.[1]
  return {
    ...(volts === undefined ? {} : { volts: `${plain(volts)} V` }),
    ...(frequency === undefined ? {} : { frequency: `${plain(frequency)} Hz` }),
    ...(watts
      ? { watts: `${plain(watts[1] ?? '')} ${/k/iu.test(watts[2] ?? '') ? 'kW' : 'W'}` }
      : {}),
    ...(powerFactor === undefined ? {} : { powerFactor: Number(plain(powerFactor)) }),
    amps: amps === undefined ? [] : listed(amps),
    rest: rest.replace(/\s+/gu, ' ').trim(),
  }
}
