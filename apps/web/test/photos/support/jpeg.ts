/** A segment of a JPEG: its marker, and what it holds. */
export interface Segment {
  readonly marker: number
  readonly content: Buffer
}

/** Every segment before the picture itself. */
export function segmentsOf(jpeg: Buffer): readonly Segment[] {
  const found: Segment[] = []
  for (let at = 2; at + 4 <= jpeg.length && jpeg[at] === 0xff; ) {
    const marker = jpeg[at + 1] ?? 0
    if (marker === 0xda) return found
    const length = jpeg.readUInt16BE(at + 2)
    found.push({ marker, content: jpeg.subarray(at + 4, at + 2 + length) })
    at += 2 + length
  }
  return found
}

const ASCII = 2
const SHORT = 3
const LONG = 4
const RATIONAL = 5

/** One entry of a directory of metadata, its value or where that is. */
function entry(tag: number, type: number, count: number, value: number): Buffer {
  const bytes = Buffer.alloc(12)
  bytes.writeUInt16BE(tag, 0)
  bytes.writeUInt16BE(type, 2)
  bytes.writeUInt32BE(count, 4)
  if (type === SHORT) bytes.writeUInt16BE(value, 8)
  else bytes.writeUInt32BE(value, 8)
  return bytes
}

function directory(...entries: readonly Buffer[]): Buffer {
  const count = Buffer.alloc(2)
  count.writeUInt16BE(entries.length)
  return Buffer.concat([count, ...entries, Buffer.alloc(4)])
}

const letters = (text: string): number => Buffer.from(`${text}\0\0\0`.slice(0, 4)).readUInt32BE()

function degrees(...values: readonly number[]): Buffer {
  const bytes = Buffer.alloc(24)
  values.forEach((value, index) => {
    bytes.writeUInt32BE(value, index * 8)
    bytes.writeUInt32BE(1, index * 8 + 4)
  })
  return bytes
}

export const MAKE = 'NOSUCHCAMERA'

/** Metadata as a camera writes it: how the photo is to be turned, and where it was taken. */
export function exif(orientation: number): Buffer {
  const head = Buffer.from('MM\0\x2a\0\0\0\x08', 'latin1')
  const first = head.length
  const gps = first + 2 + 3 * 12 + 4
  const latitude = gps + 2 + 4 * 12 + 4
  const make = latitude + 48
  const body = Buffer.concat([
    head,
    directory(
      entry(0x010f, ASCII, MAKE.length + 1, make),
      entry(0x0112, SHORT, 1, orientation),
      entry(0x8825, LONG, 1, gps),
    ),
    directory(
      entry(1, ASCII, 2, letters('N')),
      entry(2, RATIONAL, 3, latitude),
      entry(3, ASCII, 2, letters('E')),
      entry(4, RATIONAL, 3, latitude + 24),
    ),
    degrees(59, 20, 11),
    degrees(18, 3, 55),
    Buffer.from(`${MAKE}\0`),
  ])
  const content = Buffer.concat([Buffer.from('Exif\0\0'), body])
  const marker = Buffer.alloc(4)
  marker.writeUInt16BE(0xffe1)
  marker.writeUInt16BE(content.length + 2, 2)
  return Buffer.concat([marker, content])
}

/** A JPEG with metadata put in before everything else. */
export const withExif = (jpeg: Buffer, orientation: number): Buffer =>
  Buffer.concat([jpeg.subarray(0, 2), exif(orientation), jpeg.subarray(2)])

/** The least that reads as a JPEG of a size, without a picture. */
export function headOnly(width: number, height: number, orientation?: number): Buffer {
  const frame = Buffer.from('ffc00011080000000003012200021101031101', 'hex')
  frame.writeUInt16BE(height, 5)
  frame.writeUInt16BE(width, 7)
  const app0 = Buffer.from('ffe000104a46494600010100000100010000', 'hex')
  const turned = orientation === undefined ? Buffer.alloc(0) : exif(orientation)
  return Buffer.concat([Buffer.from('ffd8', 'hex'), app0, turned, frame])
}
