import type { Network, Survey } from '@tubwright/core'
import { checkSupply, closedIn, jobOf, planAndProve, plantOf, statesOf } from '@tubwright/core'
import { readSurvey } from '@tubwright/formats'
import { boxNamed, devices, tubText } from './demo.ts'
import { denseOf } from './dense.ts'
import { atMostGoal, line, medianSeconds, STATED } from './line.ts'

/** What a tub's survey leaves out of its run, told: nothing is open then. */
const TOLD = `
      where: outdoors
      material: copper
      insulation: 90 °C
      method: conduit
      ambient: 35 °C
      alongside: '0'
      conduit: { kind: PVC 40, size: '1' }`

/** The everyday tub with everything said that a rule of the supply asks. */
function describedTub(): Survey {
  const text = tubText('everyday-240-circulation')
    .replace('      length: 35 ft', `      length: 35 ft${TOLD}`)
    .replace('device: ground-fault-breaker-2,', 'device: ground-fault-breaker-2, terminals: 75 °C,')
    .concat('\nplate: { minimumCircuit: 30 A, maximumProtection: 50 A }\n')
  const read = readSurvey('bench', text, devices)
  if (!read.value) throw new Error(JSON.stringify(read.diagnostics))
  return read.value
}

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

/** The whole check of a supply against one plain dense solve of the tub's network. */
export function supplies(): boolean {
  const survey = describedTub()
  const { findings } = checkSupply(survey, devices)
  const open = findings.filter(each => each.verdict !== 'holds').map(each => each.rule)
  if (open.length > 0) throw new Error(`not all is described: ${open.join(', ')}`)
  const { network, closed } = networkOf(survey)
  const dense = denseOf(network)
  const check = medianSeconds(21, 200, () => void checkSupply(survey, devices))
  const plain = medianSeconds(21, 100, () => dense.solve(closed))
  return [
    line(`the supply of one tub checked, ${findings.length} findings`, check * 1e6, 'µs', STATED),
    line('one plain dense solve of its network', plain * 1e6, 'µs', STATED),
    line('the check over the solve', check / plain, '×', atMostGoal(5)),
  ].every(Boolean)
}
