import { describe, expect, it } from 'vitest'
import { buildNetwork } from './build-network.ts'
import { switchesIn } from './configurations.ts'
import { sampleJob, seededCases } from './sample-job.ts'
import { nodeIm, nodeRe, numberNetwork, solveNetwork } from './solve-dense.ts'

describe('a solution with scaled impedances against the network built that way', () => {
  const job = sampleJob()

  it.each(seededCases(job, { seed: 2, count: 20 }))('$wrong.name in $state', ({ wrong, state }) => {
    const network = buildNetwork(job, wrong.landing, wrong.overrides ?? {})
    const scaled = network.circuitBranches.map((branch, at) => ({ branch, by: 0.85 + at / 50 }))
    const branches = network.branches.map((each, at) => {
      const by = scaled.find(({ branch }) => branch === at)?.by ?? 1
      return { ...each, r: each.r * by, x: each.x * by }
    })
    const closed = switchesIn(job, network, state, 'closed')
    const own = solveNetwork(numberNetwork(network), closed, scaled)
    const built = solveNetwork(numberNetwork({ ...network, branches }), closed)
    for (let node = 0; node < own.re.length; node++) {
      expect(nodeRe(own, node)).toBeCloseTo(nodeRe(built, node), 7)
      expect(nodeIm(own, node)).toBeCloseTo(nodeIm(built, node), 7)
    }
  })
})
