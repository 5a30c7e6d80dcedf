import type { JobSheet } from '@tubwright/core'
import { layOutBoard, sheetWords } from '@tubwright/documents'
import { ENGLISH } from '@tubwright/words/en'
import type { Shapes } from '../../src/screens/wiring/shapes.ts'

const NONE = undefined as unknown as Element

/** What the screen reads of a drawing, of the layout that the drawing is made of. */
export function shapesOfPanel(sheet: JobSheet, panel: string): Shapes {
  const drawn = sheet.panels.find(each => each.id === panel)
  if (!drawn) throw new Error(`no panel ${panel}`)
  const wires = sheet.wires.flatMap(each => each.wires)
  const scene = layOutBoard(
    drawn,
    wires,
    sheetWords(ENGLISH, id => id),
  )
  return {
    width: scene.width,
    height: scene.height,
    wires: scene.wires.map(({ number, end = '', points }) => ({
      number,
      end,
      points,
      d: points.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x} ${y}`).join(''),
      element: NONE,
    })),
    terminals: scene.terminals.map(({ id, x, y, radius }) => ({
      name: `${panel}.${id}`,
      x,
      y,
      radius,
      element: NONE,
    })),
    jumpers: scene.jumpers.map(each => ({ ...each, element: NONE })),
    texts: scene.labels,
    partners: scene.partners,
  }
}
