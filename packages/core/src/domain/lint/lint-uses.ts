import type { Part } from '../board/board.ts'
import type { ControlBox } from '../box/control-box.ts'
import { joinsThroughWindings, nodeOfTerminal, reachesAny } from './board-graph.ts'
import { choicesOf } from './choices.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'

type Contact = Extract<Part, { kind: 'contact' }>

function lintCommands(box: ControlBox): readonly LintFinding[] {
  const inProfiles = new Set(box.profiles.flatMap(each => each.commands))
  const inPlaces = new Set<string>(box.places.flatMap(each => Object.values(each.commands)))
  return box.commands.flatMap(({ id }, index) => [
    ...(inProfiles.has(id)
      ? []
      : [finding('command-in-no-profile', ['commands', index, 'id'], { command: id })]),
    ...(inPlaces.has(id)
      ? []
      : [finding('command-of-no-output', ['commands', index, 'id'], { command: id })]),
  ])
}

function lintContacts(box: ControlBox): readonly LintFinding[] {
  const closed = new Set(box.commands.flatMap(each => each.closes))
  const opened = new Set(box.commands.flatMap(each => each.opens))
  const sensed = new Set(box.sensors.flatMap(each => each.opens))
  return box.board.parts.flatMap((part, index) => {
    if (part.kind !== 'contact') return []
    const path = ['board', 'parts', index]
    const contact = part.id
    if (part.role === 'limit')
      return sensed.has(contact) ? [] : [finding('limit-contact-unsensed', path, { contact })]
    if (part.rest === 'closed')
      return opened.has(contact) ? [] : [finding('contact-never-opened', path, { contact })]
    return closed.has(contact) ? [] : [finding('contact-never-closed', path, { contact })]
  })
}

function lintTerminals(box: ControlBox): readonly LintFinding[] {
  const used = new Set<string>([
    ...box.places.flatMap(each => Object.values(each.lands)),
    ...box.feeds.flatMap(each => Object.values(each.lands)),
    ...box.sensors.flatMap(each => each.terminals),
  ])
  return box.board.terminals.flatMap(({ id }, index) =>
    used.has(id)
      ? []
      : [finding('terminal-unused', ['board', 'terminals', index], { terminal: id })],
  )
}

function lintSensors(box: ControlBox): readonly LintFinding[] {
  return box.sensors.flatMap(({ label, terminals }, index) => {
    const isPlaced = box.places.some(place => {
      const landed: readonly string[] = Object.values(place.lands)
      return place.takes.includes('probe') && terminals.every(id => landed.includes(id))
    })
    return isPlaced
      ? []
      : [finding('sensor-in-no-place', ['sensors', index, 'terminals'], { input: label })]
  })
}

/** Contacts without which nothing of a feed reaches a node: what the terminals there are fed by. */
function feedingContacts(box: ControlBox, node: string): readonly Contact[] {
  const { board, feeds } = box
  const beside = board.parts.filter(
    (part): part is Contact => part.kind === 'contact' && part.across.includes(node),
  )
  const isFedPastThem = feeds.some(feed => {
    const fed = new Set(Object.values(feed.lands).map(id => nodeOfTerminal(board, id)))
    const isBeside = (part: Part) => beside.includes(part as Contact)
    return choicesOf(box, feed).tried.some(positions =>
      reachesAny(
        node,
        fed,
        joinsThroughWindings(board, positions, part => !isBeside(part)),
      ),
    )
  })
  return isFedPastThem ? [] : beside
}

/** A terminal whose rating is below that of a contact that feeds it: the weaker of the two counts. */
function lintRatings(box: ControlBox): readonly LintFinding[] {
  const landed = new Set<string>(box.places.flatMap(each => Object.values(each.lands)))
  return box.board.terminals.flatMap(({ id, node, rated }, index) => {
    const contact = landed.has(id)
      ? feedingContacts(box, node).find(each => each.rated.resistive.si > rated.si)
      : undefined
    return contact
      ? [
          finding('terminal-below-contact', ['board', 'terminals', index, 'rated'], {
            terminal: id,
            rated: rated.text,
            contact: contact.id,
            carries: contact.rated.resistive.text,
          }),
        ]
      : []
  })
}

/** Commands, contacts, terminals and inputs that nothing uses; terminals below their contacts. */
export const lintUses = (box: ControlBox): readonly LintFinding[] => [
  ...lintCommands(box),
  ...lintContacts(box),
  ...lintTerminals(box),
  ...lintSensors(box),
  ...lintRatings(box),
]
