import type { Diagnostic } from '../../base/diagnostic.ts'
import type { FeedFunction } from '../../domain/board/board.ts'
import { FEED_FUNCTIONS, LINES } from '../../domain/board/board.ts'
import type { Catalogue } from '../../domain/job.ts'
import { BOX } from '../../domain/job.ts'
import { checkLoads } from '../../domain/load/check-load.ts'
import { idsOf, named, unique } from '../../domain/names.ts'
import { PLAUSIBLE, unusualKnown, unusualQuantity } from '../../domain/plausible.ts'
import { ownFunction } from '../../domain/supply/circuits.ts'
import type { SupplyDevice } from '../../domain/supply/supply.ts'
import { EMFS, WITHOUT_NEUTRAL } from '../../domain/wiring/figures.ts'
import type { Survey } from './artifact.ts'

function checkCables(
  { supply }: Survey,
  devices: ReadonlyMap<string, SupplyDevice>,
): readonly Diagnostic[] {
  const known = idsOf(supply.devices)
  return supply.cables.flatMap((cable, index) => {
    const at = ['supply', 'cables', index]
    const terminals = (id: string) => idsOf(devices.get(id)?.board.terminals ?? [])
    const ends = cable.conductors.flatMap((conductor, place) => {
      const here = [...at, 'conductors', place]
      const from = named([...here, 'from'], conductor.from, terminals(cable.from), 'a terminal')
      if (cable.to === BOX || conductor.to === undefined) return from
      const to = named([...here, 'to'], conductor.to, terminals(cable.to), 'a terminal')
      return [...from, ...to]
    })
    return [
      ...named([...at, 'from'], cable.from, known, 'a device of this supply'),
      ...named([...at, 'to'], cable.to, [...known, BOX], 'a device of this supply or "box"'),
      ...unique([...at, 'conductors'], idsOf(cable.conductors)),
      ...ends,
    ]
  })
}

/** What a cable may bring, by the lines of its source; each again by a second circuit. */
function functionsOf(system: Survey['supply']['system']): readonly FeedFunction[] {
  const lines: FeedFunction[] = LINES.filter(each => EMFS[system][each])
  const own: FeedFunction[] = [
    ...lines,
    ...(WITHOUT_NEUTRAL.includes(system) ? [] : (['neutral'] as const)),
    'earth',
  ]
  return FEED_FUNCTIONS.filter(each => own.includes(ownFunction(each)))
}

/** A device behind another one needs a terminal for what arrives; a breaker in the panel has none. */
function checkArrivals(
  { supply }: Survey,
  devices: ReadonlyMap<string, SupplyDevice>,
): readonly Diagnostic[] {
  return supply.cables.flatMap((cable, index) => {
    const device = devices.get(cable.to)
    if (!device) return []
    return cable.conductors.flatMap((conductor, place): readonly Diagnostic[] => {
      const node = device.fedAt[ownFunction(conductor.function)]
      const isLandable = device.board.terminals.some(each => each.node === node)
      return node === undefined || isLandable
        ? []
        : [
            {
              code: 'contradiction',
              path: ['supply', 'cables', index, 'conductors', place],
              is: `"${conductor.id}" arrives at "${cable.to}", which has no terminal for it: it can only stand first`,
              may: 'a device with terminals on its supply side, or this one as the first',
            },
          ]
    })
  })
}

/** A circuit of its own for a device that is not the first, and a plug that can be turned. */
function checkCircuits({ supply }: Survey): readonly Diagnostic[] {
  const devices = supply.devices.flatMap((each, index): readonly Diagnostic[] => {
    const at = ['supply', 'devices', index]
    if (index === 0 && each.breaker)
      return [
        {
          code: 'contradiction',
          path: [...at, 'breaker'],
          is: 'a breaker of its own for the first circuit',
          may: 'supply.breaker, which is that of the first circuit',
        },
      ]
    if (index > 0 && each.breaker && !each.fedBy)
      return [
        {
          code: 'missing-key',
          path: [...at, 'fedBy'],
          is: 'a breaker of its own and no word of what feeds it',
          may: 'fedBy, such as { leg1: leg2 }: which line of the source arrives at which of its nodes',
        },
      ]
    return []
  })
  const canTurn = supply.system === 'single-leg' || supply.system === 'single-phase-230'
  const turned: Diagnostic[] =
    supply.turnable && !canTurn
      ? [
          {
            code: 'contradiction',
            path: ['supply', 'turnable'],
            is: `a turnable plug in a ${supply.system} supply`,
            may: 'false; or one line and neutral: single-leg, single-phase-230',
          },
        ]
      : []
  return [...devices, ...turned]
}

