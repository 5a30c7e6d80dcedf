/** Ω per 1000 ft of solid copper at 20 °C, as printed. */
export const PRINTED_COLD = [
  { size: '22 AWG', ohmsPerKilofoot: 16.14 },
  { size: '20 AWG', ohmsPerKilofoot: 10.15 },
  { size: '18 AWG', ohmsPerKilofoot: 6.385 },
  { size: '16 AWG', ohmsPerKilofoot: 4.016 },
  { size: '14 AWG', ohmsPerKilofoot: 2.525 },
  { size: '12 AWG', ohmsPerKilofoot: 1.588 },
  { size: '10 AWG', ohmsPerKilofoot: 0.9989 },
  { size: '8 AWG', ohmsPerKilofoot: 0.6282 },
  { size: '6 AWG', ohmsPerKilofoot: 0.3951 },
  { size: '4 AWG', ohmsPerKilofoot: 0.2485 },
] as const
