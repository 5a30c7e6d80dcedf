import type { ControlBox } from './control-box.ts'

/** Width and height of an opening [m]. */
type Opening = NonNullable<ControlBox['keypadHole']>

/** Whether a hole stays open around a keypad that covers so much of it. */
export const leavesGap = (hole: Opening, covered: Opening): boolean =>
  hole.width.si > covered.width.si || hole.height.si > covered.height.si
