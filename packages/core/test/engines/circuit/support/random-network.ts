import { complex } from '../../../../src/base/complex.ts'
import type { Element, Network, Pair } from '../../../../src/engines/circuit/network.ts'
import type { Random } from './random.ts'
import { seeded } from './random.ts'

/** What a random network is made of: one seed gives one network on every machine. */
export interface RandomShape {
  readonly seed: number
  readonly nodeCount: number
  /** Every node is joined to the reference by loads and closed contacts; else by anything. */
  readonly isSolid: boolean
  readonly transformerCount: number
  /** Ways from each secondary's circuit to the rest: one can be reflected, two cannot. */
  readonly ties: 1 | 2
}

type Place = (part: Part, a: number | string, b: number | string) => void
type Part = (between: Pair, id: string, random: Random) => Element

const contact =
  (closed: boolean): Part =>
  (between, id, random) => ({
    kind: 'contact',
    id,
    between,
    closedOhms: random.decades(1e-3, 1e-2),
    openOhms: random.decades(1e8, 1e9),
    closed,
  })

const load: Part = (between, id, random) => {
  const ohms = random.decades(1, 1000)
  return { kind: 'impedance', id, between, ohms: complex(ohms, ohms * random.pick([0, 0, 0.3, 1])) }
}

const insulation: Part = (between, id, random) => ({
  kind: 'impedance',
  id,
  between,
  ohms: complex(random.decades(1e7, 1e9)),
})

const capacitor: Part = (between, id, random) => ({
  kind: 'capacitor',
  id,
  between,
  farads: random.decades(1e-10, 5e-5),
})

const meter: Part = (between, id, random) => ({
  kind: 'meter',
  id,
  between,
  ohms: random.pick([3e3, 1e6, 1e7]),
})

const source: Part = (between, id, random) => ({
  kind: 'source',
  id,
  between,
  volts: random.pick([complex(120), complex(-120), complex(-60, 103.92304845413264)]),
  ohms: complex(random.decades(0.01, 0.1), random.pick([0, 0.01])),
})

const SOLID: readonly Part[] = [load, load, contact(true)]
const ANY: readonly Part[] = [
  ...SOLID,
  contact(true),
  contact(false),
  insulation,
  insulation,
  capacitor,
  meter,
]

/** A connected network: two legs, a tree, half as many branches again, and transformers. */
export function randomNetwork(shape: RandomShape): Network {
  const { seed, nodeCount, isSolid, transformerCount } = shape
  const random = seeded(seed)
  const elements: Element[] = []
  const place: Place = (part, a, b) => {
    elements.push(part([`n${a}`, `n${b}`], `e${elements.length}`, random))
  }
  place(source, 1, 0)
  place(source, 2, 0)
  for (let node = 3; node < nodeCount; node++)
    place(random.pick(isSolid ? SOLID : ANY), Math.max(0, node - 1 - random.below(8)), node)
  for (let extra = 0; extra < nodeCount / 2; extra++) {
    const [a, b] = [random.below(nodeCount), random.below(nodeCount)]
    if (a !== b) place(random.pick(ANY), a, b)
  }
  if (random.next() < 0.2) place(source, random.below(nodeCount), 1 + random.below(nodeCount - 1))
  for (let index = 0; index < transformerCount; index++)
    placeTransformer(place, index, shape, random)
  return { hertz: random.pick([50, 60]), reference: 'n0', elements }
}

/** A secondary with two loads and a contact, and what ties it to the rest. */
function placeTransformer(
  place: Place,
  index: number,
  { nodeCount, isSolid, ties }: RandomShape,
  random: Random,
): void {
  const [a, b, c] = [`s${index}a`, `s${index}b`, `s${index}c`]
  const [first, second] = primaryOf(index, random)
  const transformer: Part = ([, s], id) => ({
    kind: 'transformer',
    id,
    primary: [`n${first}`, `n${second}`],
    secondary: [s, `n${b}`],
    ratio: random.pick([10, 120 / 12.6, 5, 0.5]),
    seriesOhms: complex(random.decades(0.1, 2)),
    magnetisingOhms: complex(random.pick([0, 1]), random.decades(3e3, 3e4)),
  })
  place(transformer, first, a)
  place(load, a, b)
  place(contact(random.next() < 0.5), a, c)
  place(isSolid ? load : random.pick([load, insulation]), c, b)
  place(isSolid ? load : insulation, random.pick([a, b]), random.below(nodeCount))
  if (ties === 2) place(isSolid ? load : insulation, c, random.below(nodeCount))
}

/** A leg to the reference or to the other leg; a later transformer may hang on an earlier one. */
function primaryOf(index: number, random: Random): readonly [number | string, number | string] {
  if (index > 0 && random.next() < 0.5) return [`s${index - 1}c`, `s${index - 1}b`]
  return random.pick([[1, 0] as const, [2, 0] as const, [1, 2] as const, [0, 1] as const])
}
