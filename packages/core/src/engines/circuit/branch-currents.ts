import type { Complex } from '../../base/complex.ts'
import { complex, multiply, scale, subtract } from '../../base/complex.ts'
import type { BranchTable, WindingPair } from './branch-table.ts'

/** Voltages by node index, and the contact states that belong to them. */
export interface NodeVoltages {
  readonly re: Float64Array
  readonly im: Float64Array
  readonly states: Uint8Array
}

/** What no correction takes away, as a share of the largest voltage. */
export const ROUNDING = 16 * Number.EPSILON

export const voltageAt = (volts: NodeVoltages, node: number): Complex =>
  complex(volts.re[node] as number, volts.im[node] as number)

const voltageAcross = (volts: NodeVoltages, first: number, second: number): Complex =>
  subtract(voltageAt(volts, first), voltageAt(volts, second))

/** Voltage from the first to the second node of an element; of a transformer, of its primary [V]. */
export const elementVoltage = (table: BranchTable, volts: NodeVoltages, element: number): Complex =>
  voltageAcross(volts, table.ends[2 * element] as number, table.ends[2 * element + 1] as number)

/** Voltage from the first to the second node of a secondary [V]. */
export const secondaryVoltage = (volts: NodeVoltages, { secondary }: WindingPair): Complex =>
  voltageAcross(volts, secondary[0], secondary[1])

/** Admittance of an element in the given contact states; of a transformer, magnetising [S]. */
export function admittanceInState(
  table: BranchTable,
  states: Uint8Array,
  element: number,
): Complex {
  const contact = table.contactOf[element] as number
  if (contact < 0)
    return complex(
      table.admittances[2 * element] as number,
      table.admittances[2 * element + 1] as number,
    )
  const siemens = states[contact] ? table.closedSiemens : table.openSiemens
  return complex(siemens[contact] as number)
}

/** EMF of an element, + to its first node [V]. */
export const emfOf = (table: BranchTable, element: number): Complex =>
  complex(table.emfs[2 * element] as number, table.emfs[2 * element + 1] as number)

/** Current into an element's first node; of a transformer, its magnetising current alone [A]. */
export function branchCurrent(table: BranchTable, volts: NodeVoltages, element: number): Complex {
  const drop = subtract(elementVoltage(table, volts, element), emfOf(table, element))
  return multiply(admittanceInState(table, volts.states, element), drop)
}

/** What runs through one branch, in numbers: no object is made for it. */
export type BranchVisit = (
  element: number,
  voltsRe: number,
  voltsIm: number,
  ampsRe: number,
  ampsIm: number,
) => void

/** Calls back with volts across and amps into the first node of a branch; of a transformer, magnetising. */
export function visitBranch(
  { ends, emfs, admittances, contactOf, closedSiemens, openSiemens }: BranchTable,
  { re, im, states }: NodeVoltages,
  element: number,
  visit: BranchVisit,
): void {
  const first = ends[2 * element] as number
  const second = ends[2 * element + 1] as number
  const voltsRe = (re[first] as number) - (re[second] as number)
  const voltsIm = (im[first] as number) - (im[second] as number)
  const dropRe = voltsRe - (emfs[2 * element] as number)
  const dropIm = voltsIm - (emfs[2 * element + 1] as number)
  const contact = contactOf[element] as number
  if (contact >= 0) {
    const siemens = (states[contact] ? closedSiemens : openSiemens)[contact] as number
    visit(element, voltsRe, voltsIm, siemens * dropRe, siemens * dropIm)
    return
  }
  const own = admittances[2 * element] as number
  const other = admittances[2 * element + 1] as number
  const ampsRe = own * dropRe - other * dropIm
  const ampsIm = own * dropIm + other * dropRe
  visit(element, voltsRe, voltsIm, ampsRe, ampsIm)
}

/** |current| through a branch; of a transformer, magnetising [A]. */
export function branchAmps(
  { ends, emfs, admittances, contactOf, closedSiemens, openSiemens }: BranchTable,
  { re, im, states }: NodeVoltages,
  element: number,
): number {
  const first = ends[2 * element] as number
  const second = ends[2 * element + 1] as number
  const dropRe = (re[first] as number) - (re[second] as number) - (emfs[2 * element] as number)
  const dropIm = (im[first] as number) - (im[second] as number) - (emfs[2 * element + 1] as number)
  const drop = Math.sqrt(dropRe * dropRe + dropIm * dropIm)
  const contact = contactOf[element] as number
  if (contact >= 0)
    return drop * ((states[contact] ? closedSiemens : openSiemens)[contact] as number)
  const own = admittances[2 * element] as number
  const other = admittances[2 * element + 1] as number
  return drop * Math.sqrt(own * own + other * other)
}

/** Current into the first node of a secondary; the primary takes −1/ratio of it [A]. */
export function windingCurrent(volts: NodeVoltages, pair: WindingPair): Complex {
  const noLoad = scale(voltageAcross(volts, pair.primary[0], pair.primary[1]), 1 / pair.ratio)
  return multiply(pair.series, subtract(secondaryVoltage(volts, pair), noLoad))
}

/**
 * Calls back with every current that leaves a node into an element [A].
 *
 * What goes in at one end comes out at the other to the last bit, so that rounding of a voltage
 * moves current inside a group of nodes but makes none.
 */
export function eachCurrent(
  table: BranchTable,
  volts: NodeVoltages,
  leave: (node: number, re: number, im: number) => void,
): void {
  const through = (first: number, second: number, { re, im }: Complex): void => {
    leave(first, re, im)
    leave(second, -re, -im)
  }
  const visit: BranchVisit = (element, _re, _im, re, im) => {
    leave(table.ends[2 * element] as number, re, im)
    leave(table.ends[2 * element + 1] as number, -re, -im)
  }
  for (let element = 0; element < table.contactOf.length; element++)
    visitBranch(table, volts, element, visit)
  for (const pair of table.windings) {
    const current = windingCurrent(volts, pair)
    through(pair.secondary[0], pair.secondary[1], current)
    through(pair.primary[0], pair.primary[1], scale(current, -1 / pair.ratio))
  }
}

/** The largest magnitude among voltages [V]. */
export function largestVoltage({ re, im }: Pick<NodeVoltages, 're' | 'im'>): number {
  let square = 0
  for (let node = 0; node < re.length; node++) {
    const a = re[node] as number
    const b = im[node] as number
    square = Math.max(square, a * a + b * b)
  }
  return Math.sqrt(square)
}
