import type { Ring, YardThing } from './yard-things.ts'

/** How far from the middle of the drawing something stands, by its distance from the tub. */
export interface YardScale {
  /** Half of the tub, in pixels. */
  readonly tub: number
  /** [px] from the middle, for metres from the inside wall. */
  readonly at: (metres: number) => number
  /** The rings that are worth drawing. */
  readonly rings: readonly Ring[]
  /** Where the scale gets smaller [px]; undefined where it never does. */
  readonly breakAt: number | undefined
}

const TUB = 1 // half of its width [m]; its size was not surveyed: common practice, no source
const NEAR = 2 // what is drawn at least [m]
const FAR = 7 // what is drawn to scale at most [m]: beyond, what is near would be too small
const BREAK = 6.5 // where the scale gets smaller, if it has to [m]
const BAND = 34 // room for what lies beyond [px]

/** Rings as far out as anything stands, and one more to hold it against. */
function shown(rings: readonly Ring[], farthest: number): readonly Ring[] {
  const beyond = rings.findIndex(each => each.metres > farthest)
  return beyond < 0 ? rings : rings.slice(0, beyond + 1)
}

/**
 * Fits everything into a radius: to scale as far as the rules of near things go, beyond that closer
 * together the farther out.
 *
 * @param radius - of the whole [px]
 */
export function scaleOf(
  things: readonly YardThing[],
  rings: readonly Ring[],
  radius: number,
): YardScale {
  const farthest = Math.max(NEAR, ...things.map(each => each.span?.to ?? 0))
  const own = shown(rings, farthest)
  const outer = Math.max(farthest, own.at(-1)?.metres ?? 0)
  if (outer <= FAR) {
    const perMetre = radius / (TUB + outer)
    return {
      tub: TUB * perMetre,
      at: metres => (TUB + metres) * perMetre,
      rings: own,
      breakAt: undefined,
    }
  }
  const perMetre = (radius - BAND) / (TUB + BREAK)
  const whole = Math.log(outer / BREAK)
  return {
    tub: TUB * perMetre,
    at: metres =>
      metres <= BREAK
        ? (TUB + metres) * perMetre
        : radius - BAND + (BAND * Math.log(metres / BREAK)) / whole,
    rings: own,
    breakAt: radius - BAND,
  }
}
