import { magnitude } from '../../../../src/base/complex.ts'
import { IDEAL_OHMS, loadOhms, netlist, phasor } from './netlist.ts'
import { solved } from './solve.ts'

/** A 120 V leg and the load on it. */
export interface Leg {
  readonly amps: number
  readonly degrees: number
  /** Lagging; 1 unless given. */
  readonly powerFactor?: number
}

/** Amps in the neutral conductor that the loads of all legs share, by solving the circuit [A]. */
export function neutralAmps(legs: readonly Leg[]): number {
  const lines = legs.map(({ amps, degrees, powerFactor = 1 }, leg) => {
    const { re, im } = phasor(`120<${degrees}`)
    return `source s${leg} l${leg} n ${re},${im}
      impedance z${leg} l${leg} o ${loadOhms(120, amps, powerFactor)}`
  })
  const solution = solved(netlist(`${lines.join('\n')}\nimpedance neutral o n ${IDEAL_OHMS}`))
  return magnitude(solution.current('neutral'))
}

export interface Run {
  readonly volts: number
  readonly amps: number
  readonly powerFactor: number
  /** Resistance and reactance of one conductor [Ω]. */
  readonly oneWay: readonly [number, number]
}

/**
 * Volts lost between a source and a load over two conductors, by solving the circuit [V].
 *
 * The load is the impedance that draws the amps at what is left of the volts; one correction of it
 * brings the amps to 1e-3 of those asked for, and the drop is scaled to them.
 */
export function cableDrop({ volts, amps, powerFactor, oneWay }: Run): number {
  const [ohms, reactance] = oneWay
  const solveAt = (left: number): readonly [drop: number, current: number] => {
    const solution = solved(
      netlist(`
        source s l n ${volts}
        impedance go l a ${ohms},${reactance}
        impedance load a b ${loadOhms(left, amps, powerFactor)}
        impedance return b n ${ohms},${reactance}`),
    )
    const { re, im } = solution.volts('a')
    const back = solution.volts('b')
    const atLoad = magnitude({ re: re - back.re, im: im - back.im })
    return [volts - atLoad, magnitude(solution.current('load'))]
  }
  const [firstDrop] = solveAt(volts)
  const [drop, current] = solveAt(volts - firstDrop)
  return (drop * amps) / current
}
