/** Table 1 of the second page: conductors and percent. */
export const FILL = [
  { count: 1, percent: 53 },
  { count: 2, percent: 31 },
  { count: 3, percent: 40 },
  { count: 4, percent: 40 },
  { count: 60, percent: 40 },
] as const

/** The scan of 2011, EMT: inside diameter, 100, 60, 53, 31 and 40 %. */
export const EMT = [
  { size: '1/2', diameter: 0.622, areas: [0.304, 0.182, 0.161, 0.094, 0.122] },
  { size: '3/4', diameter: 0.824, areas: [0.533, 0.32, 0.283, 0.165, 0.213] },
  { size: '1', diameter: 1.049, areas: [0.864, 0.519, 0.458, 0.268, 0.346] },
  { size: '1-1/4', diameter: 1.38, areas: [1.496, 0.897, 0.793, 0.464, 0.598] },
  { size: '1-1/2', diameter: 1.61, areas: [2.036, 1.221, 1.079, 0.631, 0.814] },
  { size: '2', diameter: 2.067, areas: [3.356, 2.013, 1.778, 1.04, 1.342] },
] as const

/** The second page: inside diameter, then 100, 31, 40 and 53 %, in its order. */
export const SECOND_PAGE = [
  { conduit: 'EMT', size: '1/2', diameter: 0.622, areas: [0.304, 0.094, 0.122, 0.161] },
  { conduit: 'EMT', size: '3/4', diameter: 0.824, areas: [0.533, 0.165, 0.213, 0.283] },
  { conduit: 'EMT', size: '1', diameter: 1.049, areas: [0.864, 0.268, 0.346, 0.458] },
  { conduit: 'EMT', size: '1-1/4', diameter: 1.38, areas: [1.496, 0.464, 0.598, 0.793] },
  { conduit: 'EMT', size: '1-1/2', diameter: 1.61, areas: [2.036, 0.631, 0.814, 1.079] },
  { conduit: 'EMT', size: '2', diameter: 2.067, areas: [3.356, 1.04, 1.342, 1.778] },
  { conduit: 'FMC', size: '1/2', diameter: 0.635, areas: [0.317, 0.098, 0.127, 0.168] },
  { conduit: 'FMC', size: '3/4', diameter: 0.824, areas: [0.533, 0.165, 0.213, 0.282] },
  { conduit: 'FMC', size: '1', diameter: 1.02, areas: [0.817, 0.253, 0.327, 0.433] },
  { conduit: 'FMC', size: '1-1/4', diameter: 1.275, areas: [1.277, 0.396, 0.511, 0.677] },
  { conduit: 'FMC', size: '1-1/2', diameter: 1.538, areas: [1.857, 0.576, 0.743, 0.984] },
  { conduit: 'FMC', size: '2', diameter: 2.04, areas: [3.269, 1.013, 1.307, 1.732] },
  { conduit: 'LFNC-B', size: '1/2', diameter: 0.632, areas: [0.314, 0.097, 0.125, 0.166] },
  { conduit: 'LFNC-B', size: '3/4', diameter: 0.83, areas: [0.541, 0.168, 0.216, 0.287] },
  { conduit: 'LFNC-B', size: '1', diameter: 1.054, areas: [0.872, 0.27, 0.349, 0.462] },
  { conduit: 'LFNC-B', size: '1-1/4', diameter: 1.395, areas: [1.528, 0.474, 0.611, 0.81] },
  { conduit: 'LFNC-B', size: '1-1/2', diameter: 1.588, areas: [1.979, 0.614, 0.792, 1.049] },
  { conduit: 'LFNC-B', size: '2', diameter: 2.033, areas: [3.245, 1.006, 1.298, 1.72] },
] as const

/** Cells in which the second page differs from the first, and what the first prints. */
export const DIFFER = [
  { conduit: 'FMC', size: '3/4', column: '53 %', first: 0.283 },
  { conduit: 'FMC', size: '1-1/2', column: '100 %', first: 1.858 },
  { conduit: 'FMC', size: '1-1/2', column: '53 %', first: 0.985 },
  { conduit: 'LFNC-B', size: '1', column: '100 %', first: 0.873 },
  { conduit: 'LFNC-B', size: '1-1/2', column: '100 %', first: 1.981 },
  { conduit: 'LFNC-B', size: '1-1/2', column: '53 %', first: 1.05 },
  { conduit: 'LFNC-B', size: '2', column: '100 %', first: 3.246 },
] as const

/** Whole areas of plastic conduit by trade size, from the second list. */
export const PVC = [
  { conduit: 'PVC 40', areas: [0.285, 0.508, 0.832, 1.453, 1.986, 3.291] },
  { conduit: 'PVC 80', areas: [0.217, 0.409, 0.688, 1.237, 1.711, 2.874] },
] as const

/** Wrong areas that pages print for the 40 % of PVC 40, 1/2 to 1-1/4. */
export const WRONG_PVC_40 = [0.118, 0.211, 0.333, 0.573] as const

/** Eight of 8 AWG, type THW, in EMT 1: a quotient of 7.92 counts as eight. */
export const ROUNDED_UP = { limit: 0.346, area: 0.0437, count: 8 } as const

/** Worked by ourselves from the tables [in²]. */
export const FILLS = [
  { conduit: 'PVC 40', tradeSize: '1', sizes: '3×6', taken: 0.1521, limit: 0.333, fits: true },
  { conduit: 'PVC 40', tradeSize: '1', sizes: '3×6 1×10', taken: 0.1732, limit: 0.333, fits: true },
  {
    conduit: 'PVC 40',
    tradeSize: '3/4',
    sizes: '3×6 1×10',
    taken: 0.1732,
    limit: 0.203,
    fits: true,
  },
  {
    conduit: 'PVC 40',
    tradeSize: '1/2',
    sizes: '3×6 1×10',
    taken: 0.1732,
    limit: 0.114,
    fits: false,
  },
  { conduit: 'EMT', tradeSize: '3/4', sizes: '3×8 1×10', taken: 0.1309, limit: 0.213, fits: true },
  { conduit: 'EMT', tradeSize: '1/2', sizes: '4×10', taken: 0.0844, limit: 0.122, fits: true },
  {
    conduit: 'EMT',
    tradeSize: '1-1/4',
    sizes: '3×12 4×10 8×8',
    taken: 0.4171,
    limit: 0.598,
    fits: true,
  },
  {
    conduit: 'EMT',
    tradeSize: '1',
    sizes: '3×12 4×10 8×8',
    taken: 0.4171,
    limit: 0.346,
    fits: false,
  },
] as const
