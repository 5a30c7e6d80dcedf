import type { LadderStep, LadderSymbol } from '@tubwright/core'
import type { Box, Point } from '../board/scene.ts'

/** Text with the room it takes: what a test holds against every line and every other text. */
export interface LadderLabel extends Box {
  readonly kind: 'name' | 'note' | 'number' | 'terminal' | 'rail' | 'rung' | 'says' | 'flag'
  readonly text: string
  readonly size: number
  readonly isBold: boolean
}

/** A straight line that carries: two of them are joined where they share an end, or at a dot. */
export interface LadderLine {
  readonly a: Point
  readonly b: Point
  readonly kind: 'copper' | 'lead' | 'rail' | 'joint'
}

/** A part or wire on its rung: the lines end at its pins. */
export interface LadderSign {
  readonly step: LadderStep
  readonly pins: readonly [Point, Point]
  readonly symbol: LadderSymbol | 'wire' | 'spare'
  /** Room of its sign; a wire is a line and has none. */
  readonly box: Box | undefined
}

/** Marks that carry nothing: a terminal, an open end, an arrow to another rung, a ring, an earth. */
export interface LadderMark extends Point {
  readonly kind: 'terminal' | 'open' | 'arrow-left' | 'arrow-right' | 'ring' | 'earth'
}

/** One part of the ladder before it is ink; millimetres on paper. */
export interface LadderScene {
  readonly width: number
  readonly height: number
  readonly lines: readonly LadderLine[]
  readonly dots: readonly Point[]
  readonly signs: readonly LadderSign[]
  readonly marks: readonly LadderMark[]
  /** Dashed: what moves together, and what watches it. */
  readonly links: readonly { readonly a: Point; readonly b: Point }[]
  readonly labels: readonly LadderLabel[]
}
