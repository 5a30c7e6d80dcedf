import type { PanelPartner, WireRole } from '@tubwright/core'

/** Millimetres on paper, from the upper left corner. */
export interface Point {
  readonly x: number
  readonly y: number
}

export interface Box extends Point {
  readonly width: number
  readonly height: number
}

/** Text with the room it takes: what a test holds against every other thing on the drawing. */
export interface Label extends Box {
  readonly kind: 'terminal' | 'number' | 'tag' | 'pin' | 'partner' | 'jumper' | 'point'
  readonly text: string
  readonly size: number
  /** Read from below upwards. */
  readonly turned: boolean
  /** The number of the wire that it names. */
  readonly wire?: number
}

export interface SceneWire {
  readonly number: number
  /** The end that lands on this board; absent where nobody lands any yet. */
  readonly end?: string
  readonly role: WireRole
  readonly colour: string
  readonly says: string
  readonly points: readonly Point[]
}

export interface SceneTerminal extends Point {
  readonly id: string
  readonly radius: number
  readonly isSquare: boolean
  readonly isUsed: boolean
  readonly says: string
}

export interface ScenePartner extends Box {
  readonly symbol: PanelPartner['symbol']
  readonly at: Point
  readonly says: string
}

export interface SceneJumper extends Box {
  readonly id: string
  readonly pads: number
  readonly planned: number
  readonly moves: boolean
  readonly says: string
}

/** A board drawing before it is ink. */
export interface Scene {
  readonly width: number
  readonly height: number
  readonly board: Box
  readonly wires: readonly SceneWire[]
  readonly terminals: readonly SceneTerminal[]
  readonly partners: readonly ScenePartner[]
  readonly jumpers: readonly SceneJumper[]
  readonly labels: readonly Label[]
  /** Jumpers whose place is not known. */
  readonly unplaced: readonly string[]
}

export const isOver = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height

/** The room of a straight run, with half of its thickness on each side. */
export function runBox(a: Point, b: Point, half: number): Box {
  const [x, y] = [Math.min(a.x, b.x) - half, Math.min(a.y, b.y) - half]
  return {
    x,
    y,
    width: Math.abs(a.x - b.x) + 2 * half,
    height: Math.abs(a.y - b.y) + 2 * half,
  }
}

export const runsOf = (points: readonly Point[], half: number): readonly Box[] =>
  points.slice(1).flatMap((to, index) => {
    const from = points[index]
    return from ? [runBox(from, to, half)] : []
  })
