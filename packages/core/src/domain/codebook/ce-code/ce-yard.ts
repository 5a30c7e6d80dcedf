import { atLeast, atMost } from '../../../base/compare.ts'
import type { Cited } from '../book.ts'
import type { LightBook, Nearest, YardBook } from '../yard-book.ts'
import { CE_SECTION_68 } from './section-68.ts'

const figure = (name: keyof typeof CE_SECTION_68): Cited<number> => {
  const { value, unit: _, ...by } = CE_SECTION_68[name]
  return { value, by }
}

/**
 * How near a switch may be: as an outlet by the stricter reading; the rule for controls asks less.
 *
 * @source [CEC-68] rules 68-064 and 68-404
 */
const CONTROLS: Nearest = {
  kind: 'distance',
  breaksBelow: figure('controlsLeast'),
  holdsFrom: figure('receptacleLeast'),
  between: 'experts-differ',
}

const GROUND_FAULT: Nearest = {
  kind: 'distance',
  breaksBelow: figure('groundFaultDeviceLeast'),
  holdsFrom: figure('groundFaultDeviceLeast'),
  between: 'not-covered',
}

const OUTLETS: Nearest = {
  kind: 'distance',
  breaksBelow: figure('receptacleLeast'),
  holdsFrom: figure('receptacleLeast'),
  between: 'not-covered',
}

/**
 * A class A device within 3 m, at any height; whether a light may be nearer than an outlet was not
 * found.
 *
 * @source [CEC-68] rule 68-066
 */
function lights(): LightBook {
  const least = figure('receptacleLeast').value
  const { value: within, by } = figure('luminaireGroundFaultWithin')
  return {
    turnsAt: { distance: [least, within], height: [] },
    at: ({ distance }) => ({
      isClear: !atMost(distance, within),
      asks: atLeast(distance, least) ? 'protection' : 'more',
      over: undefined,
      within,
      below: 0,
      by,
    }),
  }
}

/**
 * The place around a tub in Canada.
 *
 * Not found: an outlet that has to be there, cords, the bonding conductor, ground and floor.
 *
 * @source [CEC-68] section 68; [CEC-28-604] disconnecting means
 */
export const ceYard = (): YardBook => ({
  disconnect: {
    near: CONTROLS,
    nearWithGroundFault: GROUND_FAULT,
    sight: { ...figure('disconnectMost'), isExcusedByLock: true },
  },
  receptacle: OUTLETS,
  receptacleProtected: figure('receptacleGroundFaultWithin'),
  lights: lights(),
  wallSwitch: CONTROLS,
  metal: { ...figure('scopeWithin'), isForAuthority: true },
  emergencyStop: {
    least: undefined,
    by: { standard: 'CE Code', edition: '2021', clause: 'rule 68-404 4)', read: 'page' },
  },
})
