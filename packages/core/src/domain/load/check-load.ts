import type { Diagnostic } from '../../base/diagnostic.ts'
import { idsOf, named, unique } from '../names.ts'
import { PLAUSIBLE, unusualKnown, unusualNumber } from '../plausible.ts'
import type { Load, PoweredLoad } from './load.ts'
import { isPowered, isUnearthed } from './load.ts'

type Path = Diagnostic['path']

function checkCircuits(load: PoweredLoad, path: Path): readonly Diagnostic[] {
  const leads = idsOf(load.leads)
  return load.circuits.flatMap((circuit, index) => {
    const at = [...path, 'circuits', index]
    const across = circuit.across.flatMap((id, side) =>
      named([...at, 'across', side], id, leads, 'a lead of this load'),
    )
    const strapped = Object.values(load.straps?.positions ?? {}).some(each =>
      Object.hasOwn(each.amps, circuit.id),
    )
    const given = [circuit.amps, circuit.power].filter(each => each !== undefined).length
    const draw: Diagnostic[] =
      given === 1 || (given === 0 && strapped)
        ? []
        : [
            {
              code: given === 0 ? 'missing-key' : 'contradiction',
              path: at,
              is: given === 0 ? 'neither amps nor power' : 'amps and power both',
              may: 'amps, or power; what is not known: { unknown: not visible }',
            },
          ]
    return [...across, ...draw]
  })
}

function checkVolts(load: PoweredLoad, path: Path): readonly Diagnostic[] {
  const positions = Object.keys(load.straps?.positions ?? {})
  if (load.straps)
    return named([...path, 'straps', 'found'], load.straps.found, positions, 'a strap position')
  return load.volts
    ? []
    : [
        {
          code: 'missing-key',
          path: [...path, 'volts'],
          is: 'missing',
          may: 'volts, such as "240 V"',
        },
      ]
}

/** A mains load without an earth lead is double insulated, or a fault can make its metal live. */
function checkEarth(load: PoweredLoad, path: Path): readonly Diagnostic[] {
  if (!isUnearthed(load) || load.doubleInsulated !== undefined) return []
  return [
    {
      code: 'missing-key',
      path: [...path, 'doubleInsulated'],
      is: 'no lead of function earth, and nothing said of double insulation',
      may: 'an earth lead; or doubleInsulated: true where the plate shows it, false where it does not',
    },
  ]
}

/** Draws and power factors that are hardly ever met. */
function checkUsual({ circuits, straps }: PoweredLoad, path: Path): readonly Diagnostic[] {
  const strapped = Object.entries(straps?.positions ?? {}).flatMap(([position, { amps }]) =>
    Object.entries(amps).flatMap(([id, each]) =>
      unusualKnown(
        [...path, 'straps', 'positions', position, 'amps', id],
        each,
        PLAUSIBLE.loadAmps,
      ),
    ),
  )
  const own = circuits.flatMap(({ amps, power, powerFactor }, index) => {
    const at = [...path, 'circuits', index]
    return [
      ...unusualKnown([...at, 'amps'], amps, PLAUSIBLE.loadAmps),
      ...unusualKnown([...at, 'power'], power, PLAUSIBLE.loadPower),
      ...unusualNumber([...at, 'powerFactor'], powerFactor, PLAUSIBLE.powerFactor),
    ]
  })
  return [...own, ...strapped]
}

function checkPowered(load: PoweredLoad, path: Path): readonly Diagnostic[] {
  const moves =
    'movesWaterThroughHeater' in load
      ? load.movesWaterThroughHeater.flatMap((id, index) =>
          named([...path, 'movesWaterThroughHeater', index], id, idsOf(load.circuits), 'a circuit'),
        )
      : []
  return [
    ...checkCircuits(load, path),
    ...checkVolts(load, path),
    ...checkEarth(load, path),
    ...checkUsual(load, path),
    ...moves,
  ]
}

/** What a schema cannot say of the loads of a tub or a carton. */
export const checkLoads = (loads: readonly Load[], path: Path): readonly Diagnostic[] => [
  ...unique(path, idsOf(loads)),
  ...loads.flatMap((load, index) => {
    const at = [...path, index]
    const pins = Object.entries(load.plug?.pins ?? {}).flatMap(([pin, id]) =>
      named([...at, 'plug', 'pins', pin], id, idsOf(load.leads), 'a lead of this load'),
    )
    return [
      ...unique([...at, 'leads'], idsOf(load.leads)),
      ...pins,
      ...(isPowered(load) ? checkPowered(load, at) : []),
    ]
  }),
]
