import { asYard } from './as-nzs/as-yard.ts'
import type { Codebook } from './book.ts'
import { bsYard } from './bs-7671/bs-yard.ts'
import { ceYard } from './ce-code/ce-yard.ts'
import { hdYard } from './hd-60364/hd-yard.ts'
import { necYard } from './nec/nec-yard.ts'
import type { YardBook, YardPlace } from './yard-book.ts'

const BOOKS: Readonly<Record<Codebook['id'], (place: YardPlace) => YardBook>> = {
  nec: necYard,
  'ce-code': ceYard,
  'bs-7671': bsYard,
  'hd-60364': hdYard,
  'as-nzs': asYard,
}

const EDITIONS = ['2017', '2020', '2023'] as const

/** Each book at each place, read once. */
const yardsOf = (id: Codebook['id']) =>
  Object.fromEntries(
    EDITIONS.map(edition => [
      edition,
      {
        indoors: BOOKS[id]({ edition, setting: 'indoors' }),
        outdoors: BOOKS[id]({ edition, setting: 'outdoors' }),
      },
    ]),
  ) as Readonly<Record<YardPlace['edition'], Readonly<Record<YardPlace['setting'], YardBook>>>>

const YARDS = {
  nec: yardsOf('nec'),
  'ce-code': yardsOf('ce-code'),
  'bs-7671': yardsOf('bs-7671'),
  'hd-60364': yardsOf('hd-60364'),
  'as-nzs': yardsOf('as-nzs'),
} as const

/** What a book says of the place around a tub that stands there. */
export const yardIn = ({ id }: Pick<Codebook, 'id'>, { edition, setting }: YardPlace): YardBook =>
  YARDS[id][edition][setting]
