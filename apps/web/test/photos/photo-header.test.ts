import { describe, expect, it } from 'vitest'
import { readHeader } from '../../src/screens/photos/photo-header.ts'
import { headOnly } from './support/jpeg.ts'

const chunk = (name: string, content: Buffer): Buffer => {
  const length = Buffer.alloc(4)
  length.writeUInt32LE(content.length)
  return Buffer.concat([Buffer.from(name), length, content, Buffer.alloc(content.length % 2)])
}

const webp = (...chunks: readonly Buffer[]): Buffer =>
  Buffer.concat([Buffer.from('RIFF\0\0\0\0WEBP'), ...chunks])

function canvas(width: number, height: number): Buffer {
  const content = Buffer.alloc(10)
  content.writeUIntLE(width - 1, 4, 3)
  content.writeUIntLE(height - 1, 7, 3)
  return chunk('VP8X', content)
}

function lossy(width: number, height: number): Buffer {
  const content = Buffer.from('0000009d012a00000000', 'hex')
  content.writeUInt16LE(width, 6)
  content.writeUInt16LE(height, 8)
  return chunk('VP8 ', content)
}

function lossless(width: number, height: number): Buffer {
  const content = Buffer.alloc(5)
  content[0] = 0x2f
  content.writeUInt32LE((((height - 1) << 14) | (width - 1)) >>> 0, 1)
  return chunk('VP8L', content)
}

function png(width: number, height: number, name = 'IHDR'): Buffer {
  const content = Buffer.alloc(21)
  content.writeUInt32BE(13, 0)
  content.write(name, 4)
  content.writeUInt32BE(width, 8)
  content.writeUInt32BE(height, 12)
  return Buffer.concat([Buffer.from('89504e470d0a1a0a', 'hex'), content])
}

const box = (name: string, ...content: readonly Buffer[]): Buffer => {
  const inside = Buffer.concat(content)
  const head = Buffer.alloc(8)
  head.writeUInt32BE(inside.length + 8)
  head.write(name, 4)
  return Buffer.concat([head, inside])
}

function extent(width: number, height: number): Buffer {
  const content = Buffer.alloc(12)
  content.writeUInt32BE(width, 4)
  content.writeUInt32BE(height, 8)
  return box('ispe', content)
}

const boxed = (brand: string, ...sizes: readonly Buffer[]): Buffer =>
  Buffer.concat([
    box('ftyp', Buffer.from(`${brand}\0\0\0\0`)),
    box('meta', Buffer.alloc(4), box('iprp', box('ipco', ...sizes))),
  ])

describe('the beginning of a photo', () => {
  it.each([
    ['JPEG', headOnly(8064, 6048), { type: 'image/jpeg', width: 8064, height: 6048 }],
    ['PNG', png(640, 480), { type: 'image/png', width: 640, height: 480 }],
    ['lossy WebP', webp(lossy(640, 480)), { type: 'image/webp', width: 640, height: 480 }],
    ['lossless WebP', webp(lossless(16_000, 9000)), { width: 16_000, height: 9000 }],
    ['WebP with a canvas', webp(canvas(64, 48), lossy(64, 48)), { width: 64, height: 48 }],
    ['AVIF', boxed('avif', extent(640, 480)), { type: 'image/avif', width: 640, height: 480 }],
    [
      'HEIC of tiles',
      boxed('heic', extent(512, 512), extent(4032, 3024), extent(320, 240)),
      { type: 'image/heic', width: 4032, height: 3024 },
    ],
  ])('says the size: %s', (_, bytes, expected) => {
    expect(readHeader(bytes)).toMatchObject(expected)
  })

  it.each([1, 3, 6, 8])('says how a JPEG is to be turned: orientation %d', orientation => {
    expect(readHeader(headOnly(400, 300, orientation))).toMatchObject({
      width: 400,
      height: 300,
      isOnItsSide: orientation >= 5,
    })
  })

  it.each([
    ['a JPEG without a height', headOnly(8064, 0), 'lies'],
    ['a PNG of no width', png(0, 480), 'lies'],
    ['a WebP whose canvas is another size', webp(canvas(64, 48), lossy(9000, 9000)), 'lies'],
    ['an AVIF of no size', boxed('avif', extent(0, 480)), 'lies'],
    ['a PNG that begins with something else', png(64, 48, 'tEXt'), 'broken'],
    ['a JPEG that ends at once', headOnly(64, 48).subarray(0, 24), 'broken'],
    ['a JPEG with rubbish between its segments', Buffer.from('ffd8ff0011', 'hex'), 'broken'],
    ['an AVIF without sizes', boxed('avif'), 'broken'],
    ['a drawing', Buffer.from('<?xml version="1.0"?>\n<svg xmlns="x"/>'), 'drawing'],
    ['a film', boxed('isom', extent(64, 48)), 'kind'],
    ['a text', Buffer.from('schema: control-box/1'), 'kind'],
    ['nothing', Buffer.alloc(0), 'kind'],
  ] as const)('is refused: %s', (_, bytes, why) => {
    expect(readHeader(bytes)).toBe(why)
  })

  it('ends whatever it is cut to', () => {
    const whole = [
      headOnly(64, 48, 6),
      webp(canvas(9, 9), lossy(9, 9)),
      boxed('avif', extent(9, 9)),
    ]
    for (const bytes of whole)
      for (let length = 0; length < bytes.length; length++)
        expect(() => readHeader(bytes.subarray(0, length))).not.toThrow()
  })
})
