/** The part of a browser's storage that the guard needs. */
export type Memory = Pick<Storage, 'getItem' | 'setItem'>

const KEY = 'tubwright-left-versions'

function leftIn(memory: Memory): readonly string[] {
  const read: unknown = JSON.parse(memory.getItem(KEY) ?? '[]')
  return Array.isArray(read) ? read.filter(each => typeof each === 'string') : []
}

/**
 * True when this version was left by a reload and is here again: then the host sends versions back
 * and forth, and one more reload would not be the last. Without a memory there is no telling.
 */
export function wasLeft(memory: Memory | undefined, version: string): boolean {
  try {
    return memory === undefined || leftIn(memory).includes(version)
  } catch {
    return true
  }
}

/** Remembers, for as long as the tab is open, that a version was left. */
export function leave(memory: Memory | undefined, version: string): void {
  try {
    memory?.setItem(KEY, JSON.stringify([...leftIn(memory), version]))
  } catch {
    // A full or forbidden store: the next start then finds no memory and stays where it is.
  }
}
