import type { ControlBox, Feed, Profile } from '../box/control-box.ts'
import { allowedAmps, feedOf } from '../wiring/states.ts'
import { benchJob } from './bench.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'
import { greatestLimit, keyOf, leastLimit, modesOf } from './modes.ts'

type Limit = ControlBox['currentLimit']['offered'][number]

/** Everything that one profile and limit allow, on every feed, as a text to compare. */
const allowedBy = (box: ControlBox, profile: Profile, limit: Limit): string =>
  box.feeds
    .map(feed => (modesOf(box, feed, profile, limit) ?? []).map(keyOf).sort().join(' '))
    .join('\n')

function lintProfiles(box: ControlBox): readonly LintFinding[] {
  const limit = greatestLimit(box)
  const effects = box.profiles.map(
    profile => `${allowedBy(box, profile, limit)}\n${[...profile.filtersWith].sort().join(' ')}`,
  )
  return box.profiles.flatMap((profile, index) => {
    const like = effects.indexOf(effects[index] ?? '')
    const heats = box.feeds.some(feed =>
      modesOf(box, feed, profile, limit)?.some(each => each.commands.has(box.heat)),
    )
    return [
      ...(like < index
        ? [
            finding('profile-like-another', ['profiles', index], {
              profile: profile.id,
              other: box.profiles[like]?.id ?? '',
            }),
          ]
        : []),
      ...(profile.commands.includes(box.heat) && !heats
        ? [finding('profile-never-heats', ['profiles', index], { profile: profile.id })]
        : []),
    ]
  })
}

function lintLimits(box: ControlBox): readonly LintFinding[] {
  const { offered } = box.currentLimit
  const effects = offered.map(limit =>
    box.profiles.map(profile => allowedBy(box, profile, limit)).join('\n\n'),
  )
  if (offered.length > 1 && new Set(effects).size === 1)
    return [finding('limit-changes-nothing', ['currentLimit', 'offered'], {})]
  return offered.flatMap((limit, index) => {
    const like = effects.indexOf(effects[index] ?? '')
    return like < index
      ? [
          finding('limit-like-another', ['currentLimit', 'offered', index], {
            limit: limit.text,
            other: offered[like]?.text ?? '',
          }),
        ]
      : []
  })
}

/** Whether some profile has a mode on a feed that these rules allow and that is sought. */
const someMode = (
  box: ControlBox,
  feed: Feed,
  seeks: (commands: ReadonlySet<string>) => boolean,
): boolean =>
  box.profiles.some(profile =>
    modesOf(box, feed, profile, greatestLimit(box))?.some(each => seeks(each.commands)),
  )

/** The rule is taken away: where nothing new may happen, it never did anything. */
function lintYields(box: ControlBox, feed: Feed, index: number): readonly LintFinding[] {
  return feed.heatYieldsTo.flatMap((id, at) => {
    const freed = { ...feed, heatYieldsTo: feed.heatYieldsTo.filter(each => each !== id) }
    const isSought = (on: ReadonlySet<string>) => on.has(box.heat) && on.has(id)
    if (someMode(box, freed, isSought)) return []
    const { assumes: _, ...unshed } = freed
    const path = ['feeds', index, 'heatYieldsTo', at]
    const params = { command: id, feed: feed.label }
    return [
      someMode(box, unshed, isSought)
        ? finding('yield-shed-anyway', path, params)
        : finding('yield-never-fires', path, params),
    ]
  })
}

function lintExclusive(box: ControlBox): readonly LintFinding[] {
  return box.exclusive.flatMap((set, index) => {
    const freed = { ...box, exclusive: box.exclusive.filter(each => each !== set) }
    const isViolated = box.feeds.some(feed =>
      someMode(freed, feed, on => set.filter(id => on.has(id)).length > 1),
    )
    return isViolated
      ? []
      : [finding('exclusive-never-fires', ['exclusive', index], { commands: set.join(', ') })]
  })
}

/** The greatest sum that a mode would come to if nothing were shed [A]. */
function greatestSum(box: ControlBox, feed: Feed): number {
  const { assumes = {}, assumesOn, ...bare } = feed
  const lines = assumesOn ? [...new Set(Object.values(assumesOn))] : [undefined]
  const sums = box.profiles.flatMap(profile =>
    (modesOf(box, bare, profile, greatestLimit(box)) ?? []).flatMap(({ commands }) =>
      lines.map(line =>
        [...commands]
          .filter(id => line === undefined || (assumesOn?.[id] ?? line) === line)
          .reduce((sum, id) => sum + (assumes[id]?.si ?? 0), 0),
      ),
    ),
  )
  return sums.reduce((most, each) => Math.max(most, each), 0)
}

function lintAssumes(box: ControlBox, feed: Feed, index: number): readonly LintFinding[] {
  if (!feed.assumes) return []
  const least = allowedAmps(box, leastLimit(box).si)
  const most = greatestSum(box, feed)
  return most > least
    ? []
    : [
        finding('assumes-never-exceed', ['feeds', index, 'assumes'], {
          feed: feed.label,
          most,
          least,
        }),
      ]
}

/** A feed that no supply leads to: another one is taken wherever it would serve. */
function lintChoice(box: ControlBox, feed: Feed, index: number): readonly LintFinding[] {
  const job = benchJob(box, feed)
  const chosen = feedOf({ ...job, box })
  return chosen === undefined || chosen.id === feed.id
    ? []
    : [finding('feed-never-chosen', ['feeds', index], { feed: feed.label, other: chosen.label })]
}

const MOST_COMMANDS = 12 // as many as `statesOf` goes through

function lintCounts(box: ControlBox): readonly LintFinding[] {
  return box.profiles.flatMap((profile, index) =>
    box.feeds.every(feed => modesOf(box, feed, profile, greatestLimit(box)) !== undefined)
      ? []
      : [
          finding('too-many-commands', ['profiles', index, 'commands'], {
            profile: profile.id,
            most: MOST_COMMANDS,
          }),
        ],
  )
}

/** Settings that change nothing and rules that never act; silent where modes cannot be counted. */
export function lintSettings(box: ControlBox): readonly LintFinding[] {
  const tooMany = lintCounts(box)
  const choices = box.feeds.flatMap((feed, index) => lintChoice(box, feed, index))
  if (tooMany.length > 0) return [...tooMany, ...choices]
  return [
    ...choices,
    ...lintProfiles(box),
    ...lintLimits(box),
    ...box.feeds.flatMap((feed, index) => [
      ...lintYields(box, feed, index),
      ...lintAssumes(box, feed, index),
    ]),
    ...lintExclusive(box),
  ]
}
