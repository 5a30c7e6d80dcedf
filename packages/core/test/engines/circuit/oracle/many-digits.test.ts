import { assert, test } from 'vitest'
import { magnitude } from '../../../../src/base/complex.ts'
import type { CompileOptions } from '../../../../src/engines/circuit/compile-network.ts'
import { compileNetwork } from '../../../../src/engines/circuit/compile-network.ts'
import type { Network } from '../../../../src/engines/circuit/network.ts'
import { nodesOf } from '../../../../src/engines/circuit/network.ts'
import type { SolveOptions } from '../../../../src/engines/circuit/solve-network.ts'
import { solveNetwork } from '../../../../src/engines/circuit/solve-network.ts'
import { checkPhysics } from '../../../support/check-physics.ts'
import { solveExactly } from '../support/exact-solve.ts'
import type { RandomShape } from '../support/random-network.ts'
import { randomNetwork } from '../support/random-network.ts'
import { RANDOM_SHAPES, TIED_SHAPES } from '../support/random-shapes.ts'

// |error| ≤ 1e-12·|V| + 1e-14·V of the largest source, at every node.
// The second part is what a balanced neutral needs: there V is 0, and a share of it means nothing.
const RELATIVE = 1e-12
const OF_SOURCE = 1e-14
const TIME_LIMIT = 120_000 // [ms]

interface Judged {
  readonly seed: number
  readonly nodes: number
  readonly route: string
  /** Error over allowance at the worst node. */
  readonly share: number
  /** Greatest error of a node over the largest source. */
  readonly ofSource: number
  /** Greatest error over the bound that the solution states. */
  readonly ofBound: number
}

const largestSource = (network: Network): number =>
  Math.max(...network.elements.map(each => (each.kind === 'source' ? magnitude(each.volts) : 0)))

function judge(shape: RandomShape, compile: CompileOptions, solve: SolveOptions): Judged {
  const network = randomNetwork(shape)
  const compiled = compileNetwork(network, compile)
  assert(compiled.ok, `seed ${shape.seed} has a structural fault`)
  const solution = solveNetwork(compiled.value, undefined, solve)
  if (solve.refinementsMax !== 0) checkPhysics(network, solution)
  const exact = solveExactly(network)
  const source = largestSource(network)
  const nodes = nodesOf(network).map(node => {
    const error = exact.error(node, solution.volts(node))
    const allowed = RELATIVE * magnitude(exact.volts(node)) + OF_SOURCE * source
    return { error, share: error / allowed }
  })
  const error = Math.max(...nodes.map(each => each.error))
  return {
    seed: shape.seed,
    nodes: nodes.length,
    route: solution.route,
    share: Math.max(...nodes.map(each => each.share)),
    ofSource: error / source,
    ofBound: error / solution.errorBound,
  }
}

const judgeAll = (
  shapes: readonly RandomShape[],
  compile: CompileOptions = {},
  solve: SolveOptions = {},
): readonly Judged[] => shapes.map(shape => judge(shape, compile, solve))

const worstOf = (all: readonly Judged[]): Judged =>
  all.reduce((worst, each) => (each.share > worst.share ? each : worst))

function assertAccurate(all: readonly Judged[]): void {
  const worst = worstOf(all)
  const ofSource = Math.max(...all.map(each => each.ofSource))
  console.log(`worst of ${all.length}, as a share of the allowance:`, worst)
  console.log(`greatest error of any node over the largest source: ${ofSource}`)
  assert.isAtMost(worst.share, 1, JSON.stringify(worst))
  for (const each of all) assert.isAtMost(each.ofBound, 1, `stated bound: ${JSON.stringify(each)}`)
}

const TENTH = RANDOM_SHAPES.filter((_, index) => index % 10 === 0)

test('1,000 random networks agree with 77-digit arithmetic at every node', {
  timeout: TIME_LIMIT,
}, () => {
  const all = judgeAll(RANDOM_SHAPES)
  assert.lengthOf(all, 1000)
  assert.isTrue(all.every(each => each.route === 'star-mesh'))
  assertAccurate(all)
})

test('pivoted LU with refinement agrees too, on every tenth of them', {
  timeout: TIME_LIMIT,
}, () => {
  assertAccurate(judgeAll(TENTH, { route: 'pivoted-lu' }))
})

test('pivoted LU without refinement does not: the allowance has teeth', {
  timeout: TIME_LIMIT,
}, () => {
  const worst = worstOf(judgeAll(TENTH, { route: 'pivoted-lu' }, { refinementsMax: 0 }))
  console.log('worst of 100 without refinement:', worst)
  assert.isAbove(worst.share, 100)
})

test('transformers that are tied twice take pivoted LU and agree', { timeout: TIME_LIMIT }, () => {
  const all = judgeAll(TIED_SHAPES)
  assert.isAtLeast(all.filter(each => each.route === 'pivoted-lu').length, 80)
  assertAccurate(all)
})
