import type { Printed } from '../printed.ts'

/** One figure of section 68 or of the rules beside it. */
export interface CeTubFigure extends Printed {
  readonly unit: 'm'
  readonly value: number
}

const metres = (
  clause: string,
  edition: string,
  read: Printed['read'],
  value: number,
): CeTubFigure => ({ standard: 'CE Code', edition, clause, read, unit: 'm', value })

/**
 * Distances of a tub, from its water or its inside wall.
 *
 * What was not found is absent: the folder's README lists it.
 *
 * @source [CEC-68] section 68; [CEC-28-604] disconnecting means
 */
export const CE_SECTION_68 = {
  /** Electrical and metal parts that the section is for. */
  scopeWithin: metres('rule 68-000', '2021', 'page', 3),
  /** Unless part of the unit as made, or behind a barrier. */
  groundFaultDeviceLeast: metres('rule 68-068', '2021', 'page', 3),
  /** Of a bathtub that is emptied after each use: not of a tub. */
  bathtubGroundFaultDeviceLeast: metres('rule 68-068', '2021', 'page', 1.5),
  /** Nearer, lights need a class A device. */
  luminaireGroundFaultWithin: metres('rule 68-066', '2015', 'page', 3),
  receptacleLeast: metres('rule 68-064', '2021', 'memory', 1.5),
  /** From `receptacleLeast` on to here a class A device protects it. */
  receptacleGroundFaultWithin: metres('rule 68-064', '2021', 'memory', 3),
  /** Controls, horizontally, unless part of the unit or behind a barrier. */
  controlsLeast: metres('rule 68-404', '2002', 'page', 1),
  /** And within sight; farther only if it can be locked open. */
  disconnectMost: metres('rule 28-604', '2002', 'page', 9),
} as const satisfies Readonly<Record<string, CeTubFigure>>

/** Class of the ground-fault device of a tub: trips at 6 mA. @source [CEC-68] rule 68-068 */
export const CE_TUB_GROUND_FAULT_CLASS = 'A'

/** Whether users need an emergency switch; at a dwelling unit they do not. @source [CEC-68] rule 68-404 4) */
export const ceEmergencySwitchNeeded = (place: 'dwelling unit' | 'other'): boolean =>
  place === 'other'

/**
 * What the code asks for bonding at a factory-built, self-contained tub.
 *
 * The edition of 2024 asks for it in rule 68-402; one province reads the rule as not meant for such
 * tubs above ground with a shell that does not conduct, others enforce it. Ask the inspector.
 *
 * @source [CEC-68] rule 68-402
 */
export const ceSiteBonding = (edition: '2021' | '2024'): 'ask the inspector' | 'not found' =>
  edition === '2024' ? 'ask the inspector' : 'not found'
