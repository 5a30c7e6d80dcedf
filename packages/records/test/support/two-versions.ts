import type { Act, Migration, Path, Reader } from '@tubwright/records'
import { READER, readerOf } from '@tubwright/records'

/**
 * A step that nobody released, so that two versions can meet: the room for the box is called `room`
 * instead of `bay`, and a length that was in centimetres is in millimetres.
 */
const RENAMED: Path = ['survey', 'bay']
const LENGTH: Path = ['survey', 'feeder', 'length']

const isAt = (path: Path, place: Path): boolean =>
  place.every((step, index) => path[index] === step) && path.length >= place.length

const moved = (path: Path): Path =>
  isAt(path, RENAMED) ? ['survey', 'room', ...path.slice(RENAMED.length)] : path

function upcast(act: Act): Act {
  if (act.do === 'settle') return act
  const path = moved(act.path)
  if (act.do !== 'set' || !isAt(path, LENGTH) || typeof act.value !== 'number')
    return { ...act, path }
  return { ...act, path, value: act.value * 10 }
}

export const NEXT: Migration = { from: READER.level, to: READER.level + 1, upcast }

/** The version before, and the one after. */
export const OLD: Reader = READER
export const NEW: Reader = readerOf([...READER.migrations, NEXT])
