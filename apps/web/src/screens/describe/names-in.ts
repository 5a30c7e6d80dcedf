/** What a description names, so that it can be named again. */
type NameKind =
  | 'node'
  | 'terminal'
  | 'connector'
  | 'part'
  | 'contact'
  | 'jumper'
  | 'command'
  | 'profile'

type Step = string | number

const inside = (value: unknown, key: Step): unknown =>
  typeof value === 'object' && value !== null ? (value as Record<Step, unknown>)[key] : undefined

const at = (value: unknown, ...path: readonly Step[]): unknown => path.reduce(inside, value)

const listAt = (value: unknown, ...path: readonly Step[]): readonly unknown[] => {
  const found = at(value, ...path)
  return Array.isArray(found) ? found : []
}

const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value]
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : []
}

const idsAt = (value: unknown, ...path: readonly Step[]): readonly string[] =>
  listAt(value, ...path).flatMap(each => {
    const id = at(each, 'id')
    return typeof id === 'string' ? [id] : []
  })

const PAIRS = ['across', 'primary', 'secondary', 'poweredFrom']

function nodesIn(document: unknown): readonly string[] {
  return [
    at(document, 'board', 'earth'),
    listAt(document, 'board', 'terminals').map(each => at(each, 'node')),
    listAt(document, 'board', 'parts').map(each => PAIRS.map(pair => at(each, pair))),
    listAt(document, 'board', 'jumpers').map(each =>
      listAt(each, 'positions').map(position => at(position, 'joins')),
    ),
    at(document, 'fedAt'),
  ].flatMap(textsIn)
}

const contactsIn = (document: unknown): readonly string[] =>
  listAt(document, 'board', 'parts')
    .filter(each => at(each, 'kind') === 'contact')
    .map(each => String(at(each, 'id')))

const READERS: Readonly<Record<NameKind, (document: unknown) => readonly string[]>> = {
  node: nodesIn,
  terminal: document => idsAt(document, 'board', 'terminals'),
  connector: document => idsAt(document, 'board', 'connectors'),
  part: document => idsAt(document, 'board', 'parts'),
  contact: contactsIn,
  jumper: document => idsAt(document, 'board', 'jumpers'),
  command: document => idsAt(document, 'commands'),
  profile: document => idsAt(document, 'profiles'),
}

/** The names of a kind that a description already has, each once. */
export const namesIn = (document: unknown, kind: NameKind): readonly string[] => [
  ...new Set(READERS[kind](document)),
]

/** Which names may stand in a field, by the field's name. */
export const NAMED_IN: Readonly<Record<string, NameKind>> = {
  'board.earth': 'node',
  'board.terminals.node': 'node',
  'board.connectors.pins': 'terminal',
  'board.parts.across': 'node',
  'board.parts.primary': 'node',
  'board.parts.secondary': 'node',
  'board.parts.poweredFrom': 'node',
  'board.parts.sums': 'part',
  'board.parts.taps.jumper': 'jumper',
  'board.jumpers.positions.joins': 'node',
  'control-box.feeds.lands': 'terminal',
  'control-box.feeds.heatYieldsTo': 'command',
  'control-box.places.lands': 'terminal',
  'control-box.places.commands': 'command',
  'control-box.places.connector': 'connector',
  'control-box.commands.closes': 'contact',
  'control-box.commands.opens': 'contact',
  'control-box.exclusive': 'command',
  'control-box.heat': 'command',
  'control-box.profiles.commands': 'command',
  'control-box.profiles.heatsWith': 'command',
  'control-box.profiles.filtersWith': 'command',
  'control-box.profiles.follows': 'command',
  'control-box.profileFactory': 'profile',
  'control-box.resetsTo.profile': 'profile',
  'control-box.sensors.terminals': 'terminal',
  'control-box.sensors.opens': 'contact',
  'supply-device.fedAt': 'node',
  'supply-device.lands': 'terminal',
  'supply-device.tails.node': 'node',
  'supply-device.tails.lands': 'terminal',
}

/** The same where names are keys. */
export const NAMED_KEYS: Readonly<Record<string, NameKind>> = {
  'control-box.feeds.assumes': 'command',
  'control-box.feeds.assumesOn': 'command',
  'control-box.feeds.jumpers': 'jumper',
  'control-box.profiles.follows': 'command',
}

type Path = readonly Step[]

const valueAt = (document: unknown, path: Path): unknown => at(document, ...path)

/** Names that only the thing around a field has: its own leads, its own circuits, its positions. */
export function ownNames(document: unknown, field: string, path: Path): readonly string[] {
  const around = (levels: number, list: string): readonly string[] =>
    idsAt(valueAt(document, path.slice(0, levels)), list)
  switch (field) {
    case 'load.circuits.across':
    case 'load.plug.pins':
      return around(2, 'leads')
    case 'load.movesWaterThroughHeater':
    case 'load.startsOn':
      return around(2, 'circuits')
    case 'board.jumpers.factory':
      return around(3, 'positions')
    case 'control-box.feeds.jumpers':
      return idsAt(
        listAt(document, 'board', 'jumpers').find(each => at(each, 'id') === path.at(-1)),
        'positions',
      )
    default:
      return []
  }
}
