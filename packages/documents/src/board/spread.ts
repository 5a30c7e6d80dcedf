/**
 * Places things along a line as near to where they want to be as their gaps allow, in their order.
 *
 * Least squares by pooling neighbours that collide.
 *
 * @param wanted - ascending or not: the order of the list is kept
 * @param gaps - least distance from each thing to the next; one fewer than things
 */
export function spread(
  wanted: readonly number[],
  gaps: readonly number[],
  [from, to]: readonly [number, number],
): readonly number[] {
  const offsets = [0]
  for (const gap of gaps.slice(0, Math.max(0, wanted.length - 1)))
    offsets.push((offsets.at(-1) ?? 0) + gap)
  const pools: { sum: number; count: number }[] = []
  wanted.forEach((each, index) => {
    pools.push({ sum: each - (offsets[index] ?? 0), count: 1 })
    for (;;) {
      const [a, b] = [pools.at(-2), pools.at(-1)]
      if (!a || !b || a.sum / a.count <= b.sum / b.count) break
      pools.splice(-2, 2, { sum: a.sum + b.sum, count: a.count + b.count })
    }
  })
  const last = to - (offsets.at(-1) ?? 0)
  return pools
    .flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
    .map((each, index) => Math.max(from, Math.min(each, last)) + (offsets[index] ?? 0))
}
