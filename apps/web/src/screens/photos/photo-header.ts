/** What the beginning of a photo says of it, read before anything is decoded. */
export interface PhotoHeader {
  readonly type: 'image/jpeg' | 'image/png' | 'image/webp' | 'image/avif' | 'image/heic'
  /** As stored: a photo that is to be turned is not turned yet. */
  readonly width: number
  readonly height: number
  /** Whether width and height change places when it is turned right; undefined where it is not said here. */
  readonly isOnItsSide?: boolean
}

/** Why a file is no photo that can be taken. */
export type HeaderFault = 'kind' | 'drawing' | 'broken' | 'lies'

type Read = PhotoHeader | HeaderFault

class Bytes {
  readonly #view: DataView
  readonly length: number

  constructor(bytes: Uint8Array) {
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
    this.length = bytes.byteLength
  }

  /** A number of some bytes, the high one first unless said otherwise; NaN past the end. */
  number(at: number, count: 1 | 2 | 3 | 4, isLittle = false): number {
    if (at < 0 || at + count > this.length) return Number.NaN
    let sum = 0
    for (let index = 0; index < count; index++) {
      const place = isLittle ? count - 1 - index : index
      sum = sum * 256 + this.#view.getUint8(at + place)
    }
    return sum
  }

  text(at: number, count: number): string {
    let text = ''
    for (let index = at; index < Math.min(at + count, this.length); index++)
      text += String.fromCharCode(this.#view.getUint8(index))
    return text
  }
}

interface Size {
  readonly width: number
  readonly height: number
}

/** What is wrong with a size: past the end of the file nothing is said, and no photo has no width. */
function faultIn({ width, height }: Size): HeaderFault | undefined {
  if (Number.isNaN(width) || Number.isNaN(height)) return 'broken'
  return width > 0 && height > 0 ? undefined : 'lies'
}

/* JPEG: segments, each with its length, up to the picture itself. */

const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)

const STANDS_ALONE = new Set([0x01, 0xd0, 0xd1, 0xd2, 0xd3, 0xd4, 0xd5, 0xd6, 0xd7, 0xd8])
const SCAN = 0xda
const EXIF = 0xe1
const ORIENTATION = 0x0112

/** Orientation by the tag in the first directory of the metadata; 1 where there is none. */
function orientationIn(bytes: Bytes, at: number): number {
  if (bytes.text(at, 6) !== 'Exif\0\0') return 1
  const start = at + 6
  const isLittle = bytes.text(start, 2) === 'II'
  const directory = start + bytes.number(start + 4, 4, isLittle)
  const count = bytes.number(directory, 2, isLittle)
  for (let index = 0; index < Math.min(count, 500); index++) {
    const entry = directory + 2 + index * 12
    if (bytes.number(entry, 2, isLittle) === ORIENTATION)
      return bytes.number(entry + 8, 2, isLittle)
  }
  return 1
}

function readJpeg(bytes: Bytes): Read {
  let at = 2
  let orientation = 1
  while (at < bytes.length) {
    if (bytes.number(at, 1) !== 0xff) return 'broken'
    const marker = bytes.number(at + 1, 1)
    if (marker === 0xff) {
      at++
      continue
    }
    if (STANDS_ALONE.has(marker)) {
      at += 2
      continue
    }
    const length = bytes.number(at + 2, 2)
    if (isFrame(marker)) return frameOf(bytes, at, orientation)
    if (!(length >= 2) || marker === SCAN) return 'broken'
    if (marker === EXIF && orientation === 1) orientation = orientationIn(bytes, at + 4)
    at += 2 + length
  }
  return 'broken'
}

function frameOf(bytes: Bytes, at: number, orientation: number): Read {
  const size = { height: bytes.number(at + 5, 2), width: bytes.number(at + 7, 2) }
  const isOnItsSide = orientation >= 5 && orientation <= 8
  // No height: it would come behind the picture, where nobody can ask it before decoding.
  return faultIn(size) ?? { type: 'image/jpeg', ...size, isOnItsSide }
}

/* PNG: the first chunk says the size. */

function readPng(bytes: Bytes): Read {
  const size = { width: bytes.number(16, 4), height: bytes.number(20, 4) }
  if (bytes.number(8, 4) !== 13 || bytes.text(12, 4) !== 'IHDR') return 'broken'
  return faultIn(size) ?? { type: 'image/png', ...size }
}

