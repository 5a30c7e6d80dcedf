import { safetyIds } from './safety.ts'
import { tellDiagnostic, tellFinding, tellLint, tellMatch } from './tell.ts'
import { tellChange, tellChanges, tellOutcome, tellSupply } from './tell-changes.ts'
import { tellAsk, tellClause, tellCode, tellFitted } from './tell-code.ts'
import { tellColdPart, tellColdReading, tellInsulation } from './tell-cold.ts'
import { tellCondition, tellDangers } from './tell-condition.ts'
import type { Language, Review, Tables, Tellers, Words } from './words.ts'

const tellersOf = (tables: Tables): Tellers => ({
  tellFinding: (finding, nameOf = command => command) => tellFinding(tables, finding, nameOf),
  tellMatch: told => tellMatch(tables, told),
  tellFitted: fitted => tellFitted(tables, fitted),
  tellCode: (finding, nameOf = id => id) => tellCode(tables, finding, nameOf),
  tellDangers: condition => tellDangers(tables, condition),
  tellCondition: (condition, nameOf = id => id) => tellCondition(tables, condition, nameOf),
  tellClause: printed => tellClause(tables, printed),
  tellAsk: (at, nameOf = id => id) => tellAsk(tables, at, nameOf),
  tellLint: finding => tellLint(tables, finding),
  tellDiagnostic: diagnostic => tellDiagnostic(tables, diagnostic),
  tellChange: (change, withPlate = false) => tellChange(tables, change, withPlate),
  tellChanges: changes => tellChanges(tables, changes),
  tellSupply: shortfall => tellSupply(tables, shortfall),
  tellOutcome: changes => tellOutcome(tables, changes),
  tellColdPart: part => tellColdPart(tables, part),
  tellColdReading: (reading, nameOf) => tellColdReading(tables, reading, nameOf),
  tellInsulation: (test, nameOf) => tellInsulation(tables, test, nameOf),
  fieldText: name => {
    const fields: Readonly<Record<string, string>> = tables.fields
    return Object.hasOwn(fields, name) ? fields[name] : undefined
  },
})

/** The ids of sentences as data names them: without their table. */
const bare = (id: string): string => id.slice(id.indexOf('/') + 1)

function reviewOf(tables: Tables, reviewed: ReadonlySet<string> | 'all'): Review {
  const unreviewed = reviewed === 'all' ? [] : safetyIds(tables).filter(each => !reviewed.has(each))
  const ids = new Set([...unreviewed, ...unreviewed.map(bare)])
  return {
    isUnreviewed: id => ids.has(id),
    hasUnreviewed: ids.size > 0,
    unreviewedMark: tables.review.mark,
    unreviewedNotice: tables.review.notice,
  }
}

/**
 * Everything of one language, of its sentences.
 *
 * @param reviewed - sentences, as `table/id`, that somebody qualified has read in this language
 */
export const wordsOf = (
  language: Language,
  tables: Tables,
  reviewed: ReadonlySet<string> | 'all',
): Words => ({ language, ...tables, ...tellersOf(tables), ...reviewOf(tables, reviewed) })
