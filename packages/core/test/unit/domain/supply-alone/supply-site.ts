import type { Complex } from '../../../../src/base/complex.ts'
import { complex, magnitude } from '../../../../src/base/complex.ts'
import type {
  LumpedLoad,
  SupplyAlone,
  SupplySite,
} from '../../../../src/domain/wiring/supply-alone.ts'
import { supplyAlone } from '../../../../src/domain/wiring/supply-alone.ts'
import type { Network } from '../../../../src/engines/circuit/network.ts'
import type { Survey } from '../../../../src/index.ts'
import { demoDevices, demoTub } from '../../../support/demo.ts'

export function siteOf(
  tub: Survey | string,
  loads: readonly LumpedLoad[] = [],
  more: Partial<SupplySite> = {},
): SupplySite {
  const survey = typeof tub === 'string' ? demoTub(tub) : tub
  const devices = new Map(
    survey.supply.devices.flatMap(each => {
      const device = demoDevices.get(each.device)
      return device ? [[each.id, device] as const] : []
    }),
  )
  return { tub: survey, devices, loads, ...more }
}

export function aloneOf(site: SupplySite): SupplyAlone {
  const made = supplyAlone(site)
  if (!made.ok) throw new Error(JSON.stringify(made.failure))
  return made.value
}

export const load = (
  id: string,
  between: LumpedLoad['between'],
  volts: number,
  amps: number,
  powerFactor = 1,
): LumpedLoad => ({ id, between, volts, amps, powerFactor })

/** A survey whose copper and source are next to nothing: what the loads do is all there is. */
export function stiff(id: string): Survey {
  const survey = demoTub(id)
  const si = (value: number) => value as never
  return {
    ...survey,
    supply: {
      ...survey.supply,
      sourceImpedance: { si: si(1e-6), text: '1 µΩ' },
      cables: survey.supply.cables.map(each => ({
        ...each,
        length: { si: si(0.001), text: '1 mm' },
      })),
    },
  }
}

/** The same network with its impedances multiplied, written out for another solver. */
export const multiplied = (network: Network, factors: ReadonlyMap<string, number>): Network => ({
  ...network,
  elements: network.elements.map(each => {
    const factor = factors.get(each.id)
    if (each.kind !== 'impedance' || factor === undefined) return each
    return { ...each, ohms: complex(each.ohms.re * factor, each.ohms.im * factor) }
  }),
})

export const size = (value: Complex): number => magnitude(value)
