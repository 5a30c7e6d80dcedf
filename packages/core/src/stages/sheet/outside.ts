import type { Load } from '../../domain/load/load.ts'
import { isMotor } from '../../domain/load/load.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'

/**
 * What to do when the amps of a load lie outside their band, with what the trade suspects first.
 * Causes: common practice, no source.
 */
export const loadsOutside = (tried: readonly Load[]): readonly SheetText[] => [
  text('outside.case'),
  ...(tried.some(isMotor)
    ? [text('outside.motor-high'), text('outside.motor-low'), text('outside.motor-none')]
    : []),
  ...(tried.some(each => each.kind === 'heater') ? [text('outside.heater')] : []),
  text('outside.worst'),
]
