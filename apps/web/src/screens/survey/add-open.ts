import { EXTRA_LOW_VOLTS, parseQuantity, shapeOf } from '@tubwright/core'
import type { OpenField } from '@tubwright/formats'
import type { DeviceChoice, Document, Questions } from '../../ask/protocol.ts'
import type { LooseEnd } from './joints.ts'
import { looseEndsOf, runOf, unlandedIn } from './joints.ts'
import type { LoadSoFar } from './load-so-far.ts'

/** Something that a verdict waits for. */
export interface OpenHere extends OpenField {
  /** Where it is no field that is open: what hangs on nothing. */
  readonly loose?: LooseEnd
}

type Draft = Questions['draft']['answers']

/** Whether its plate is above extra-low voltage: what is on straps the core asks for itself. */
function isOnMains(volts: unknown): boolean {
  const read = typeof volts === 'string' ? parseQuantity('V', volts) : undefined
  return read?.ok === true && read.value.si > EXTRA_LOW_VOLTS
}

/** Loads of a shape that has an earth, of which nobody said whether this one has. */
function earthsUnsaid(document: Document): readonly OpenField[] {
  const loads = (document['loads'] ?? []) as readonly (LoadSoFar & {
    readonly volts?: unknown
    readonly doubleInsulated?: unknown
  })[]
  return loads
    .filter(
      each =>
        isOnMains(each.volts) &&
        shapeOf(each)?.leads.includes('earth') &&
        each.doubleInsulated === undefined &&
        !each.leads?.some(lead => lead.function === 'earth'),
    )
    .map(({ id }) => ({ path: ['loads', id, 'doubleInsulated'] }))
}

/**
 * The draft with what a file may leave out and a person at the tub can say: what hangs on nothing,
 * terminals on which wires arrive, whether a load has an earth.
 */
export function addOpen<View extends Draft>(
  draft: View,
  document: Document,
  kinds: readonly DeviceChoice[],
): Omit<View, 'open'> & { readonly open: readonly OpenHere[] } {
  const run = runOf(document)
  const isTold = ({ path }: OpenField) =>
    [...draft.open, ...draft.diagnostics].some(each => each.path.join('/') === path.join('/'))
  const more: readonly OpenHere[] = [
    ...looseEndsOf(run).map(loose => ({ path: loose.path, loose })),
    ...unlandedIn(run, kinds).map(path => ({ path })),
    ...earthsUnsaid(document),
  ].filter(each => !isTold(each))
  return {
    ...draft,
    isSurvey: draft.isSurvey && more.length === 0,
    open: [...draft.open, ...more],
  }
}
