import type { ControlBox } from '../box/control-box.ts'
import { LIMITS } from '../wiring/limits.ts'
import type { State } from '../wiring/states.ts'
import type { Lamp } from './bench.ts'
import { benchOf } from './bench.ts'
import type { Positions } from './board-graph.ts'
import { nodeOfTerminal } from './board-graph.ts'
import { choicesOf } from './choices.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'
import type { Trial } from './try-feed.ts'
import { heaterLamps, tryFeed } from './try-feed.ts'

const AWAKE = 0.8 // share of its plate volts that electronics want; common practice, no source

const isWhole = ({ solves }: Trial): boolean => solves.done === solves.of

const onText = ({ commands }: State): string => [...commands].sort().join(', ') || '–'

/** Every lamp of the box, whatever feeds it. */
function lampsOf(box: ControlBox): readonly Lamp[] {
  const [feed] = box.feeds
  const positions = feed && choicesOf(box, feed).tried[0]
  return (feed && positions && benchOf(box, feed, positions)?.lamps) ?? []
}

function lintLamp(box: ControlBox, lamp: Lamp, trials: readonly Trial[]): readonly LintFinding[] {
  const { place: index, does, element, command } = lamp
  const place = box.places[index]?.label ?? ''
  const path = ['places', index, 'lands', does]
  const dark = trials.filter(each => !each.lit.has(element))
  const wrong = trials.flatMap(each => each.litWrongly.get(element) ?? [])[0]
  const wrongly = wrong
    ? [
        finding('output-on-when-off', ['places', index, 'commands', does], {
          place,
          function: does,
          command: command ?? '',
          on: onText(wrong),
        }),
      ]
    : []
  // What was not gone through to the end shows nothing.
  if (!dark.every(isWhole)) return wrongly
  if (dark.length === trials.length)
    return [...wrongly, finding('output-never-on', path, { place, function: does })]
  return [
    ...wrongly,
    ...dark.map(each =>
      finding('output-dead-on-feed', path, { place, function: does, feed: each.feed.label }),
    ),
  ]
}

const lintReturns = (box: ControlBox): readonly LintFinding[] =>
  box.places.flatMap(({ lands, label }, index) =>
    lands.common === undefined && (lands.hot ?? lands.high ?? lands.low) !== undefined
      ? [finding('output-without-return', ['places', index, 'lands'], { place: label })]
      : [],
  )

/** Nodes of data terminals: what drives them is fed by the electronics, not by the board. */
const dataNodes = ({ board, places }: ControlBox): readonly string[] =>
  places.flatMap(({ lands }) => (lands.data === undefined ? [] : nodeOfTerminal(board, lands.data)))

function lintPower(box: ControlBox, trial: Trial, index: number): readonly LintFinding[] {
  const data = dataNodes(box)
  return box.board.parts.flatMap((part, at): readonly LintFinding[] => {
    const path = ['board', 'parts', at]
    const feed = trial.feed.label
    if (part.kind === 'transformer') {
      const seen = trial.primaries.get(part.id)
      const share = seen ? seen.volts / seen.plate : 1
      return share >= AWAKE && share <= LIMITS.most
        ? []
        : [
            finding('transformer-volts', [...path, 'volts'], {
              part: part.id,
              plate: seen?.plate ?? 0,
              volts: seen?.volts ?? 0,
              feed,
            }),
          ]
    }
    if (part.kind !== 'electronics' || part.across.some(each => data.includes(each))) return []
    const volts = trial.electronics.get(part.id)
    return volts === undefined || volts >= AWAKE * part.volts.si
      ? []
      : [finding('electronics-dead', ['feeds', index], { part: part.id, feed })]
  })
}

const differsOnlyAt = (jumper: string, a: Positions, b: Positions): boolean =>
  Object.keys(a).every(each => each === jumper || a[each] === b[each])

/** Positions that short the feed where another position of the same jumper would not. */
function lintShorts(box: ControlBox, trial: Trial, index: number): readonly LintFinding[] {
  const { feed, shortedChoices, choices, shortedBy } = trial
  const sound = choices.filter(each => !shortedChoices.includes(each))
  const blamed = box.board.jumpers.flatMap(({ id, positions }, at) => {
    if (feed.jumpers[id] !== undefined) return []
    return positions.flatMap((position, place) => {
      const isToBlame = shortedChoices.some(
        shorted =>
          shorted[id] === position.id && sound.some(each => differsOnlyAt(id, shorted, each)),
      )
      return isToBlame
        ? [
            finding('jumper-shorts-feed', ['board', 'jumpers', at, 'positions', place], {
              jumper: id,
              position: position.label ?? position.id,
              feed: feed.label,
            }),
          ]
        : []
    })
  })
  const always =
    shortedChoices.length > 0 && blamed.length === 0
      ? [finding('feed-shorted', ['feeds', index], { feed: feed.label })]
      : []
  const byCommand = shortedBy
    ? [
        finding('command-shorts-feed', ['feeds', index], {
          on: onText(shortedBy),
          feed: feed.label,
        }),
      ]
    : []
  return [...blamed, ...always, ...byCommand]
}

function lintHeater(box: ControlBox, trials: readonly Trial[]): readonly LintFinding[] {
  const heater = heaterLamps(box, lampsOf(box))
  if (heater.length === 0) return []
  const limits = box.board.parts.filter(part => part.kind === 'contact' && part.role === 'limit')
  if (limits.length === 0) return [finding('no-limit', ['board', 'parts'], {})]
  const past = [...new Set(heater.map(each => each.place))].flatMap(index =>
    heater.some(
      each => each.place === index && trials.some(trial => trial.pastLimit.has(each.element)),
    )
      ? [
          finding('limit-not-in-series', ['places', index], {
            place: box.places[index]?.label ?? '',
          }),
        ]
      : [],
  )
  const heats = trials.some(each => each.heated)
  const idle = box.sensors.flatMap(({ duty, opens, label }, index) =>
    duty === 'limit' && heats && !opens.some(id => trials.some(each => each.carriesHeat.has(id)))
      ? [finding('limit-opens-nothing', ['sensors', index, 'opens'], { input: label })]
      : [],
  )
  return [...past, ...idle]
}

/** What only the solved circuit shows: outputs, volts, shorts, the heater's limit. */
export function lintSolved(box: ControlBox): readonly LintFinding[] {
  const trials = box.feeds.map(feed => tryFeed(box, feed))
  return [
    ...lintReturns(box),
    ...lampsOf(box).flatMap(lamp => lintLamp(box, lamp, trials)),
    ...trials.flatMap((trial, index) => [
      ...(trial.shortedChoices.length < trial.choices.length ? lintPower(box, trial, index) : []),
      ...lintShorts(box, trial, index),
      ...(isWhole(trial)
        ? []
        : [
            finding('not-all-tried', ['feeds', index], {
              feed: trial.feed.label,
              tried: trial.solves.done,
              of: trial.solves.of,
            }),
          ]),
    ]),
    ...lintHeater(box, trials),
  ]
}
