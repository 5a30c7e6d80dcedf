import type { Possible } from '../../../base/possible.ts'
import type { Material } from '../../../domain/supply/run-words.ts'
import { MATERIALS } from '../../../domain/supply/run-words.ts'
import type { CircuitEvidence } from './evidence.ts'

/** The metal of each cable, as inputs of a rule by the cable's id. */
export const metalInputs = ({
  segments,
}: CircuitEvidence): Readonly<Record<string, Possible<Material | number>>> =>
  Object.fromEntries(segments.map(({ cable, material }) => [cable.id, material] as const))

const isMaterial = (value: unknown): value is Material => MATERIALS.some(each => each === value)

/** The metals at one point of those inputs. */
export function metalsAt(point: Readonly<Record<string, unknown>>): ReadonlyMap<string, Material> {
  const metals = new Map<string, Material>()
  for (const id in point) {
    const metal = point[id]
    if (isMaterial(metal)) metals.set(id, metal)
  }
  return metals
}
