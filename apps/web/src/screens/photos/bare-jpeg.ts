const SCAN = 0xda

/** Segments that say something besides the picture: of applications, but for the plain head; comments. */
const isBeside = (marker: number): boolean => (marker > 0xe0 && marker <= 0xef) || marker === 0xfe

/**
 * The parts of a JPEG that make its picture. A browser that writes one adds a profile or metadata of
 * its own: nothing of that is kept.
 */
export function bareJpeg(jpeg: Uint8Array<ArrayBuffer>): readonly Uint8Array<ArrayBuffer>[] {
  const parts = [jpeg.subarray(0, 2)]
  let at = 2
  while (at + 4 <= jpeg.length && jpeg[at] === 0xff && jpeg[at + 1] !== SCAN) {
    const end = at + 2 + (jpeg[at + 2] ?? 0) * 256 + (jpeg[at + 3] ?? 0)
    if (!isBeside(jpeg[at + 1] ?? 0)) parts.push(jpeg.subarray(at, end))
    at = end
  }
  return [...parts, jpeg.subarray(at)]
}
