import type { ControlBox, Job, Landing, Network, Survey } from '@tubwright/core'
import {
  closedIn,
  compileNetwork,
  contactStates,
  jobOf,
  makeWorkspace,
  nodesOf,
  planAndProve,
  planRefit,
  plantOf,
  solveInto,
  statesOf,
  verifyPlan,
  writeSpiceNetlist,
} from '@tubwright/core'
import { Simulation } from 'eecircuit-engine'
import { boxes, boxNamed, devices, tubNamed } from './demo.ts'
import { denseOf } from './dense.ts'
import { generateBoxes } from './generate-boxes.ts'
import { atLeastGoal, atMostGoal, growth, line, medianSeconds, STATED } from './line.ts'
import { supplies } from './supply.ts'

/** The network of a demo tub that has about 40 nodes, in its fullest mode. */
function fortyNodes(): { network: Network; closed: ReadonlySet<string> } {
  const job = jobOf(tubNamed('cord-120-15'), boxNamed('plover-1'), devices)
  const plan = planAndProve(job)
  if (!plan.ok) throw new Error('no plan')
  const { landing } = plan.value.plan
  const plant = plantOf(job, landing)
  const states = statesOf(job, landing)
  if (!plant.ok || !states.ok) throw new Error('not solved')
  const fullest = states.value.reduce((a, b) => (b.commands.size > a.commands.size ? b : a))
  return { network: plant.value.wiring.network, closed: closedIn(plant.value, fullest) }
}

async function solving(): Promise<boolean> {
  const { network, closed } = fortyNodes()
  const compiled = compileNetwork(network)
  if (!compiled.ok) throw new Error('not compiled')
  const work = makeWorkspace(compiled.value)
  const states = contactStates(compiled.value, closed)
  const dense = denseOf(network)
  const agree = worstDifference(network, closed)
  const ours = medianSeconds(21, 2000, () => solveInto(compiled.value, states, work))
  const plain = medianSeconds(21, 100, () => dense.solve(closed))
  const simulated = await simulatedSeconds(network, closed)
  const nodes = nodesOf(network).length
  return [
    line(
      `one mode afresh, ${nodes} nodes, ${network.elements.length} elements`,
      ours * 1e6,
      'µs',
      STATED,
    ),
    line('the same by plain dense elimination', plain * 1e6, 'µs', STATED),
    line('the same in the simulator in WASM', simulated * 1e6, 'µs', STATED),
    line('ours over plain dense elimination', ours / plain, '×', atMostGoal(0.33)),
    line('simulator over ours', simulated / ours, '×', atLeastGoal(300)),
    line('largest difference of the two, of the source', agree, '', atMostGoal(1e-6)),
  ].every(Boolean)
}

/** The two solvers must solve the same thing, or the ratio of their times means nothing. */
function worstDifference(network: Network, closed: ReadonlySet<string>): number {
  const compiled = compileNetwork(network)
  if (!compiled.ok) throw new Error('not compiled')
  const work = makeWorkspace(compiled.value)
  solveInto(compiled.value, contactStates(compiled.value, closed), work)
  const volts = denseOf(network).solve(closed)
  let worst = 0
  nodesOf(network).forEach((_, index) => {
    if (index === 0) return
    const re = (work.re[index] ?? 0) - (volts[2 * index - 2] ?? 0)
    const im = (work.im[index] ?? 0) - (volts[2 * index - 1] ?? 0)
    worst = Math.max(worst, Math.sqrt(re * re + im * im))
  })
  return worst / 120
}

async function simulatedSeconds(network: Network, closed: ReadonlySet<string>): Promise<number> {
  const simulation = new Simulation()
  await simulation.start()
  simulation.setNetList(writeSpiceNetlist(network, closed).text)
  await simulation.runSim()
  const times: number[] = []
  for (let round = 0; round < 15; round++) {
    const start = process.hrtime.bigint()
    const result = await simulation.runSim()
    times.push(Number(process.hrtime.bigint() - start) / 1e9)
    if (result.numVariables < 10) throw new Error('the simulator solved nothing')
  }
  times.sort((a, b) => a - b)
  return times[7] ?? Number.NaN
}

const renamed = (box: ControlBox, copy: number): ControlBox => ({ ...box, id: `${box.id}-${copy}` })

