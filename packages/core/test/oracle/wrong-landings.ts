import { strapOf } from './load-circuits.ts'
import type { CurveName } from './quantities.ts'
import { readQuantity } from './quantities.ts'
import type { Overrides, RawConnector, RawJumper, RawLanding, RawLoad } from './raw-files.ts'
import type { End, OracleJob } from './read-job.ts'
import { placeOfEnd } from './read-job.ts'

export interface WrongLanding {
  readonly name: string
  readonly landing: RawLanding
  readonly overrides?: Overrides
}

type Changes = Readonly<Record<string, string>>

/** Everything that `DEFINITIONS.md` tries, in a fixed order: the plan with one slip, or a pair. */
export function* wrongLandings(job: OracleJob): Generator<WrongLanding> {
  const plugged = pluggedLoads(job)
  const ends = [...job.ends.values()].filter(
    end => !end.fixed && !plugged.some(each => each.ends.includes(end.name)),
  )
  yield* movedEnds(job, ends)
  yield* exchangedEnds(job, ends)
  yield* endsOff(job, ends)
  yield* plugs(job, plugged)
  yield* sockets(job, plugged)
  yield* jumpersAndStraps(job)
  yield* settings(job)
  yield* probes(job, plugged)
}

const withEnds = (job: OracleJob, ends: Changes): RawLanding => ({
  ...job.plan,
  ends: { ...job.plan.ends, ...ends },
})

function* movedEnds(job: OracleJob, ends: readonly End[]): Generator<WrongLanding> {
  for (const end of ends)
    for (const board of job.boards)
      if (board.id === end.board)
        for (const terminal of board.terminals)
          if (terminal.name !== placeOfEnd(job, job.plan, end.name))
            yield {
              name: `${end.name} to ${terminal.name}`,
              landing: withEnds(job, { [end.name]: terminal.name }),
            }
}

function* exchangedEnds(job: OracleJob, ends: readonly End[]): Generator<WrongLanding> {
  for (const [at, one] of ends.entries())
    for (const two of ends.slice(at + 1)) {
      const places = [placeOfEnd(job, job.plan, one.name), placeOfEnd(job, job.plan, two.name)]
      const [a, b] = places as [string, string]
      if (one.board === two.board && a !== b)
        yield {
          name: `${one.name} with ${two.name}`,
          landing: withEnds(job, { [one.name]: b, [two.name]: a }),
        }
    }
}

function* endsOff(job: OracleJob, ends: readonly End[]): Generator<WrongLanding> {
  for (const end of ends)
    for (const off of ['loose', 'insulated'])
      if (placeOfEnd(job, job.plan, end.name) !== off)
        yield { name: `${end.name} ${off}`, landing: withEnds(job, { [end.name]: off }) }
}

interface Plugged {
  readonly load: RawLoad
  readonly connector: RawConnector
  readonly ends: readonly string[]
}

/** Loads whose own plug goes straight into a connector of the box, in the plan. */
function pluggedLoads(job: OracleJob): Plugged[] {
  const connectors = job.boards.at(-1)?.connectors ?? []
  return job.loads.flatMap(load => {
    const { plug } = load
    if (!plug || job.plan.adapters?.[load.id] !== undefined) return []
    const connector = connectors.find(
      each =>
        each.shape === plug.shape &&
        Object.entries(plug.pins).every(
          ([pin, lead]) =>
            placeOfEnd(job, job.plan, `${load.id}.${lead}`) === `box.${each.pins[pin]}`,
        ),
    )
    const ends = Object.values(plug.pins).map(lead => `${load.id}.${lead}`)
    return connector ? [{ load, connector, ends }] : []
  })
}

/**
 * Loads whose ends, by an adapter or as they are, all go on the terminals of one connector: what is
 * pushed in there is a plug, whatever it was made of.
 */
function socketed(job: OracleJob): Socketed[] {
  const connectors = job.boards.at(-1)?.connectors ?? []
  return job.loads.flatMap(load => {
    const at = new Map(
      load.leads.map(lead => {
        const end = `${load.id}.${lead.id}`
        return [end, placeOfEnd(job, job.plan, end)] as const
      }),
    )
    const connector = connectors.find(each => {
      const pins = Object.values(each.pins).map(id => `box.${id}`)
      return [...at.values()].every(place => place !== undefined && pins.includes(place))
    })
    if (!connector) return []
    const pinOf = (place: string | undefined) =>
      Object.keys(connector.pins).find(pin => `box.${connector.pins[pin]}` === place) ?? ''
    const pins = Object.fromEntries([...at].map(([end, place]) => [end, pinOf(place)]))
    return [{ load: load.id, connector, pins }]
  })
}

interface Socketed {
  readonly load: string
  readonly connector: RawConnector
  /** Pin of each end. */
  readonly pins: Readonly<Record<string, string>>
}

const pushedInto = ({ pins }: Socketed, connector: RawConnector): Changes =>
  Object.fromEntries(
    Object.entries(pins).map(([end, pin]) => {
      const terminal = connector.pins[pin]
      return [end, terminal === undefined ? 'insulated' : `box.${terminal}`]
    }),
  )

/** Plugs of equal shape exchanged where an adapter makes one of them; any plug into a free socket. */
function* sockets(job: OracleJob, plugged: readonly Plugged[]): Generator<WrongLanding> {
  const all = socketed(job)
  const own = new Set(plugged.map(each => each.load.id))
  for (const [at, one] of all.entries())
    for (const two of all.slice(at + 1))
      if (one.connector.shape === two.connector.shape && !(own.has(one.load) && own.has(two.load)))
        yield {
          name: `plug of ${one.load} with plug of ${two.load}`,
          landing: withEnds(job, {
            ...pushedInto(one, two.connector),
            ...pushedInto(two, one.connector),
          }),
        }
  const taken = new Set(all.map(each => each.connector.id))
  for (const each of all)
    for (const free of job.boards.at(-1)?.connectors ?? [])
      if (free.shape === each.connector.shape && !taken.has(free.id))
        yield {
          name: `plug of ${each.load} into ${free.id}`,
          landing: withEnds(job, pushedInto(each, free)),
        }
}

