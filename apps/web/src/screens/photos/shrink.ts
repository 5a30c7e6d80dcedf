import { sha256 } from '../../store/sha256.ts'
import { bareJpeg } from './bare-jpeg.ts'
import type { HeaderFault, PhotoHeader } from './photo-header.ts'
import { readHeader } from './photo-header.ts'

const BYTES_MAX = 25e6
const PIXELS_MAX = 50e6
/** What is kept of a photo [bytes]. */
const KEPT_MAX = 400e3
const SIDE_MAX = 2048 // [pixels]
/** From good to what still lets a plate be read. */
const QUALITIES = [0.85, 0.76, 0.68, 0.6] as const
const SMALLER = 0.8 // of the size before, once quality goes no lower
const SIDE_MIN = 320 // [pixels] below this nothing can be read any more

/** A photo as it is kept. */
export interface Shrunk {
  readonly bytes: Blob
  readonly width: number
  readonly height: number
  readonly hash: string
}

/** Why a photo is not taken, with the figure that its sentence wants. */
export interface NotTaken {
  readonly why: HeaderFault | 'bytes' | 'pixels' | 'undecoded' | 'heic' | 'fault'
  readonly size?: string
}

export type Intake =
  | { readonly ok: true; readonly photo: Shrunk }
  | { readonly ok: false; readonly refused: NotTaken }

/** What can be drawn on and written as a JPEG, in a worker and on a page. */
export interface Sheet {
  readonly draw: (bitmap: ImageBitmap, width: number, height: number) => void
  readonly toJpeg: (quality: number) => Promise<Blob>
}
type SheetMaker = (width: number, height: number) => Sheet

const no = (why: NotTaken['why'], size?: string): Intake => ({
  ok: false,
  refused: { why, ...(size === undefined ? {} : { size }) },
})

const millions = (count: number): string => (count / 1e6).toFixed(1)

/** A share of a length, never nothing. */
const scaled = (length: number, by: number): number => Math.max(1, Math.round(length * by))

/** The width to decode to, so that no side of the turned photo is above the greatest. */
function decodedWidth({ width, height, isOnItsSide = false }: PhotoHeader): number {
  const [across, down] = isOnItsSide ? [height, width] : [width, height]
  return scaled(across, Math.min(1, SIDE_MAX / Math.max(across, down)))
}

/** Decodes and turns it right. Browsers that cannot resize while they decode give the whole. */
async function decode(file: Blob, header: PhotoHeader): Promise<ImageBitmap> {
  const imageOrientation = 'from-image'
  try {
    const resizeWidth = decodedWidth(header)
    return await createImageBitmap(file, { imageOrientation, resizeWidth, resizeQuality: 'high' })
  } catch {
    return createImageBitmap(file, { imageOrientation })
  }
}

/** Whether a picture has the shape that its file announced, whichever way it is turned. */
function isAsSaid({ width, height }: ImageBitmap, said: PhotoHeader): boolean {
  const [long, short] = [Math.max(width, height), Math.min(width, height)]
  const expected = (long * Math.min(said.width, said.height)) / Math.max(said.width, said.height)
  // Each side was rounded to whole pixels, and a scaled one twice.
  return Math.abs(short - expected) <= 2 && long <= Math.max(said.width, said.height, SIDE_MAX)
}

async function bare(jpeg: Blob): Promise<Blob> {
  const parts = bareJpeg(new Uint8Array(await jpeg.arrayBuffer()))
  return new Blob([...parts], { type: 'image/jpeg' })
}

/** Less quality first, then less size, until it is small enough. */
async function encode(bitmap: ImageBitmap, make: SheetMaker): Promise<Omit<Shrunk, 'hash'>> {
  let side = Math.min(SIDE_MAX, Math.max(bitmap.width, bitmap.height))
  for (;;) {
    const by = side / Math.max(bitmap.width, bitmap.height)
    const [width, height] = [scaled(bitmap.width, by), scaled(bitmap.height, by)]
    const sheet = make(width, height)
    sheet.draw(bitmap, width, height)
    for (const quality of QUALITIES) {
      const bytes = await bare(await sheet.toJpeg(quality))
      const isLast = side <= SIDE_MIN && quality === QUALITIES.at(-1)
      if (bytes.size <= KEPT_MAX || isLast) return { bytes, width, height }
    }
    side = Math.max(SIDE_MIN, Math.floor(side * SMALLER))
  }
}

const hashOf = async (bytes: Blob): Promise<string> => sha256(await bytes.arrayBuffer())

/**
 * Makes a photo small, turned right and without anything but the picture.
 *
 * What its header says is read first: nothing is decoded that is too large or announces it wrongly.
 * Written anew from its pixels, it has no place, date or camera left in it.
 */
export async function shrink(file: Blob, make: SheetMaker): Promise<Intake> {
  if (file.size > BYTES_MAX) return no('bytes', millions(file.size))
  const header = readHeader(new Uint8Array(await file.arrayBuffer()))
  if (typeof header === 'string') return no(header)
  const pixels = header.width * header.height
  if (pixels > PIXELS_MAX) return no('pixels', millions(pixels))
  let bitmap: ImageBitmap
  try {
    bitmap = await decode(file, header)
  } catch {
    return no(header.type === 'image/heic' ? 'heic' : 'undecoded')
  }
  try {
    if (!isAsSaid(bitmap, header)) return no('lies')
    const kept = await encode(bitmap, make)
    return { ok: true, photo: { ...kept, hash: await hashOf(kept.bytes) } }
  } finally {
    bitmap.close()
  }
}