/** So many times the demo's boxes. */
const shelf = (times: number): readonly ControlBox[] =>
  Array.from({ length: times }, (_, copy) => boxes.map(box => renamed(box, copy))).flat()

/** The tub with so many lights more, all on the terminals of its own. */
function withLights(survey: Survey, count: number): Survey {
  const light = survey.loads.find(each => each.kind === 'light')
  if (!light) throw new Error('no light')
  const more = Array.from({ length: count }, (_, n) => ({ ...light, id: `light-${n}` }))
  return { ...survey, loads: [...survey.loads, ...more] }
}

function alsoLanded(job: Job, landing: Landing): Landing {
  const ends = job.ends.map(end => {
    const own = landing.ends[end.id]
    const like = landing.ends[end.id.replace(/^light-\d+\./u, 'light.')]
    return [end.id, own ?? like ?? 'insulated'] as const
  })
  return { ...landing, ends: Object.fromEntries(ends) }
}

function jobs(): boolean {
  const survey = tubNamed('large-60')
  const start = process.hrtime.bigint()
  const refit = planRefit(survey, boxes, devices)
  const seconds = Number(process.hrtime.bigint() - start) / 1e9
  const best = refit.plans[0]
  if (!best) throw new Error('no plan')
  const byBoxes = [1, 2, 4, 8].map(
    times =>
      [times, medianSeconds(3, 1, () => void planRefit(survey, shelf(times), devices))] as const,
  )
  const byLoads = [0, 8, 16, 32].map(count => {
    const job = jobOf(withLights(survey, count), boxNamed(best.plan.box), devices)
    const landing = alsoLanded(job, best.plan.landing)
    return [job.loads.length, medianSeconds(5, 2, () => void verifyPlan(job, landing))] as const
  })
  return [
    line(`largest tub: ${boxes.length} boxes matched, planned, verified`, seconds, 's', STATED),
    line('peak memory of this process', process.resourceUsage().maxRSS / 1024, 'MB', STATED),
    line(
      'growth with boxes, 1 to 8 times the demo: time ∝ boxes^',
      growth(byBoxes),
      '',
      atMostGoal(1.1),
    ),
    line(
      'growth with loads, 15 to 47 on one tub: time ∝ loads^',
      growth(byLoads),
      '',
      atMostGoal(1.1),
    ),
  ].every(Boolean)
}

const BOXES = 1000
const SEED = 7
const SERVE_LEAST = 100

/** A big shelf, made by seed: all matched, every box that may serve planned and verified. */
function bigShelf(): boolean {
  const survey = tubNamed('everyday-240-circulation')
  const models = boxes.filter(each => each.feeds.some(feed => feed.system === survey.supply.system))
  const all = generateBoxes(models, BOXES, SEED)
  const rounds = [0, 1, 2].map(() => {
    const start = process.cpuUsage()
    const refit = planRefit(survey, all, devices)
    const { user, system } = process.cpuUsage(start)
    return { refit, seconds: (user + system) / 1e6 }
  })
  // All threads of the process counted: what one core alone would take. The median of three.
  const { refit, seconds } = rounds.sort((a, b) => a.seconds - b.seconds)[1] as (typeof rounds)[0]
  const serve = refit.match.boxes.filter(each => each.verdict === 'may-serve').length
  const byCount = [125, 250, 500, 1000].map(
    count =>
      [
        count,
        medianSeconds(1, 1, () => void planRefit(survey, all.slice(0, count), devices)),
      ] as const,
  )
  return [
    line(`${BOXES} boxes by seed ${SEED}: may serve`, serve, '', atLeastGoal(SERVE_LEAST)),
    line('matched, every survivor planned and verified, of one core', seconds, 's', atMostGoal(2)),
    line('growth with boxes, 125 to 1000: time ∝ boxes^', growth(byCount), '', atMostGoal(1.1)),
    line('peak memory of this process', process.resourceUsage().maxRSS / 1024, 'MB', STATED),
  ].every(Boolean)
}

const heldJobs = jobs()
const heldShelf = bigShelf()
const heldSolving = await solving()
const heldSupplies = supplies()
process.exitCode = heldJobs && heldShelf && heldSolving && heldSupplies ? 0 : 1
