/** Ω per 1000 ft at 75 °C, as printed; every size that a tub's supply or leads use. */
export const PRINTED = [
  { size: '14 AWG', ohmsPerKilofoot: '3.07' },
  { size: '12 AWG', ohmsPerKilofoot: '1.93' },
  { size: '10 AWG', ohmsPerKilofoot: '1.21' },
  { size: '8 AWG', ohmsPerKilofoot: '0.764' },
  { size: '6 AWG', ohmsPerKilofoot: '0.491' },
  { size: '4 AWG', ohmsPerKilofoot: '0.308' },
] as const

/** The table's note for another temperature: R2 = R1·[1 + α·(T2 − 75)]. */
export const NOTE = { alpha: 0.00323, from: 75 } as const