/** The ends of a plug in a connector; a pin without a terminal touches nothing. */
const into = (plugged: Plugged, connector: RawConnector): Changes =>
  Object.fromEntries(
    Object.entries(plugged.load.plug?.pins ?? {}).map(([pin, lead]) => {
      const terminal = connector.pins[pin]
      return [
        `${plugged.load.id}.${lead}`,
        terminal === undefined ? 'insulated' : `box.${terminal}`,
      ]
    }),
  )

function* plugs(job: OracleJob, plugged: readonly Plugged[]): Generator<WrongLanding> {
  for (const [one, two] of plugPairs(plugged))
    yield {
      name: `plug of ${one.load.id} with plug of ${two.load.id}`,
      landing: withEnds(job, { ...into(one, two.connector), ...into(two, one.connector) }),
    }
  for (const each of plugged)
    yield {
      name: `plug of ${each.load.id} left out`,
      landing: withEnds(job, Object.fromEntries(each.ends.map(end => [end, 'insulated']))),
    }
}

const plugPairs = (plugged: readonly Plugged[]): (readonly [Plugged, Plugged])[] =>
  plugged.flatMap((one, at) =>
    plugged
      .slice(at + 1)
      .filter(two => one.load.plug?.shape === two.load.plug?.shape)
      .map(two => [one, two] as const),
  )

interface Turn {
  readonly name: string
  readonly jumpers?: Changes
  readonly straps?: Changes
}

const turned = (job: OracleJob, turns: readonly Turn[]): WrongLanding => ({
  name: turns.map(each => each.name).join(' and '),
  landing: {
    ...job.plan,
    jumpers: Object.assign({}, job.plan.jumpers, ...turns.map(each => each.jumpers ?? {})),
    straps: Object.assign({}, job.plan.straps, ...turns.map(each => each.straps ?? {})),
  },
})

function jumperTurns(job: OracleJob, jumper: RawJumper): Turn[] {
  const set = job.plan.jumpers[jumper.id] ?? jumper.factory
  return jumper.positions
    .filter(each => each.id !== set)
    .map(each => ({ name: `${jumper.id} ${each.id}`, jumpers: { [jumper.id]: each.id } }))
}

function strapTurns(job: OracleJob, load: RawLoad): Turn[] {
  return Object.keys(load.straps?.positions ?? {})
    .filter(each => each !== strapOf(job.plan, load))
    .map(each => ({ name: `strap of ${load.id} ${each}`, straps: { [load.id]: each } }))
}

function* jumpersAndStraps(job: OracleJob): Generator<WrongLanding> {
  const jumpers = job.boards.flatMap(board => board.jumpers).map(each => jumperTurns(job, each))
  const straps = job.loads.flatMap(load => strapTurns(job, load))
  for (const turn of [...jumpers.flat(), ...straps]) yield turned(job, [turn])
  for (const [at, own] of jumpers.entries())
    for (const one of own)
      for (const two of jumpers.slice(at + 1).flat()) yield turned(job, [one, two])
  for (const jumper of jumpers.flat())
    for (const strap of straps) yield turned(job, [jumper, strap])
}

function* settings(job: OracleJob): Generator<WrongLanding> {
  const { plan, box } = job
  for (const { id } of box.profiles)
    if (id !== plan.settings.profile)
      yield {
        name: `profile ${id}`,
        landing: { ...plan, settings: { ...plan.settings, profile: id } },
      }
  for (const currentLimit of box.currentLimit.offered)
    if (readQuantity(currentLimit) !== readQuantity(plan.settings.currentLimit))
      yield {
        name: `current limit ${currentLimit}`,
        landing: { ...plan, settings: { ...plan.settings, currentLimit } },
      }
}

/** Probes exchanged, where that is not already a plug exchanged; and each of the other curve. */
function* probes(job: OracleJob, plugged: readonly Plugged[]): Generator<WrongLanding> {
  const all = job.loads.filter(load => load.kind === 'probe')
  const done = new Set(plugPairs(plugged).map(([one, two]) => `${one.load.id} ${two.load.id}`))
  for (const [at, one] of all.entries())
    for (const two of all.slice(at + 1))
      if (!done.has(`${one.id} ${two.id}`))
        yield { name: `${one.id} with ${two.id}`, landing: withEnds(job, swapped(job, one, two)) }
  for (const { id, curve } of all) {
    const other: CurveName = curve === '10k' ? '30k' : '10k'
    yield {
      name: `${id} of curve ${other}`,
      landing: job.plan,
      overrides: { probeCurves: { [id]: other } },
    }
  }
}

/** Each load's ends where the plan puts those of the other, function by function. */
function swapped(job: OracleJob, one: RawLoad, two: RawLoad): Changes {
  const places = (from: RawLoad, to: RawLoad): [string, string][] =>
    from.leads.flatMap(lead => {
      const other = to.leads.find(each => each.function === lead.function)
      const at = other && placeOfEnd(job, job.plan, `${to.id}.${other.id}`)
      return at === undefined ? [] : [[`${from.id}.${lead.id}`, at] as [string, string]]
    })
  return Object.fromEntries([...places(one, two), ...places(two, one)])
}
