/** Millivolts per ampere and metre, out and back, as printed. */
export const PRINTED = [
  { size: '1 mm2', millivolts: 44 },
  { size: '1.5 mm2', millivolts: 29 },
  { size: '2.5 mm2', millivolts: 18 },
  { size: '4 mm2', millivolts: 11 },
  { size: '6 mm2', millivolts: 7.3 },
  { size: '10 mm2', millivolts: 4.4 },
  { size: '16 mm2', millivolts: 2.8 },
] as const