/* WebP: the canvas may be said, and the picture in it says its own size. */

function lossySize(bytes: Bytes, at: number): Size {
  const isKey = bytes.text(at + 3, 3) === '\x9d\x01\x2a'
  const side = (offset: number) => (isKey ? bytes.number(at + offset, 2, true) & 0x3fff : 0)
  return { width: side(6), height: side(8) }
}

function losslessSize(bytes: Bytes, at: number): Size {
  if (bytes.number(at, 1) !== 0x2f) return { width: 0, height: 0 }
  const packed = bytes.number(at + 1, 4, true)
  return { width: (packed & 0x3fff) + 1, height: (Math.floor(packed / 0x4000) & 0x3fff) + 1 }
}

const canvasSize = (bytes: Bytes, at: number): Size => ({
  width: bytes.number(at + 4, 3, true) + 1,
  height: bytes.number(at + 7, 3, true) + 1,
})

const isSameSize = (a: Size, b: Size): boolean => a.width === b.width && a.height === b.height

function readWebp(bytes: Bytes): Read {
  let canvas: Size | undefined
  for (let at = 12; at + 8 <= bytes.length; ) {
    const name = bytes.text(at, 4)
    const length = bytes.number(at + 4, 4, true)
    const own =
      name === 'VP8 '
        ? lossySize(bytes, at + 8)
        : name === 'VP8L'
          ? losslessSize(bytes, at + 8)
          : undefined
    if (name === 'VP8X') canvas = canvasSize(bytes, at + 8)
    if (own) {
      if (faultIn(own)) return 'broken'
      return canvas && !isSameSize(canvas, own) ? 'lies' : { type: 'image/webp', ...own }
    }
    if (name === 'ANMF' && canvas) return { type: 'image/webp', ...canvas }
    at += 8 + length + (length % 2)
  }
  return 'broken'
}

/* AVIF and HEIC: boxes in boxes; the largest size of any item is that of the whole picture. */

/** Content of each box of a name on the way down, such as meta / iprp / ipco / ispe. */
function boxesAt(
  bytes: Bytes,
  [name, ...rest]: readonly string[],
  from: number,
  to: number,
): readonly number[] {
  const found: number[] = []
  for (let at = from; at + 8 <= to; ) {
    const length = bytes.number(at, 4)
    const end = length === 0 ? to : at + length
    if (length === 1 || end <= at || end > to) break
    if (bytes.text(at + 4, 4) === name) {
      const inside = at + 8 + (name === 'meta' ? 4 : 0)
      found.push(...(rest.length === 0 ? [inside] : boxesAt(bytes, rest, inside, end)))
    }
    at = end
  }
  return found
}

const BRANDS: readonly (readonly [RegExp, PhotoHeader['type']])[] = [
  [/avif|avis/u, 'image/avif'],
  [/heic|heix|heim|heis|hevc|hevx|mif1|msf1/u, 'image/heic'],
]

function readBoxes(bytes: Bytes): Read {
  const brands = bytes.text(8, Math.min(bytes.number(0, 4), 256) - 8)
  const type = BRANDS.find(([brand]) => brand.test(brands))?.[1]
  if (!type) return 'kind'
  const sizes = boxesAt(bytes, ['meta', 'iprp', 'ipco', 'ispe'], 0, bytes.length).map(
    (at): Size => ({ width: bytes.number(at + 4, 4), height: bytes.number(at + 8, 4) }),
  )
  const area = ({ width, height }: Size) => width * height
  const [largest] = sizes.toSorted((a, b) => area(b) - area(a))
  if (!largest) return 'broken'
  return faultIn(largest) ?? { type, ...largest }
}

const PNG = '\x89PNG\r\n\x1a\n'

/** What the first bytes of a file say that it is: names and types of files are not asked. */
export function readHeader(file: Uint8Array): Read {
  const bytes = new Bytes(file)
  if (bytes.number(0, 3) === 0xffd8ff) return readJpeg(bytes)
  if (bytes.text(0, 8) === PNG) return readPng(bytes)
  if (bytes.text(0, 4) === 'RIFF' && bytes.text(8, 4) === 'WEBP') return readWebp(bytes)
  if (bytes.text(4, 4) === 'ftyp') return readBoxes(bytes)
  return /<svg[\s>]/iu.test(bytes.text(0, 4096)) ? 'drawing' : 'kind'
}
