/** A complex number; as a phasor its magnitude is RMS and time runs as e^{+jωt}. */
export interface Complex {
  readonly re: number
  readonly im: number
}

export const ZERO: Complex = { re: 0, im: 0 }
export const complex = (re: number, im = 0): Complex => ({ re, im })
export const add = (a: Complex, b: Complex): Complex => complex(a.re + b.re, a.im + b.im)
export const subtract = (a: Complex, b: Complex): Complex => complex(a.re - b.re, a.im - b.im)
export const scale = (a: Complex, factor: number): Complex => complex(a.re * factor, a.im * factor)
export const conjugate = (a: Complex): Complex => complex(a.re, -a.im)
export const multiply = (a: Complex, b: Complex): Complex =>
  complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re)

export const divide = (a: Complex, b: Complex): Complex => {
  const size = b.re * b.re + b.im * b.im
  return complex((a.re * b.re + a.im * b.im) / size, (a.im * b.re - a.re * b.im) / size)
}

/** √(re² + im²) from + − × ÷ √ alone, so that every machine gives the same bits. */
export const magnitude = (a: Complex): number => Math.sqrt(a.re * a.re + a.im * a.im)
