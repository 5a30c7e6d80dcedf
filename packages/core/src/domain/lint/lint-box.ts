import type { ControlBox } from '../box/control-box.ts'
import type { LintFinding } from './finding.ts'
import { lintDeadEnds, lintSpots } from './lint-board.ts'
import { lintConnectors } from './lint-connectors.ts'
import { lintFuses } from './lint-fuses.ts'
import { lintLoads } from './lint-loads.ts'
import { lintSettings } from './lint-settings.ts'
import { lintSolved } from './lint-solved.ts'
import { lintSupplied } from './lint-supplied.ts'
import { lintUses } from './lint-uses.ts'

/** Terminals that the electronics read or talk through: no part of the board leads on from them. */
const readTerminals = ({ sensors, places }: ControlBox): readonly string[] => [
  ...sensors.flatMap(each => each.terminals),
  ...places.flatMap(({ lands }) => lands.data ?? []),
]

/**
 * What looks wrong in a control box whose names are right: the box is put on a bench, fed by each of
 * its feeds with a lamp on every output, and solved in every mode of every profile.
 */
export const lintBox = (box: ControlBox): readonly LintFinding[] => [
  ...lintSpots(box.board),
  ...lintDeadEnds(box.board, readTerminals(box)),
  ...lintConnectors(box),
  ...lintUses(box),
  ...lintFuses(box),
  ...lintSolved(box),
  ...lintSettings(box),
  ...lintLoads(box.supplied, ['supplied']),
  ...lintSupplied(box),
]
