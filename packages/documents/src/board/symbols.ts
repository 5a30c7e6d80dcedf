import type { PanelPartner } from '@tubwright/core'
import type { Point } from './scene.ts'

const n = (value: number): string => String(Math.round(value * 100) / 100)

const circle = ({ x, y }: Point): string => `<circle cx="${n(x)}" cy="${n(y)}" r="2.8"/>`
const line = ({ x, y }: Point, d: string): string =>
  `<path transform="translate(${n(x)} ${n(y)})" d="${d}"/>`
const letter = ({ x, y }: Point, text: string): string =>
  `<text x="${n(x)}" y="${n(y + 1.1)}" font-size="3.1" text-anchor="middle" stroke="none" fill="#000">${text}</text>`

/** Plain signs after the usual ones of circuit diagrams, so that none leans on colour. */
const SYMBOLS: Readonly<Record<PanelPartner['symbol'], (at: Point) => string>> = {
  pump: at => circle(at) + letter(at, 'M'),
  'circulation-pump': at => circle(at) + letter(at, 'M'),
  blower: at => circle(at) + line(at, 'M-1.9 -1.9L2.6 -0.9M-1.9 1.9L2.6 0.9'),
  heater: at => line(at, 'M-4 -1.5H4V1.5H-4ZM-2 -1.5V1.5M0 -1.5V1.5M2 -1.5V1.5'),
  ozonator: at => line(at, 'M-2.8 -2.8H2.8V2.8H-2.8ZM-0.4 -2V2M0.4 -2V2M-2 0H-0.4M0.4 0H2'),
  light: at => circle(at) + line(at, 'M-2 -2L2 2M-2 2L2 -2'),
  audio: at => line(at, 'M-2.8 -1H-1.2L0.8 -2.6V2.6L-1.2 1H-2.8ZM1.8 -1.4L2.4 0L1.8 1.4'),
  sanitiser: at => line(at, 'M-2.8 -2.4H2.8V2.4H-2.8ZM-1.2 -1.4V1.4M0 -1.4V1.4M1.2 -1.4V1.4'),
  keypad: at => line(at, 'M-3.2 -2.2H3.2V2.2H-3.2ZM-2 -0.9H-0.6M0.6 -0.9H2M-2 0.9H-0.6M0.6 0.9H2'),
  probe: at => line(at, 'M-3 -1.1H3V1.1H-3ZM-3 2.4H-1.6L1.8 -2.4'),
  box: at => line(at, 'M-4 -2.4H4V2.4H-4Z'),
  cable: at => line(at, 'M-3 -1.5H3M-3 0H3M-3 1.5H3M-0.8 -2.4L0.8 2.4'),
  tail: at => line(at, 'M-3 1.6C-3 -2.4 3 -2.4 3 1.6M2.2 0.6L3 1.8L3.8 0.6'),
}

/** The sign of a load about a point. */
export const symbolMarkup = (symbol: PanelPartner['symbol'], at: Point): string =>
  `<g fill="none" stroke="#000" stroke-width="0.35">${SYMBOLS[symbol](at)}</g>`
