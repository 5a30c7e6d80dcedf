import { withWarnings } from '@tubwright/formats'
import type { Shelf } from './catalogue.ts'
import type { Talk } from './talk.ts'

/** Prints a wire form, with what there was to heed in the files it comes from. */
export const showWire = (form: { readonly schema: string }, shelf: Shelf, talk: Talk): void =>
  talk.data(JSON.stringify(withWarnings(form, shelf.heed.warnings), null, 2))
