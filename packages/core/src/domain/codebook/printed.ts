/** Where something is printed, and how far it was read. */
export interface Printed {
  /** The standard, such as `NEC`, `CE Code`, `BS 7671`, `HD 60364-5-52`, `AS/NZS 3008.1`. */
  readonly standard: string
  /** The edition that was read, such as `2023`. */
  readonly edition: string
  /** The clause or the table, as it is numbered there. */
  readonly clause: string
  /** A public page, often a secondary copy; or memory, which was not read again. */
  readonly read: 'page' | 'memory'
}

/** One printed table: a row a size (or whatever its first column is), a column a condition. */
export interface PrintedTable<Column extends string> extends Printed {
  /** Of every cell. */
  readonly unit: string
  readonly columns: readonly Column[]
  /** Cells in the order of the columns; undefined where the print has a dash. */
  readonly rows: Readonly<Record<string, readonly (number | undefined)[]>>
}

/** One cell; undefined where the table has no such row or column, or a dash. */
export function cellOf<Column extends string>(
  { columns, rows }: PrintedTable<Column>,
  row: string,
  column: Column,
): number | undefined {
  const at = columns.indexOf(column)
  return at < 0 || !Object.hasOwn(rows, row) ? undefined : rows[row]?.[at]
}

/** A table in bands: the first row whose upper end the value does not pass; undefined past the last. */
export function bandOf<Row extends { readonly upTo: number }>(
  rows: readonly Row[],
  value: number,
): Row | undefined {
  return rows.find(({ upTo }) => value <= upTo + 1e-9 * Math.abs(upTo))
}
