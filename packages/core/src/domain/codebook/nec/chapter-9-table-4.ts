import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

export type Conduit = 'EMT' | 'PVC 40' | 'PVC 80' | 'FMC' | 'LFMC' | 'LFNC-B'
export type AreaColumn = '100 %' | '60 %' | '53 %' | '31 %' | '40 %'

export const CONDUITS: readonly Conduit[] = ['EMT', 'PVC 40', 'PVC 80', 'FMC', 'LFMC', 'LFNC-B']

const HEADER = {
  standard: 'NEC',
  edition: '2020',
  clause: 'chapter 9 table 4',
  read: 'page',
} as const

const AREAS = {
  ...HEADER,
  unit: 'in²',
  columns: ['100 %', '60 %', '53 %', '31 %', '40 %'],
} as const

/** Liquidtight conduit of metal and of plastic, type B, is printed with the same figures. */
const LIQUIDTIGHT: PrintedTable<AreaColumn> = {
  ...AREAS,
  rows: {
    '1/2': [0.314, 0.188, 0.166, 0.097, 0.125],
    '3/4': [0.541, 0.325, 0.287, 0.168, 0.216],
    '1': [0.873, 0.524, 0.462, 0.27, 0.349],
    '1-1/4': [1.528, 0.917, 0.81, 0.474, 0.611],
    '1-1/2': [1.981, 1.188, 1.05, 0.614, 0.792],
    '2': [3.246, 1.948, 1.72, 1.006, 1.298],
  },
}

/** Inside areas by trade size, as far as 2. */
export const TABLE_4: Readonly<Record<Conduit, PrintedTable<AreaColumn>>> = {
  EMT: {
    ...AREAS,
    rows: {
      '1/2': [0.304, 0.182, 0.161, 0.094, 0.122],
      '3/4': [0.533, 0.32, 0.283, 0.165, 0.213],
      '1': [0.864, 0.519, 0.458, 0.268, 0.346],
      '1-1/4': [1.496, 0.897, 0.793, 0.464, 0.598],
      '1-1/2': [2.036, 1.221, 1.079, 0.631, 0.814],
      '2': [3.356, 2.013, 1.778, 1.04, 1.342],
    },
  },
  'PVC 40': {
    ...AREAS,
    rows: {
      '1/2': [0.285, 0.171, 0.151, 0.088, 0.114],
      '3/4': [0.508, 0.305, 0.269, 0.157, 0.203],
      '1': [0.832, 0.499, 0.441, 0.258, 0.333],
      '1-1/4': [1.453, 0.872, 0.77, 0.45, 0.581],
      '1-1/2': [1.986, 1.191, 1.052, 0.616, 0.794],
      '2': [3.291, 1.975, 1.744, 1.02, 1.316],
    },
  },
  'PVC 80': {
    ...AREAS,
    rows: {
      '1/2': [0.217, 0.13, 0.115, 0.067, 0.087],
      '3/4': [0.409, 0.246, 0.217, 0.127, 0.164],
      '1': [0.688, 0.413, 0.365, 0.213, 0.275],
      '1-1/4': [1.237, 0.742, 0.656, 0.383, 0.495],
      '1-1/2': [1.711, 1.027, 0.907, 0.53, 0.684],
      '2': [2.874, 1.725, 1.523, 0.891, 1.15],
    },
  },
  FMC: {
    ...AREAS,
    rows: {
      '1/2': [0.317, 0.19, 0.168, 0.098, 0.127],
      '3/4': [0.533, 0.32, 0.283, 0.165, 0.213],
      '1': [0.817, 0.49, 0.433, 0.253, 0.327],
      '1-1/4': [1.277, 0.766, 0.677, 0.396, 0.511],
      '1-1/2': [1.858, 1.115, 0.985, 0.576, 0.743],
      '2': [3.269, 1.961, 1.732, 1.013, 1.307],
    },
  },
  LFMC: LIQUIDTIGHT,
  'LFNC-B': LIQUIDTIGHT,
}

/** Inside diameters by trade size. */
export const TABLE_4_DIAMETERS: PrintedTable<Conduit> = {
  ...HEADER,
  unit: 'in',
  columns: CONDUITS,
  rows: {
    '1/2': [0.622, 0.602, 0.526, 0.635, 0.632, 0.632],
    '3/4': [0.824, 0.804, 0.722, 0.824, 0.83, 0.83],
    '1': [1.049, 1.029, 0.936, 1.02, 1.054, 1.054],
    '1-1/4': [1.38, 1.36, 1.255, 1.275, 1.395, 1.395],
    '1-1/2': [1.61, 1.59, 1.476, 1.538, 1.588, 1.588],
    '2': [2.067, 2.047, 1.913, 2.04, 2.033, 2.033],
  },
}

/** Trade sizes, the smallest first. */
export const TRADE_SIZES: readonly string[] = ['1/2', '3/4', '1', '1-1/4', '1-1/2', '2']

/**
 * Inside area of a conduit, whole or the part that may be filled.
 *
 * @param tradeSize - as it is sold, such as `3/4` or `1-1/4`; not a diameter
 * @returns [in²]; undefined for a size that is not printed
 * @source [NEC-CH9-T4] chapter 9, table 4
 */
export const conduitArea = (
  conduit: Conduit,
  tradeSize: string,
  column: AreaColumn,
): number | undefined => cellOf(TABLE_4[conduit], tradeSize, column)
