import type { BoxChanges, Change, LoadSpec, Replacement, Shortfall } from '@tubwright/core'
import type { ChangeMessage, SupplyMessage } from './changes.en.ts'
import {
  ANOTHER_EN,
  CHANGE_EN,
  CHANGES_EN,
  CURRENT_EN,
  FOUND_AMPS_EN,
  SPEC_EN,
  STOPPED_EN,
  SUPPLY_EN,
} from './changes.en.ts'
import type { Params } from './say.ts'
import { say } from './say.ts'
import { tellMatch } from './tell.ts'

/** What a load is chosen by, as a list. */
function specText({ volts, amps, current, curve }: LoadSpec, ampsText: string): string {
  return [
    ...(volts === undefined ? [] : [say(SPEC_EN.volts, { value: volts })]),
    ...(amps === undefined ? [] : [say(ampsText, { value: amps })]),
    ...(current === undefined ? [] : [say(SPEC_EN.current, { value: CURRENT_EN[current] })]),
    ...(curve === undefined ? [] : [say(SPEC_EN.curve, { value: curve })]),
  ].join(', ')
}

function replacementText({ label, of, from, to }: Replacement): string {
  const params = {
    load: label,
    another: ANOTHER_EN[of],
    to: specText(to, SPEC_EN.amps),
    from: specText(from, FOUND_AMPS_EN),
  }
  if (!to.earthed) return say(CHANGE_EN.replace, params)
  return say(
    params.to === '' ? CHANGE_EN['replace-earthed'] : CHANGE_EN['replace-earthed-too'],
    params,
  )
}

/**
 * One change in English.
 *
 * @param withPlate - that a blanking plate comes with a new keypad
 */
export function tellChange(change: Change, withPlate = false): string {
  const tell = (message: ChangeMessage, params: Params = {}) =>
    say(CHANGE_EN[message], { load: change.label, ...params })
  switch (change.kind) {
    case 'replace':
      return replacementText(change)
    case 'from-carton': {
      const keypad = withPlate ? 'new-keypad-and-plate' : 'new-keypad'
      return tell(change.of === 'keypad' ? keypad : 'from-carton', { to: change.to })
    }
    case 'leave-out':
      return tell('leave-out')
    case 'adapter':
      return change.plug === undefined
        ? tell('adapter-bare')
        : tell('adapter', { plug: change.plug })
    case 'blanking-plate': {
      const { width, height, ownWidth, ownHeight } = change
      return tell('blanking-plate', { width, height, ownWidth, ownHeight })
    }
  }
}

/** Changes in English, in their order, each with itself. */
export function tellChanges(
  changes: readonly Change[],
): readonly { readonly change: Change; readonly told: string }[] {
  const withPlate = changes.some(each => each.kind === 'blanking-plate')
  return changes.map(change => ({ change, told: tellChange(change, withPlate) }))
}

/** Which change of the supply a shortfall asks for. */
export const tellSupply = ({ message, params }: Shortfall): string =>
  say(SUPPLY_EN[message as SupplyMessage], params)

const sentences = (shortfalls: readonly Shortfall[]): string => shortfalls.map(tellMatch).join(' ')

/** Of several like sentences each once. */
const listed = (all: readonly string[]): string => [...new Set(all)].join('; ')

/** What changes would do for a box, in one line each: the changes themselves are told apart. */
export function tellOutcome(changes: BoxChanges): readonly string[] {
  switch (changes.outcome) {
    case 'found':
      return [say(CHANGES_EN[changes.proof], { cost: changes.cost })]
    case 'out-of-reach': {
      const { supply, others } = changes
      if (supply.length === 0)
        return [say(CHANGES_EN['nothing-helps'], { which: sentences(others) })]
      const which = listed(supply.map(tellSupply))
      const first = others.length > 0 ? 'not-supply-alone' : 'only-supply'
      return [
        say(CHANGES_EN[first], { which }),
        ...(others.length > 0
          ? [say(CHANGES_EN['nothing-helps'], { which: sentences(others) })]
          : []),
      ]
    }
    case 'none':
      return changes.unmended.length > 0
        ? [say(CHANGES_EN.unmended, { which: sentences(changes.unmended) })]
        : [say(CHANGES_EN.none, { considered: changes.search.considered })]
    case 'no-plan':
      return [say(CHANGES_EN['no-plan'], { tried: changes.tried })]
    case 'limit-reached':
      return [say(STOPPED_EN[changes.of], { limit: changes.limit })]
  }
}
