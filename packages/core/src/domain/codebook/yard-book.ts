import type { ConductorSize } from '../conductor.ts'
import type { Cited } from './book.ts'
import type { Printed } from './printed.ts'

/** Where a tub stands, and by which edition it is judged: what a figure may hang on. */
export interface YardPlace {
  readonly edition: '2017' | '2020' | '2023'
  readonly setting: 'indoors' | 'outdoors'
}

/** How near to the tub something may be, level from its inside wall [m]. */
export interface Nearest {
  /**
   * A distance, which is far enough itself; or a zone, whose border belongs to it; or the zones of a
   * pool, where those of a tub of its own were not found.
   */
  readonly kind: 'distance' | 'zone' | 'pool'
  /** Nearer, it breaks; absent where nothing is known to be too near. */
  readonly breaksBelow?: Cited<number>
  /** From here on it holds; absent where no distance is known to be enough. */
  readonly holdsFrom?: Cited<number>
  /** What is to be said between the two figures. */
  readonly between: 'experts-differ' | 'not-covered'
}

/** Where a light is [m]: level from the inside wall, over the highest water, and the rim over the floor. */
export interface LightPlace {
  readonly distance: number
  readonly height: number
  readonly rim: number
}

/**
 * What the book asks of a light at one place: that it is not there; that it has ground-fault
 * protection; that it is sealed too, or that nobody knows what more; or the zones of a pool, where
 * those of a tub of its own were not found.
 */
export interface LightRule {
  /** Whether the light is outside of what the rule is for. */
  readonly isClear: boolean
  readonly asks: 'absence' | 'protection' | 'sealed' | 'more' | 'pool'
  /** What its height is counted over; by its distance alone where height makes no difference. */
  readonly over: 'water' | 'floor' | undefined
  /** Level, the rule goes as far as this [m]. */
  readonly within: number
  /** And up to here [m]; 0 where height makes no difference. */
  readonly below: number
  readonly by: Printed
}

/** How a book looks at lights, and the figures at which its answer turns [m]. */
export interface LightBook {
  readonly at: (where: LightPlace) => LightRule
  readonly turnsAt: { readonly distance: readonly number[]; readonly height: readonly number[] }
}

/**
 * What one book says of the place around a tub, at one place.
 *
 * Whatever is absent is an honest gap, as in the book itself.
 */
export interface YardBook {
  readonly disconnect: {
    readonly near?: Nearest | undefined
    /** The same for one that is a ground-fault device too, where the book asks more of it. */
    readonly nearWithGroundFault?: Nearest | undefined
    /** The farthest that counts as in sight, and whether a lock makes up for more. */
    readonly sight?: (Cited<number> & { readonly isExcusedByLock: boolean }) | undefined
  }
  /** Between which distances an outlet for other things has to be. */
  readonly convenience?: { readonly least: Cited<number>; readonly most: Cited<number> } | undefined
  readonly receptacle?: Nearest | undefined
  /** Up to here, itself included, an outlet needs ground-fault protection. */
  readonly receptacleProtected?: Cited<number> | undefined
  /** The farthest outlet that the cord of a tub may go to. */
  readonly cord?: Cited<number> | undefined
  readonly lights?: LightBook | undefined
  readonly wallSwitch?: Nearest | undefined
  /** Up to here, itself included, fixed metal is joined to the bonding; or the authority is asked. */
  readonly metal?: (Cited<number> & { readonly isForAuthority: boolean }) | undefined
  /** The least conductor that joins the metal, solid copper. */
  readonly bond?: Cited<ConductorSize> | undefined
  /** When ground and floor need no bonding. */
  readonly ground?:
    | {
        /** A listed tub in one piece outdoors, whose rim stands so high over all that is near it. */
        readonly rim: Cited<number>
        /** How near the surfaces are that the rim is measured over. */
        readonly surfacesWithin: number
        /** A listed tub in one piece on a finished floor indoors. */
        readonly indoors: Printed
      }
    | undefined
  /** Where users need a switch that stops the pumps: at all but a one-family dwelling. */
  readonly emergencyStop?: { readonly least: number | undefined; readonly by: Printed } | undefined
  /** Of an electrode on the bonding, where the supply brings neutral and earth as one [Ω]. */
  readonly combinedEarth?: Cited<number> | undefined
}
