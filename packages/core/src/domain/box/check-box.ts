import type { Diagnostic } from '../../base/diagnostic.ts'
import { checkBoard } from '../board/check-board.ts'
import { checkLoads } from '../load/check-load.ts'
import { idsOf, named, unique } from '../names.ts'
import type { ControlBox } from './control-box.ts'

type Path = Diagnostic['path']
type Names = readonly string[]

const all = (path: Path, names: Names, known: Names, what: string): readonly Diagnostic[] =>
  names.flatMap((name, index) => named([...path, index], name, known, what))

const values = (
  path: Path,
  record: Readonly<Record<string, string | undefined>>,
  known: Names,
  what: string,
): readonly Diagnostic[] =>
  Object.entries(record).flatMap(([key, name]) => named([...path, key], name ?? '', known, what))

function checkFeeds(box: ControlBox, terminals: Names, commands: Names): readonly Diagnostic[] {
  return box.feeds.flatMap((feed, index) => {
    const at = ['feeds', index]
    const jumpers = Object.entries(feed.jumpers).flatMap(([id, position]) => {
      const jumper = box.board.jumpers.find(each => each.id === id)
      return jumper
        ? named([...at, 'jumpers', id], position, idsOf(jumper.positions), 'a position')
        : named([...at, 'jumpers', id], id, idsOf(box.board.jumpers), 'a jumper')
    })
    return [
      ...values([...at, 'lands'], feed.lands, terminals, 'a terminal'),
      ...jumpers,
      ...all([...at, 'heatYieldsTo'], feed.heatYieldsTo, commands, 'a command'),
      ...(['assumes', 'assumesOn'] as const).flatMap(key =>
        Object.keys(feed[key] ?? {}).flatMap(id =>
          named([...at, key, id], id, commands, 'a command'),
        ),
      ),
    ]
  })
}

const checkPlaces = (box: ControlBox, terminals: Names, commands: Names) =>
  box.places.flatMap((place, index) => {
    const at = ['places', index]
    return [
      ...values([...at, 'lands'], place.lands, terminals, 'a terminal'),
      ...values([...at, 'commands'], place.commands, commands, 'a command'),
      ...(place.connector === undefined
        ? []
        : named([...at, 'connector'], place.connector, idsOf(box.board.connectors), 'a connector')),
    ]
  })

const checkProfiles = (box: ControlBox, commands: Names) =>
  box.profiles.flatMap((profile, index) => {
    const at = ['profiles', index]
    return [
      ...all([...at, 'commands'], profile.commands, commands, 'a command'),
      ...all(
        [...at, 'heatsWith'],
        profile.heatsWith,
        profile.commands,
        'a command of this profile',
      ),
      ...all(
        [...at, 'filtersWith'],
        profile.filtersWith,
        profile.commands,
        'a command of this profile',
      ),
      ...values([...at, 'follows'], profile.follows, profile.commands, 'a command of this profile'),
    ]
  })

function checkCommands(box: ControlBox, commands: Names): readonly Diagnostic[] {
  const contacts = idsOf(box.board.parts.filter(part => part.kind === 'contact'))
  return [
    ...box.commands.flatMap((command, index) =>
      (['closes', 'opens'] as const).flatMap(key =>
        all(['commands', index, key], command[key], contacts, 'a contact'),
      ),
    ),
    ...box.commands.flatMap(({ closes, opens }, index) =>
      closes.length + opens.length > 0
        ? []
        : [
            {
              code: 'missing-key' as const,
              path: ['commands', index],
              is: 'a command that closes nothing and opens nothing',
              may: 'contacts that it closes, or contacts at rest closed that it opens',
            },
          ],
    ),
    ...box.exclusive.flatMap((set, index) => all(['exclusive', index], set, commands, 'a command')),
    ...named(['heat'], box.heat, commands, 'a command'),
    ...box.sensors.flatMap((input, index) =>
      all(['sensors', index, 'opens'], input.opens, contacts, 'a contact'),
    ),
  ]
}

function checkLimit({ currentLimit }: ControlBox): readonly Diagnostic[] {
  const { offered, factory } = currentLimit
  if (offered.some(each => each.si === factory.si)) return []
  const may = `one of those offered: ${offered.map(each => each.text).join(', ')}`
  const path = ['currentLimit', 'factory']
  return [{ code: 'contradiction', path, is: `"${factory.text}"`, may }]
}

/** What a schema cannot say of a control box. */
export function checkBox(box: ControlBox): readonly Diagnostic[] {
  const terminals = idsOf(box.board.terminals)
  const commands = idsOf(box.commands)
  return [
    ...checkBoard(box.board, ['board']),
    ...unique(['places'], idsOf(box.places)),
    ...unique(['commands'], commands),
    ...checkFeeds(box, terminals, commands),
    ...checkPlaces(box, terminals, commands),
    ...checkCommands(box, commands),
    ...checkProfiles(box, commands),
    ...named(['profileFactory'], box.profileFactory, idsOf(box.profiles), 'a profile'),
    ...checkLimit(box),
    ...(box.resetsTo?.profile === undefined
      ? []
      : named(['resetsTo', 'profile'], box.resetsTo.profile, idsOf(box.profiles), 'a profile')),
    ...box.sensors.flatMap((input, index) =>
      all(['sensors', index, 'terminals'], input.terminals, terminals, 'a terminal'),
    ),
    ...checkLoads(box.supplied, ['supplied']),
  ]
}
