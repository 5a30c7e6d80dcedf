import type { Diagnostic } from '../../base/diagnostic.ts'
import type { Known } from '../../base/known.ts'
import type { Catalogue, Tub } from '../job.ts'
import type { Load } from '../load/load.ts'
import { isPowered } from '../load/load.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'
import { lintLoads } from './lint-loads.ts'

type Path = Diagnostic['path']

const unknown = (path: Path, value: Known<unknown> | undefined): readonly LintFinding[] =>
  value?.kind === 'unknown' ? [finding('still-unknown', path, { reason: value.reason })] : []

/** What the survey leaves open; a planner can bound it, an owner can measure it. */
function lintUnknown({ supply, loads }: Tub): readonly LintFinding[] {
  return [
    ...unknown(['supply', 'breaker'], supply.breaker),
    ...loads.filter(isPowered).flatMap(load => {
      const index = loads.indexOf(load)
      return load.circuits.flatMap(({ amps, power }, at) => {
        const here = ['loads', index, 'circuits', at]
        return [...unknown([...here, 'amps'], amps), ...unknown([...here, 'power'], power)]
      })
    }),
  ]
}

const movesWater = (load: Load): boolean =>
  'movesWaterThroughHeater' in load && load.movesWaterThroughHeater.length > 0

function lintSupply({ supply }: Tub, catalogue: Catalogue): readonly LintFinding[] {
  const idle = supply.devices.flatMap(({ id }, index) =>
    supply.cables.some(each => each.from === id || each.to === id)
      ? []
      : [finding('device-in-no-cable', ['supply', 'devices', index], { device: id })],
  )
  const isWatched = supply.devices.some(({ device }) =>
    catalogue.get(device)?.board.parts.some(part => part.kind === 'ground-fault'),
  )
  return [
    ...idle,
    ...(isWatched ? [] : [finding('no-ground-fault-device', ['supply', 'devices'], {})]),
  ]
}

/** What looks wrong or unfinished in a survey whose names are right. */
export const lintTub = (tub: Tub, catalogue: Catalogue): readonly LintFinding[] => [
  ...lintSupply(tub, catalogue),
  ...lintLoads(tub.loads, ['loads']),
  ...(tub.loads.some(movesWater) ? [] : [finding('nothing-moves-water', ['loads'], {})]),
  ...lintUnknown(tub),
]
