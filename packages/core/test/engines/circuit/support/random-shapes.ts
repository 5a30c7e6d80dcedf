import type { RandomShape } from './random-network.ts'

const shapes = (
  count: number,
  of: (index: number) => Omit<RandomShape, 'seed'>,
  firstSeed: number,
): readonly RandomShape[] =>
  Array.from({ length: count }, (_, index) => ({ seed: firstSeed + index, ...of(index) }))

/**
 * One thousand networks of 5 to 80 nodes, every size equally often; every other one solid, every
 * third with one or two isolated transformers.
 */
export const RANDOM_SHAPES = shapes(
  1000,
  index => ({
    nodeCount: 5 + (index % 76),
    isSolid: index % 2 === 0,
    transformerCount: index % 3 === 0 ? 1 + (index % 2) : 0,
    ties: 1,
  }),
  7000,
)

/** One hundred with transformers that are tied twice. */
export const TIED_SHAPES = shapes(
  100,
  index => ({
    nodeCount: 5 + (index % 38),
    isSolid: index % 2 === 0,
    transformerCount: 1 + (index % 3),
    ties: 2,
  }),
  9000,
)
