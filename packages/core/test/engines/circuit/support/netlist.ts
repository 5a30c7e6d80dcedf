import type { Complex } from '../../../../src/base/complex.ts'
import { complex } from '../../../../src/base/complex.ts'
import type { Element, Network } from '../../../../src/engines/circuit/network.ts'

/** Series impedance of a source that a figure in print takes as ideal [Ω]. */
export const IDEAL_OHMS = 1e-5

/**
 * Reads a network from a few lines, one element a line; `n` is the reference.
 *
 *     source s l1 n 120 0.025          volts, and ohms unless ideal
 *     impedance h l1 n 10,5            ohms; re,im or magnitude<degrees
 *     capacitor c l1 n 1e-6            farads
 *     contact k l1 a closed            or open; 2 mΩ and 1 GΩ
 *     meter m a n 1e7                  ohms
 *     transformer t l1 n s1 s2 10 0.7 0,14000     ratio, series, magnetising
 */
export function netlist(text: string, hertz = 60): Network {
  const lines = text.split('\n').map(line => line.trim())
  const elements = lines.filter(line => line !== '').map(line => elementOf(line.split(/\s+/u)))
  return { hertz, reference: 'n', elements }
}

function elementOf([kind = '', id = '', a = '', b = '', ...rest]: readonly string[]): Element {
  const between = [a, b] as const
  const [value = ''] = rest
  switch (kind) {
    case 'source': {
      const ohms = rest[1] === undefined ? complex(IDEAL_OHMS) : phasor(rest[1])
      return { kind, id, between, volts: phasor(value), ohms }
    }
    case 'impedance':
      return { kind, id, between, ohms: phasor(value) }
    case 'capacitor':
      return { kind, id, between, farads: Number(value) }
    case 'contact':
      return { kind, id, between, closedOhms: 0.002, openOhms: 1e9, closed: value === 'closed' }
    case 'meter':
      return { kind, id, between, ohms: Number(value) }
    case 'transformer': {
      const [s1 = '', s2 = '', ratio = '', series = '', magnetising = ''] = rest
      return {
        kind,
        id,
        primary: between,
        secondary: [s1, s2],
        ratio: Number(ratio),
        seriesOhms: phasor(series),
        magnetisingOhms: phasor(magnetising),
      }
    }
    default:
      throw new Error(`no such element: ${kind}`)
  }
}

/** `re`, `re,im` or `magnitude<degrees`. */
export function phasor(text: string): Complex {
  const [size = '', degrees] = text.split('<')
  if (degrees === undefined) {
    const [re = '', im = '0'] = text.split(',')
    return complex(Number(re), Number(im))
  }
  const angle = (Number(degrees) * Math.PI) / 180
  return complex(Number(size) * Math.cos(angle), Number(size) * Math.sin(angle))
}

/** The impedance that draws these amps at these volts, lagging by this power factor [Ω]. */
export function loadOhms(volts: number, amps: number, powerFactor = 1): string {
  const ohms = volts / amps
  return `${ohms * powerFactor},${ohms * Math.sqrt(1 - powerFactor ** 2)}`
}
