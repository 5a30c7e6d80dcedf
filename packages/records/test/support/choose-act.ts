import type { Act, JobState, Json, Path } from '@tubwright/records'
import { childrenOf, settleOf } from '@tubwright/records'
import type { Random } from './random.ts'

const LOADS: Path = ['survey', 'loads']
const IDS = ['pump-a', 'pump-b', 'blower', 'light', 'ozonator', 'constructor']
const LEADS = ['high', 'low', 'common']

/** Few places and few values, so that replicas meet often, and sometimes agree. */
const FIELDS: readonly Path[] = [
  ['survey', 'region'],
  ['survey', 'supply', 'breaker'],
  ['survey', 'supply', 'system'],
  ['survey', 'bay', 'width'],
  ['survey', 'room', 'width'],
  ['box'],
  ['notes', 'n1'],
  ['stops', 'smell'],
  ['asBuilt', 'ends', 'pump-a.high'],
]

const VALUES: readonly Json[] = [
  '240 V',
  '120 V',
  { unknown: 'not visible' },
  true,
  3,
  [],
  {},
  ['high', 'common'],
  { from: '8 A', to: '9 A', source: 'plate' },
]

const loadOf = (random: Random): Path => [...LOADS, random.of(IDS)]
const leadOf = (random: Random): Path => [...loadOf(random), 'leads', random.of(LEADS)]
const itemOf = (random: Random): Path => (random.isTrue(0.6) ? loadOf(random) : leadOf(random))

/** An item that is there, where there is one. */
function shownItem(random: Random, state: JobState): Path {
  const loads = childrenOf(state, LOADS)
  if (loads.length === 0) return loadOf(random)
  const load = random.of(loads).path
  const leads = childrenOf(state, [...load, 'leads'])
  return leads.length > 0 && random.isTrue(0.4) ? random.of(leads).path : load
}

function fieldOf(random: Random, state: JobState): Path {
  if (random.isTrue(0.4)) return random.of(FIELDS)
  if (random.isTrue(0.2)) return ['readings', `r${random.below(1e6)}`]
  const inside = random.isTrue(0.9) ? shownItem(random, state) : itemOf(random)
  return [...inside, random.of(['volts', 'size', 'label'])]
}

const setOf = (path: Path, value: Json): Act => ({ do: 'set', path, value })

/** A value where others are, or others where a value is. */
const misshapen = (random: Random): Act =>
  setOf(
    random.of([LOADS, loadOf(random), ['survey', 'supply'], ['box', 'inside']]),
    random.of<Json>(['none', [], {}]),
  )

/** What somebody might do next; some of it makes no sense where he stands, and is refused. */
export function chooseAct(random: Random, state: JobState): Act {
  const kind = random.below(100)
  if (kind < 50) return setOf(fieldOf(random, state), random.of(VALUES))
  if (kind < 56) return setOf(['survey', 'feeder', 'length'], random.below(4))
  if (kind < 62) return { do: 'clear', path: fieldOf(random, state) }
  if (kind < 76) return { do: 'add', path: itemOf(random) }
  if (kind < 84) return { do: 'withdraw', path: shownItem(random, state) }
  if (kind < 95) return restoreOf(random, state)
  if (kind < 97) return misshapen(random)
  const fork = state.forks.find(each => !each.isSettled)
  return fork ? settleOf(fork) : { do: 'clear', path: random.of(FIELDS) }
}

function restoreOf(random: Random, state: JobState): Act {
  const { withdrawn } = state
  const path = withdrawn.length > 0 ? random.of(withdrawn).path : itemOf(random)
  const again = random.isTrue(0.2) ? 'withdraw' : random.isTrue(0.2) ? 'add' : 'restore'
  return { do: again, path }
}
