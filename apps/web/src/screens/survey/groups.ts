import type { Document } from '../../ask/protocol.ts'
import { isBelow } from './survey-path.ts'
import type { SurveyPath } from './use-survey.ts'

/** One group of questions: a screen of its own. */
export interface Group {
  readonly id: string
  readonly kind:
    | 'tub'
    | 'supply'
    | 'protection'
    | 'run'
    | 'loads'
    | 'load'
    | 'room'
    | 'yard'
    | 'service'
    | 'touch'
    | 'readings'
    | 'photos'
    | 'done'
  /** The load it is about. */
  readonly load?: string
  /** Where what it asks stands in the survey. */
  readonly covers: readonly SurveyPath[]
  /** What it asks although a plan can do without. */
  readonly asks?: readonly SurveyPath[]
  /** No verdict on a box waits for it. */
  readonly isOptional?: true
}

const idsIn = (document: Document, key: string): readonly string[] => {
  const list = document[key]
  if (!Array.isArray(list)) return []
  return list.flatMap((each: { id?: unknown }) => (typeof each.id === 'string' ? [each.id] : []))
}

/** What is asked of the source itself. */
const OF_SUPPLY = [
  'system',
  'frequency',
  'breaker',
  'breakerType',
  'earthing',
  'earthLoop',
  'sourceImpedance',
  'feeder',
  'turnable',
]

/** The groups of a survey in the order in which they are asked, its loads each for itself. */
export const groupsOf = (document: Document): readonly Group[] => [
  {
    id: 'tub',
    kind: 'tub',
    covers: ['title', 'region', 'id', 'schema', 'note', 'plate', 'codeEdition'].map(key => [key]),
  },
  { id: 'supply', kind: 'supply', covers: OF_SUPPLY.map(key => ['supply', key]) },
  { id: 'protection', kind: 'protection', covers: [['supply', 'devices']] },
  { id: 'run', kind: 'run', covers: [['supply', 'cables']] },
  { id: 'loads', kind: 'loads', covers: [] },
  ...idsIn(document, 'loads').map(
    (load): Group => ({ id: `load-${load}`, kind: 'load', load, covers: [['loads', load]] }),
  ),
  {
    id: 'room',
    kind: 'room',
    covers: [['bay'], ['keypadHole']],
    asks: [
      ...['width', 'height', 'depth'].map(side => ['bay', side]),
      ...['width', 'height'].map(side => ['keypadHole', side]),
    ],
  },
  { id: 'yard', kind: 'yard', covers: [['yard']], isOptional: true },
  { id: 'service', kind: 'service', covers: [['service']], isOptional: true },
  { id: 'touch', kind: 'touch', covers: [['touch']], isOptional: true },
  { id: 'readings', kind: 'readings', covers: [['readings']], isOptional: true },
  { id: 'photos', kind: 'photos', covers: [] },
  { id: 'done', kind: 'done', covers: [] },
]

/** The group that asks for a field. */
export const groupFor = (groups: readonly Group[], path: readonly string[]): Group | undefined =>
  groups.find(({ covers }) => covers.some(each => isBelow(path, each))) ??
  groups.find(each => each.kind === (path[0] === 'loads' ? 'loads' : 'protection'))
