import type { LaidConductor } from '../../../domain/codebook/book.ts'
import type { ConductorSize } from '../../../domain/conductor.ts'
import type { Segment } from './evidence.ts'

/** What decides how much a conductor of a segment may carry. */
export const laidInputs = ({
  material,
  insulation,
  method,
  ambient,
  alongside,
  terminals,
}: Segment) => ({ material, insulation, method, ambient, alongside, terminals })

/** A conductor of a segment at one point of what it may be. */
export const laidOf = (
  { loaded }: Segment,
  size: ConductorSize,
  point: Omit<LaidConductor, 'size' | 'loaded'>,
): LaidConductor => ({
  size,
  loaded,
  material: point.material,
  insulation: point.insulation,
  method: point.method,
  ambient: point.ambient,
  alongside: point.alongside,
  terminals: point.terminals,
})
