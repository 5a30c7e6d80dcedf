import type { Network, Survey } from '@tubwright/core'
import { checkSupply, closedIn, jobOf, planAndProve, plantOf, statesOf } from '@tubwright/core'
import { boxNamed, devices, tubNamed } from './demo.ts'
import { denseOf } from './dense.ts'
import { atMostGoal, line, medianSeconds, STATED } from './line.ts'

/** The network of that tub on a box, in its fullest mode. */
function networkOf(survey: Survey): { network: Network; closed: ReadonlySet<string> } {
  const job = jobOf(survey, boxNamed('rowan-2'), devices)
  const plan = planAndProve(job)
  if (!plan.ok) throw new Error('no plan')
  const plant = plantOf(job, plan.value.plan.landing)
  const states = statesOf(job, plan.value.plan.landing)
  if (!plant.ok || !states.ok) throw new Error('not solved')
  const fullest = states.value.reduce((a, b) => (b.commands.size > a.commands.size ? b : a))
  return { network: plant.value.wiring.network, closed: closedIn(plant.value, fullest) }
}

const WARM_UP = 10_000 // calls

/** The whole check of a supply, its place and its house, all told, against one plain dense solve of the tub's network. */
export function supplies(): boolean {
  const survey = tubNamed('told-run-240')
  const start = process.hrtime.bigint()
  const { findings } = checkSupply(survey, devices)
  const first = Number(process.hrtime.bigint() - start) / 1e9
  const open = findings.filter(each => each.verdict !== 'holds').map(each => each.rule)
  if (open.length > 0) throw new Error(`not all is described: ${open.join(', ')}`)
  const { network, closed } = networkOf(survey)
  const dense = denseOf(network)
  // Both are timed warm: the check is much more code, which the engine compiles later than one loop.
  medianSeconds(1, WARM_UP, () => void checkSupply(survey, devices))
  const check = medianSeconds(21, 200, () => void checkSupply(survey, devices))
  const plain = medianSeconds(21, 100, () => dense.solve(closed))
  return [
    line('the first check of a supply, nothing warm', first * 1e3, 'ms', STATED),
    line(`the supply of one tub checked, ${findings.length} findings`, check * 1e6, 'µs', STATED),
    line('one plain dense solve of its network', plain * 1e6, 'µs', STATED),
    line('the check over the solve', check / plain, '×', atMostGoal(5)),
  ].every(Boolean)
}
