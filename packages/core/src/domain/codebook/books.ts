import type { Region } from '../described.ts'
import { AS_NZS } from './as-nzs/as-book.ts'
import type { Codebook } from './book.ts'
import { BS_7671 } from './bs-7671/bs-book.ts'
import { CE_CODE } from './ce-code/ce-book.ts'
import { HD_60364 } from './hd-60364/hd-book.ts'
import { NEC } from './nec/nec-book.ts'

/** The book of each region. What a book does not have is an honest gap: no other fills it. */
const BOOKS: Readonly<Record<Region, Codebook>> = {
  US: NEC,
  CA: CE_CODE,
  UK: BS_7671,
  EU: HD_60364,
  AU: AS_NZS,
  NZ: AS_NZS,
}

export const bookOf = (region: Region): Codebook => BOOKS[region]
