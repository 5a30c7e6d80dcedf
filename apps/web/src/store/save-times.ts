const KEPT = 500

/** How long the last saves took, from the tap to the disk [ms]. */
const times: number[] = []

export function noteSave(milliseconds: number): void {
  times.push(milliseconds)
  if (times.length > KEPT) times.shift()
}

/** The value below which 95 of 100 saves lie [ms]; undefined before the first. */
export function saveTime95(): number | undefined {
  if (times.length === 0) return undefined
  const sorted = [...times].sort((a, b) => a - b)
  return sorted[Math.ceil(sorted.length * 0.95) - 1]
}
