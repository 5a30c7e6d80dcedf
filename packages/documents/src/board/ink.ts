export const INK = '#000'
export const FONT = "'Liberation Sans', Arial, Helvetica, sans-serif"

/** Hundredths of a millimetre, without trailing noughts: the same sheet gives the same bytes. */
export const n = (value: number): string => String(Math.round(value * 100) / 100)
