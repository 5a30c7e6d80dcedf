import type { RatedTemperature } from '../supply/run-words.ts'
import type { Ampacity, LaidConductor } from './book.ts'
import type { HeatColumn, Metal } from './nec/table-310-16.ts'
import type { Printed } from './printed.ts'

/** The tables of a book of North America, which share their form. */
interface AmericanTables {
  readonly printed: (metal: Metal, size: string, column: HeatColumn) => number | undefined
  readonly by: (metal: Metal) => Printed
  readonly ambientFactor: (celsius: number, column: HeatColumn) => number | undefined
  readonly groupFactor: (conductors: number) => number | undefined
  /** Wiring that counts at 60 °C, whatever its wires are made for. */
  /** Flexible cord, which is copper whatever else the run is; absent where its table was not read. */
  readonly cord?: {
    readonly amps: (size: string, loaded: number) => number | undefined
    readonly by: Printed
  }
  readonly sheath?: { readonly methods: readonly LaidConductor['method'][]; readonly by: Printed }
}

const columnOf = (rated: RatedTemperature): HeatColumn | undefined =>
  rated === '70 °C' ? undefined : rated

/** The tables have a dash from 5 K below what the insulation is made for: there it carries nothing. */
const isTooHot = (ambient: number, insulation: HeatColumn): boolean =>
  ambient > Number.parseInt(insulation, 10) - 5

/** The column of 90 °C is for corrections only, whatever terminals are marked for. */
const atTerminal = (rated: RatedTemperature): HeatColumn | undefined =>
  rated === '90 °C' ? '75 °C' : columnOf(rated)

function cordAmpacity(
  { cord, ...tables }: AmericanTables,
  { size, material, ambient, loaded, alongside }: LaidConductor,
  insulation: HeatColumn,
  terminals: HeatColumn,
): Ampacity | undefined {
  const printed = cord?.amps(size.text, loaded)
  const ambientFactor = isTooHot(ambient, insulation)
    ? 0
    : tables.ambientFactor(ambient, insulation)
  const groupFactor = tables.groupFactor(loaded + alongside)
  const atTerminals = tables.printed(material, size.text, terminals)
  if (!cord || printed === undefined || ambientFactor === undefined || groupFactor === undefined)
    return undefined
  const corrected = printed * ambientFactor * groupFactor
  const amps = Math.min(corrected, atTerminals ?? corrected)
  const limitedBy = amps === corrected ? 'conductor' : 'terminals'
  return { amps, printed, ambientFactor, groupFactor, limitedBy, by: cord.by }
}

/**
 * Corrected in the column of its insulation, never over the column of its terminals.
 *
 * Flexible cord has a table of its own; undefined where that was not read.
 */
export function americanAmpacity(
  tables: AmericanTables,
  laid: LaidConductor,
): Ampacity | undefined {
  const { size, material, method, ambient, loaded, alongside } = laid
  const [insulation, terminals] = [columnOf(laid.insulation), atTerminal(laid.terminals)]
  if (!insulation || !terminals) return undefined
  if (method === 'cord') return cordAmpacity(tables, laid, insulation, terminals)
  const printed = tables.printed(material, size.text, insulation)
  const ambientFactor = isTooHot(ambient, insulation)
    ? 0
    : tables.ambientFactor(ambient, insulation)
  const groupFactor = tables.groupFactor(loaded + alongside)
  const atTerminals = tables.printed(material, size.text, terminals)
  const inSheath = tables.printed(material, size.text, '60 °C')
  if (printed === undefined || ambientFactor === undefined || groupFactor === undefined)
    return undefined
  if (atTerminals === undefined || inSheath === undefined) return undefined
  const corrected = printed * ambientFactor * groupFactor
  const isSheathed = tables.sheath?.methods.includes(method) ?? false
  const sheath = isSheathed ? inSheath : Number.POSITIVE_INFINITY
  const amps = Math.min(corrected, atTerminals, sheath)
  const limitedBy = amps === corrected ? 'conductor' : amps === sheath ? 'sheath' : 'terminals'
  const by = limitedBy === 'sheath' && tables.sheath ? tables.sheath.by : tables.by(material)
  return { amps, printed, ambientFactor, groupFactor, limitedBy, by }
}
