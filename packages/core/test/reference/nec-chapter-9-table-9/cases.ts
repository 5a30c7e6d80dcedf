/** The second print, Ω/kft: X PVC, X steel; R copper PVC, steel; R aluminium PVC, steel. */
export const RESISTANCE_AND_REACTANCE = [
  { size: '14 AWG', x: [0.058, 0.073], copper: [3.1, 3.1], aluminium: [undefined, undefined] },
  { size: '12 AWG', x: [0.054, 0.068], copper: [2.0, 2.0], aluminium: [3.2, 3.2] },
  { size: '10 AWG', x: [0.05, 0.063], copper: [1.2, 1.2], aluminium: [2.0, 2.0] },
  { size: '8 AWG', x: [0.052, 0.065], copper: [0.78, 0.78], aluminium: [1.3, 1.3] },
  { size: '6 AWG', x: [0.051, 0.064], copper: [0.49, 0.49], aluminium: [0.81, 0.81] },
  { size: '4 AWG', x: [0.048, 0.06], copper: [0.31, 0.31], aluminium: [0.51, 0.51] },
  { size: '3 AWG', x: [0.047, 0.059], copper: [0.25, 0.25], aluminium: [0.4, 0.4] },
  { size: '2 AWG', x: [0.045, 0.057], copper: [0.19, 0.2], aluminium: [0.32, 0.32] },
  { size: '1 AWG', x: [0.046, 0.057], copper: [0.15, 0.16], aluminium: [0.25, 0.25] },
  { size: '1/0 AWG', x: [0.044, 0.055], copper: [0.12, 0.12], aluminium: [0.2, 0.2] },
  { size: '2/0 AWG', x: [0.043, 0.054], copper: [0.1, 0.1], aluminium: [0.16, 0.16] },
  { size: '3/0 AWG', x: [0.042, 0.052], copper: [0.077, 0.079], aluminium: [0.13, 0.13] },
  { size: '4/0 AWG', x: [0.041, 0.051], copper: [0.062, 0.063], aluminium: [0.1, 0.1] },
] as const

/** The second print, Ω/kft at a power factor of 0.85: copper PVC, steel; aluminium PVC, steel. */
export const EFFECTIVE = [
  { size: '14 AWG', z: [2.7, 2.7, undefined, undefined] },
  { size: '12 AWG', z: [1.7, 1.7, 2.8, 2.8] },
  { size: '10 AWG', z: [1.1, 1.1, 1.8, 1.8] },
  { size: '8 AWG', z: [0.69, 0.7, 1.1, 1.1] },
  { size: '6 AWG', z: [0.44, 0.45, 0.71, 0.72] },
  { size: '4 AWG', z: [0.29, 0.3, 0.46, 0.46] },
  { size: '3 AWG', z: [0.23, 0.24, 0.37, 0.37] },
  { size: '2 AWG', z: [0.19, 0.2, 0.3, 0.3] },
  { size: '1 AWG', z: [0.16, 0.16, 0.24, 0.25] },
] as const

/** Copper in steel, 1/0 to 4/0 AWG, of another print. */
export const EFFECTIVE_LARGE = [
  { size: '1/0 AWG', z: 0.13 },
  { size: '2/0 AWG', z: 0.11 },
  { size: '3/0 AWG', z: 0.094 },
  { size: '4/0 AWG', z: 0.08 },
] as const

/**
 * A second copy of the print, Ω/km, in its order: X (PVC and aluminium, steel), then R and Z of copper and
 * of aluminium, each in PVC, aluminium and steel. Columns of aluminium conduit are not in the code.
 */
export const METRIC = [
  { size: '14 AWG', printed: '0.190 0.240 10.2 10.2 10.2 - - - 8.9 8.9 8.9 - - -' },
  { size: '12 AWG', printed: '0.177 0.223 6.6 6.6 6.6 10.5 10.5 10.5 5.6 5.6 5.6 9.2 9.2 9.2' },
  { size: '10 AWG', printed: '0.164 0.207 3.9 3.9 3.9 6.6 6.6 6.6 3.6 3.6 3.6 5.9 5.9 5.9' },
  { size: '8 AWG', printed: '0.171 0.213 2.56 2.56 2.56 4.3 4.3 4.3 2.26 2.26 2.30 3.6 3.6 3.6' },
  {
    size: '6 AWG',
    printed: '0.167 0.210 1.61 1.61 1.61 2.66 2.66 2.66 1.44 1.48 1.48 2.33 2.36 2.36',
  },
  {
    size: '4 AWG',
    printed: '0.157 0.197 1.02 1.02 1.02 1.67 1.67 1.67 0.95 0.95 0.98 1.51 1.51 1.51',
  },
  {
    size: '3 AWG',
    printed: '0.154 0.194 0.82 0.82 0.82 1.31 1.35 1.31 0.75 0.79 0.79 1.21 1.21 1.21',
  },
  {
    size: '2 AWG',
    printed: '0.148 0.187 0.62 0.66 0.66 1.05 1.05 1.05 0.62 0.62 0.66 0.98 0.98 0.98',
  },
  {
    size: '1 AWG',
    printed: '0.151 0.187 0.49 0.52 0.52 0.82 0.85 0.82 0.52 0.52 0.52 0.79 0.79 0.82',
  },
  {
    size: '1/0 AWG',
    printed: '0.144 0.180 0.39 0.43 0.39 0.66 0.69 0.66 0.43 0.43 0.43 0.62 0.66 0.66',
  },
] as const

/** Worked at a power factor of 0.85; `printed` is the Z of the table. */
export const WORKED = [
  { what: '10 AWG in steel, Ω/km', r: 3.9, x: 0.207, z: 3.424, printed: 3.6 },
  { what: '250 kcmil in steel, Ω/kft', r: 0.054, x: 0.052, z: 0.0733, printed: 0.073 },
] as const

/** Z of 6 AWG aluminium in steel: the first page against the others. */
export const CONFLICT = { size: '6 AWG', firstPage: 0.71, others: 0.72 } as const
