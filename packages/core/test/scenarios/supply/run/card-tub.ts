import type { CodeFinding, Region, Survey } from '../../../../src/index.ts'
import { checkSupply, conductorSize } from '../../../../src/index.ts'
import { demoDevices, demoTub } from '../../../support/demo.ts'
import { known, knownSi, si } from '../../../support/surveyed.ts'

type Cable = Survey['supply']['cables'][number]
type Conductor = Cable['conductors'][number]
type Load = Survey['loads'][number]

const FEET = 0.3048

/** What a card tells of the tub; all else is that of an ordinary tub on two legs. */
export interface Card {
  readonly region?: Region
  readonly system?: Survey['supply']['system']
  readonly breaker?: number
  /** One way [ft]. */
  readonly feet?: number
  /** Of the lines; the neutral is as large, the earth 10 AWG. */
  readonly size?: string
  /** What everything takes, between the legs [A]. */
  readonly amps?: number
  readonly volts?: number
  readonly cable?: Partial<Cable>
  /** Changes to one conductor by its id; undefined leaves it out. */
  readonly conductors?: Readonly<Record<string, Partial<Conductor> | undefined>>
  /** Loads to neutral [A]. */
  readonly toNeutral?: number
  readonly plate?: Survey['plate']
  readonly terminals?: '60 °C' | '75 °C'
}

const heater = (amps: number, volts: number): Load =>
  ({
    kind: 'heater',
    leads: [],
    id: 'everything',
    label: 'Everything at once',
    volts: si('V', volts),
    circuits: [{ id: 'heat', across: ['a', 'b'], amps: knownSi('A', amps), powerFactor: 1 }],
  }) as Load

const toNeutral = (amps: number): Load =>
  ({ ...heater(amps, 120), id: 'ozonator', label: 'Ozonator', kind: 'ozonator' }) as Load

/** An ordinary tub, as a card changes it. */
export function tubOf(card: Card): Survey {
  const survey = demoTub('everyday-240-circulation')
  const { breaker = 50, feet = 35, size = '6 AWG', amps = 40, volts = 240 } = card
  const [run] = survey.supply.cables
  if (!run) throw new Error('the demo tub has no cable')
  const line = conductorSize.parse(size)
  const conductors = run.conductors.flatMap((each): Conductor[] => {
    const own = card.conductors
    if (own && each.id in own && own[each.id] === undefined) return []
    const base = each.function === 'earth' ? each : { ...each, size: line }
    return [{ ...base, ...own?.[each.id] }]
  })
  return {
    ...survey,
    region: card.region ?? 'US',
    supply: {
      ...survey.supply,
      system: card.system ?? 'split-phase',
      breaker: knownSi('A', breaker),
      devices: survey.supply.devices.map(each => ({
        ...each,
        ...(card.terminals ? { terminals: known(card.terminals) } : {}),
      })),
      cables: [{ ...run, length: si('m', feet * FEET), ...card.cable, conductors }],
    },
    loads: [heater(amps, volts), ...(card.toNeutral ? [toNeutral(card.toNeutral)] : [])],
    ...(card.plate ? { plate: card.plate } : {}),
  }
}

export const report = (survey: Survey) => checkSupply(survey, demoDevices)

/** Findings of one rule. */
export const found = (survey: Survey, rule: string, topic?: string): readonly CodeFinding[] =>
  report(survey).findings.filter(
    each => each.rule === rule && (topic === undefined || each.topic === topic),
  )

/** The one finding of a rule. */
export function one(survey: Survey, rule: string, topic?: string): CodeFinding {
  const all = found(survey, rule, topic)
  if (all.length !== 1 || !all[0])
    throw new Error(`${rule} ${topic ?? ''}: ${all.length} findings, not one`)
  return all[0]
}

export const number = ({ params }: CodeFinding, name: string): number => Number(params[name])

/** Individual wires for 90 °C in a conduit of their own, terminals for 75 °C: the good case. */
export const GOOD_RUN: Partial<Cable> = {
  where: known('outdoors'),
  material: known('copper'),
  insulation: known('90 °C'),
  method: known('conduit'),
  ambient: knownSi('K', 273.15 + 30),
  alongside: known('0'),
  conduit: { kind: known('PVC 40'), size: known('1') },
}
