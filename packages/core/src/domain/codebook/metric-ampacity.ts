import type { Ampacity, LaidConductor } from './book.ts'
import type { Printed } from './printed.ts'

type Insulation = '70 °C' | '90 °C'
type Factor = number | undefined

/** One way to lie, in one table: rating by area and loaded conductors [A]. */
export interface MetricTable {
  readonly by: Printed
  readonly amps: (mm2: number, loaded: 2 | 3) => number | undefined
}

/** The tables of a 230 V book. */
export interface MetricTables {
  readonly table: (
    method: LaidConductor['method'],
    insulation: Insulation,
  ) => MetricTable | undefined
  readonly ambientFactor: (celsius: number, insulation: Insulation) => Factor
  readonly groupFactor: (circuits: number) => Factor
}

/** Circuits that lie together, by the loaded conductors beside this one's own. */
const circuitsOf = (alongside: number): number => 1 + Math.ceil(alongside / 2)

/**
 * Copper in square millimetres, corrected for the air and for what lies with it.
 *
 * Terminals for 70 °C keep a conductor with better insulation at 70 °C: it is then rated so.
 *
 * @returns undefined for aluminium, for gauges, and for wiring that no table of the book has
 */
export function metricAmpacity(tables: MetricTables, laid: LaidConductor): Ampacity | undefined {
  const { size, material, insulation: made, method, ambient, loaded, alongside } = laid
  if (material !== 'copper' || !size.text.endsWith('mm²')) return undefined
  if (made !== '70 °C' && made !== '90 °C') return undefined
  // No table of these books keeps a conductor at 60 °C.
  if (laid.terminals === '60 °C') return undefined
  const isHeld = made === '90 °C' && laid.terminals !== '90 °C'
  const insulation = isHeld ? '70 °C' : made
  const table = tables.table(method, insulation)
  const printed = table?.amps(size.mm2, loaded === 3 ? 3 : 2)
  // In air as hot as it may get itself it carries nothing.
  const isTooHot = ambient >= Number.parseInt(insulation, 10)
  const ambientFactor = isTooHot ? 0 : tables.ambientFactor(ambient, insulation)
  const groupFactor = tables.groupFactor(circuitsOf(alongside))
  if (!table || printed === undefined) return undefined
  if (ambientFactor === undefined || groupFactor === undefined) return undefined
  return {
    amps: printed * ambientFactor * groupFactor,
    printed,
    ambientFactor,
    groupFactor,
    limitedBy: isHeld ? 'terminals' : 'conductor',
    by: table.by,
  }
}