function checkSystem({ supply }: Survey): readonly Diagnostic[] {
  const may: readonly string[] = functionsOf(supply.system)
  const wrong = supply.cables.flatMap((cable, index) =>
    cable.conductors.flatMap((conductor, place) =>
      may.includes(conductor.function)
        ? []
        : [
            {
              code: 'contradiction' as const,
              path: ['supply', 'cables', index, 'conductors', place, 'function'],
              is: `"${conductor.function}" in a ${supply.system} supply`,
              may: may.join(', '),
            },
          ],
    ),
  )
  const reachesBox = supply.cables.some(cable => cable.to === BOX)
  const missing: Diagnostic[] = reachesBox
    ? []
    : [
        {
          code: 'contradiction',
          path: ['supply', 'cables'],
          is: 'no cable to "box"',
          may: 'one that ends at "box"',
        },
      ]
  return [...wrong, ...missing]
}

function checkLengths({ supply }: Survey): readonly Diagnostic[] {
  return supply.cables.flatMap((cable, index) =>
    cable.length.si > 0
      ? []
      : [
          {
            code: 'contradiction' as const,
            path: ['supply', 'cables', index, 'length'],
            is: `"${cable.length.text}"`,
            may: 'a length, such as "35 ft"',
          },
        ],
  )
}

/** What is hardly ever met at a tub: told, and taken as it is written. */
function checkUsual({ supply, bay, keypadHole }: Survey): readonly Diagnostic[] {
  const { breaker, sourceImpedance, cables } = supply
  const openings = Object.entries({ bay, keypadHole }).flatMap(([name, sides]) =>
    Object.entries(sides ?? {}).flatMap(([side, length]) =>
      unusualQuantity([name, side], length, PLAUSIBLE.opening),
    ),
  )
  return [
    ...unusualKnown(['supply', 'breaker'], breaker, PLAUSIBLE.breaker),
    ...unusualQuantity(['supply', 'sourceImpedance'], sourceImpedance, PLAUSIBLE.sourceImpedance),
    ...cables.flatMap(({ length }, index) =>
      unusualQuantity(['supply', 'cables', index, 'length'], length, PLAUSIBLE.cableLength),
    ),
    ...openings,
  ]
}

/** Ends are named after what they belong to, so no two owners may share a name; `box` is taken. */
function checkOwners({ supply, loads }: Survey): readonly Diagnostic[] {
  const owners = [
    ...supply.devices.map((each, index) => ({ id: each.id, path: ['supply', 'devices', index] })),
    ...supply.cables.map((each, index) => ({ id: each.id, path: ['supply', 'cables', index] })),
    ...loads.map((each, index) => ({ id: each.id, path: ['loads', index] })),
  ]
  return owners.flatMap(({ id, path }, at) => {
    const first = owners.find(each => each.id === id)
    // Two loads of one name are the loads' own affair.
    const isOwn = first?.path[0] === 'loads' && path[0] === 'loads'
    const isTaken = id === BOX || (owners.findIndex(each => each.id === id) < at && !isOwn)
    return isTaken
      ? [
          {
            code: 'duplicate-name' as const,
            path: [...path, 'id'],
            is: id === BOX ? `"${BOX}", which names the control box` : `"${id}" a second time`,
            may: 'a name of its own among devices, cables and loads',
          },
        ]
      : []
  })
}

/**
 * What a schema cannot say of a survey: names, duplicates, a supply at odds with its cables; and, as
 * warnings, what is hardly ever met.
 */
export function checkSurvey(survey: Survey, catalogue: Catalogue): readonly Diagnostic[] {
  const devices = new Map(
    survey.supply.devices.flatMap(({ id, device }) => {
      const found = catalogue.get(device)
      return found ? [[id, found] as const] : []
    }),
  )
  const missing = survey.supply.devices.flatMap(({ device }, index) =>
    named(['supply', 'devices', index, 'device'], device, [...catalogue.keys()], 'a supply device'),
  )
  return [
    ...missing,
    ...checkOwners(survey),
    ...checkLengths(survey),
    ...(missing.length > 0
      ? []
      : [...checkCables(survey, devices), ...checkArrivals(survey, devices)]),
    ...checkSystem(survey),
    ...checkCircuits(survey),
    ...checkUsual(survey),
    ...checkLoads(survey.loads, ['loads']),
  ]
}
