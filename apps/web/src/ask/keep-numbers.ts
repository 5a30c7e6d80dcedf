import type { JobSheet, SheetPanel, SheetWire } from '@tubwright/core'

const wiresIn = (sheet: JobSheet): readonly SheetWire[] => sheet.wires.flatMap(each => each.wires)

/** From the number a wire would have to the one it keeps; new wires come after all others. */
function numbersOf(sheet: JobSheet, planned: JobSheet): ReadonlyMap<number, number> {
  const known = new Map(wiresIn(planned).map(({ id, number }) => [id, number] as const))
  let next = Math.max(0, ...known.values())
  return new Map(
    wiresIn(sheet).map(({ id, number }) => {
      const kept = known.get(id)
      if (kept === undefined) next++
      return [number, kept ?? next] as const
    }),
  )
}

function panelWith(panel: SheetPanel, kept: (number: number) => number): SheetPanel {
  return {
    ...panel,
    terminals: panel.terminals.map(each => ({ ...each, wires: each.wires.map(kept) })),
    partners: panel.partners.map(each => ({
      ...each,
      pins: each.pins.map(pin => ({ ...pin, wire: kept(pin.wire) })),
    })),
  }
}

/**
 * The wires and boards of a sheet with the numbers that the wires have in the plan.
 *
 * A sheet numbers loads in the order of their places, and an end that sits elsewhere may change its
 * load's place; but by then the wires carry labels, and no label may come to mean another wire.
 */
export function keepNumbers(sheet: JobSheet, planned: JobSheet): JobSheet {
  const numbers = numbersOf(sheet, planned)
  const kept = (number: number): number => numbers.get(number) ?? number
  const groups = sheet.wires.map(group => ({
    ...group,
    wires: group.wires.map(wire => ({ ...wire, number: kept(wire.number) })),
  }))
  const first = ({ wires: [wire] }: (typeof groups)[number]): number => wire?.number ?? 0
  return {
    ...sheet,
    wires: groups.sort((a, b) => first(a) - first(b)),
    panels: sheet.panels.map(panel => panelWith(panel, kept)),
  }
}
