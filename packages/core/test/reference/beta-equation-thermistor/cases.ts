/** 10 kΩ, 3950 K, worked from the published equation elsewhere, to a tenth of an ohm. */
export const WORKED = [
  { celsius: 0, ohms: 33620.6 },
  { celsius: 25, ohms: 10000.0 },
  { celsius: 37, ohms: 5989.4 },
  { celsius: 40, ohms: 5301.5 },
  { celsius: 50, ohms: 3588.2 },
] as const
