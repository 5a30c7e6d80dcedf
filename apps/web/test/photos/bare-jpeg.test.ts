import { expect, it } from 'vitest'
import { bareJpeg } from '../../src/screens/photos/bare-jpeg.ts'
import { exif, headOnly, MAKE, segmentsOf } from './support/jpeg.ts'

const comment = Buffer.from('fffe0006686579', 'hex')
const scan = Buffer.from('ffda0004112233ffe10099ffd9', 'hex')

it('keeps the picture of a JPEG, and nothing that is said beside it', () => {
  const head = headOnly(64, 48, 6)
  const whole = Buffer.concat([head, exif(3), comment, Buffer.from('!'), scan])
  const bare = Buffer.concat([...bareJpeg(new Uint8Array(whole))])
  expect(bare.includes(MAKE)).toBe(false)
  expect(segmentsOf(bare).map(each => each.marker)).toEqual([0xe0, 0xc0])
  // What looks like a segment inside the picture is the picture.
  expect(bare.subarray(-scan.length).equals(scan)).toBe(true)
  expect(Buffer.concat([headOnly(64, 48), scan]).equals(bare)).toBe(true)
})

it('leaves what it cannot follow as it is', () => {
  for (const bytes of [[], [0xff], [0xff, 0xd8], [0xff, 0xd8, 0xff, 0xe0, 0xff, 0xff]])
    expect(Buffer.concat([...bareJpeg(new Uint8Array(bytes))])).toEqual(Buffer.from(bytes))
})
