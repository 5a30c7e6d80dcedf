import type { Change, ControlBox, Load, Survey } from '../../src/index.ts'
import { changesLoads, matchEquipment, withChanges } from '../../src/index.ts'

/** A survey with one load otherwise. */
export const withLoad = (survey: Survey, id: string, change: object): Survey => ({
  ...survey,
  loads: survey.loads.map(each => (each.id === id ? ({ ...each, ...change } as Load) : each)),
})

export const withMore = (survey: Survey, ...loads: readonly Load[]): Survey => ({
  ...survey,
  loads: [...survey.loads, ...loads],
})

export const volts = (si: number) => ({ si: si as never, text: `${si} V` })
export const amps = (si: number) => ({
  kind: 'known' as const,
  value: { si: si as never, text: `${si} A` },
})

/** Whether match says that a box may serve the tub with these changes. */
export const maySo = (survey: Survey, box: ControlBox, changes: readonly Change[]): boolean =>
  matchEquipment(withChanges(survey, changes), [box]).boxes[0]?.verdict === 'may-serve'

/** Changes as `load kind`, with what a replacement has to be; adapters and plates left out. */
export const told = (changes: readonly Change[]): readonly string[] =>
  changes
    .filter(changesLoads)
    .map(each =>
      [each.load, each.kind, ...('to' in each ? [JSON.stringify(each.to)] : [])].join(' '),
    )
    .sort()

/** A keypad of the tub's own, as another maker made it. */
export const OLD_KEYPAD = {
  kind: 'keypad',
  id: 'old-keypad',
  label: 'Old keypad',
  volts: volts(5),
  leads: [
    { id: 'hot', function: 'hot', size: { mm2: 0.5, text: '0.5 mm²' }, colour: 'red' },
    { id: 'common', function: 'common', size: { mm2: 0.5, text: '0.5 mm²' }, colour: 'black' },
  ],
  circuits: [{ id: 'input', across: ['hot', 'common'], amps: amps(0.1), powerFactor: 1 }],
} as unknown as Load

/** A probe of the tub's own, in the water. */
export const probe = (curve: '10k' | '30k', id = 'own-probe'): Load =>
  ({
    kind: 'probe',
    id,
    label: 'Probe of the tub',
    curve,
    place: 'water',
    leads: [
      { id: 'signal', function: 'signal', size: { mm2: 0.5, text: '0.5 mm²' }, colour: 'red' },
      { id: 'common', function: 'common', size: { mm2: 0.5, text: '0.5 mm²' }, colour: 'black' },
    ],
  }) as Load
