import type { BoxChanges, Change, LoadSpec, Replacement, Shortfall } from '@tubwright/core'
import type { ChangeMessage, SupplyMessage } from './en/changes.ts'
import type { Params } from './say.ts'
import { say } from './say.ts'
import { speak } from './spoken.ts'
import { tellMatch } from './tell.ts'
import type { Tables, ToldChange } from './words.ts'

/** What a load is chosen by, as a list. */
function specText(
  { spec, current: currents }: Tables,
  { volts, amps, current, curve }: LoadSpec,
  ofAmps: 'amps' | 'found-amps',
): string {
  return [
    ...(volts === undefined ? [] : [say(spec.volts, { value: volts })]),
    ...(amps === undefined ? [] : [say(spec[ofAmps], { value: amps })]),
    ...(current === undefined ? [] : [say(spec.current, { value: currents[current] })]),
    ...(curve === undefined ? [] : [say(spec.curve, { value: curve })]),
  ].join(', ')
}

function replacementText(tables: Tables, { label, of, from, to }: Replacement): string {
  const { change, another } = tables
  const params = {
    load: label,
    another: another[of],
    to: specText(tables, to, 'amps'),
    from: specText(tables, from, 'found-amps'),
  }
  if (!to.earthed) return say(change.replace, params)
  return say(change[params.to === '' ? 'replace-earthed' : 'replace-earthed-too'], params)
}

export function tellChange(tables: Tables, change: Change, withPlate: boolean): string {
  const tell = (message: ChangeMessage, params: Params = {}) =>
    say(tables.change[message], { load: change.label, ...params })
  switch (change.kind) {
    case 'replace':
      return replacementText(tables, change)
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

export function tellChanges(tables: Tables, changes: readonly Change[]): readonly ToldChange[] {
  const withPlate = changes.some(each => each.kind === 'blanking-plate')
  return changes.map(change => ({ change, told: tellChange(tables, change, withPlate) }))
}

export const tellSupply = (tables: Tables, { message, params }: Shortfall): string =>
  speak(tables, tables.supply[message as SupplyMessage], message, params)

const sentences = (tables: Tables, shortfalls: readonly Shortfall[]): string =>
  shortfalls.map(each => tellMatch(tables, each)).join(' ')

/** Of several like sentences each once. */
const listed = (all: readonly string[]): string => [...new Set(all)].join('; ')

/** What the supply would have to become, and what stays beside it. */
function outOfReach(
  tables: Tables,
  { supply, others }: Extract<BoxChanges, { outcome: 'out-of-reach' }>,
): readonly string[] {
  const { changes } = tables
  const rest =
    others.length > 0 || supply.length === 0
      ? [say(changes['nothing-helps'], { which: sentences(tables, others) })]
      : []
  if (supply.length === 0) return rest
  const which = listed(supply.map(each => tellSupply(tables, each)))
  const first = others.length > 0 ? 'not-supply-alone' : 'only-supply'
  return [say(changes[first], { which }), ...rest]
}

export function tellOutcome(tables: Tables, told: BoxChanges): readonly string[] {
  const { changes, stopped } = tables
  switch (told.outcome) {
    case 'found':
      return [say(changes[told.proof], { cost: told.cost })]
    case 'out-of-reach':
      return outOfReach(tables, told)
    case 'none':
      return told.unmended.length > 0
        ? [say(changes.unmended, { which: sentences(tables, told.unmended) })]
        : [say(changes.none, { considered: told.search.considered })]
    case 'no-plan':
      return [say(changes['no-plan'], { tried: told.tried })]
    case 'limit-reached':
      return [say(stopped[told.of], { limit: told.limit })]
  }
}
