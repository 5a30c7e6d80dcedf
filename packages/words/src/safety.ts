import type { TableName, Tables } from './words.ts'

/**
 * Tables that safety rests on: somebody acts on these words with a hand in the box.
 *
 * Of the sheet every sentence counts, so that a new one does by itself.
 */
const WHOLE = [
  'severities',
  'verdicts',
  'verify',
  'condition',
  'conditionPage',
  'supplyAsks',
  'supplyRules',
  'supplySays',
  'supplyPage',
  'electrician',
  'round',
  'match',
  'cannot',
  'change',
  'supply',
  'changes',
  'planChanges',
  'changedNote',
  'meter',
  'values',
  'sheet',
  'colours',
  'lines',
] as const satisfies readonly TableName[]

/** Of the page’s small words, those that say what is live or has to be moved. */
const PAGE: readonly (keyof Tables['page'])[] = [
  'stop',
  'licensed',
  'lid',
  'lidNone',
  'liveOff',
  'live',
  'earthed',
  'notShown',
  'notLanded',
  'off',
  'waits',
  'move',
  'leave',
  'change',
  'partOnly',
  'outside',
]

/** Screens of the web app that say what is live and what stops all work, by how their ids begin. */
const SCREENS = /^(?:stop|findings|wiring|supply)\.|^shell\.stop|^survey\.(?:readings|touch)/u

const idsOf = (tables: Tables, name: TableName): readonly string[] => {
  const table = tables[name]
  return typeof table === 'string' ? [name] : Object.keys(table).map(id => `${name}/${id}`)
}

/** Every sentence that safety rests on, as `table/id`; a sentence that is no table by its name. */
export const safetyIds = (tables: Tables): readonly string[] => [
  ...WHOLE.flatMap(name => idsOf(tables, name)),
  ...PAGE.map(id => `page/${id}`),
  ...Object.keys(tables.web).flatMap(id => (SCREENS.test(id) ? [`web/${id}`] : [])),
]
