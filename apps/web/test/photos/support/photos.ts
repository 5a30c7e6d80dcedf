import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { onTestFinished } from 'vitest'

/** A JPEG of a size with something to see in each corner, made by the browser. */
export async function jpegOf(
  page: Page,
  width: number,
  height: number,
  { quality = 0.9, noise = false }: { readonly quality?: number; readonly noise?: boolean } = {},
): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([across, down, how, isNoisy]) => {
      const canvas = new OffscreenCanvas(across, down)
      const context = canvas.getContext('2d')
      if (!context) throw new Error('no canvas')
      if (isNoisy) {
        const tile = new OffscreenCanvas(512, 512)
        const inside = tile.getContext('2d')
        if (!inside) throw new Error('no canvas')
        const pixels = inside.createImageData(512, 512)
        let seed = 7
        for (let at = 0; at < pixels.data.length; at++) {
          seed = (seed * 1103515245 + 12345) % 2147483648
          pixels.data[at] = at % 4 === 3 ? 255 : 96 + ((seed >> 16) % 96)
        }
        inside.putImageData(pixels, 0, 0)
        context.fillStyle = context.createPattern(tile, 'repeat') ?? '#888'
      } else context.fillStyle = '#888'
      context.fillRect(0, 0, across, down)
      const side = Math.round(Math.min(across, down) / 3)
      context.fillStyle = '#f00'
      context.fillRect(0, 0, side, side)
      context.fillStyle = '#0a0'
      context.fillRect(across - side, 0, side, side)
      context.fillStyle = '#00f'
      context.fillRect(0, down - side, side, side)
      const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: how })
      const bytes = new Uint8Array(await blob.arrayBuffer())
      let binary = ''
      for (let at = 0; at < bytes.length; at += 0x8000)
        binary += String.fromCharCode(...bytes.subarray(at, at + 0x8000))
      return btoa(binary)
    },
    [width, height, quality, noise] as const,
  )
  return Buffer.from(base64, 'base64')
}

/** A photo as the disk has it. */
export interface Kept {
  readonly hash: string
  readonly type: string
  readonly width: number
  readonly height: number
  readonly bytes: string
  readonly original?: string
}

/** Every photo on the disk, its bytes as base64. */
export const keptOf = (page: Page): Promise<readonly Kept[]> =>
  page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('tubwright-own')
      opening.onerror = () => reject(opening.error)
      opening.onsuccess = () => resolve(opening.result)
    })
    const rows = await new Promise<
      (Omit<Kept, 'bytes' | 'original'> & { bytes: Blob; original?: Blob })[]
    >((resolve, reject) => {
      const all = database.transaction('photos').objectStore('photos').getAll()
      all.onerror = () => reject(all.error)
      all.onsuccess = () => resolve(all.result)
    })
    database.close()
    const base64 = async (blob: Blob): Promise<string> => {
      const bytes = new Uint8Array(await blob.arrayBuffer())
      let binary = ''
      for (let at = 0; at < bytes.length; at += 0x8000)
        binary += String.fromCharCode(...bytes.subarray(at, at + 0x8000))
      return btoa(binary)
    }
    return Promise.all(
      rows.map(async ({ bytes, original, ...row }) => ({
        ...row,
        bytes: await base64(bytes),
        ...(original ? { original: await base64(original) } : {}),
      })),
    )
  })

/** What colours the corners of a photo have: upper left, upper right, lower left, lower right. */
export const cornersOf = (page: Page, bytes: string): Promise<readonly string[]> =>
  page.evaluate(async base64 => {
    const binary = atob(base64)
    const blob = new Blob([Uint8Array.from(binary, each => each.charCodeAt(0))])
    const bitmap = await createImageBitmap(blob, { imageOrientation: 'none' })
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
    const context = canvas.getContext('2d')
    if (!context) throw new Error('no canvas')
    context.drawImage(bitmap, 0, 0)
    const name = (x: number, y: number): string => {
      const [red = 0, green = 0, blue = 0] = context.getImageData(x, y, 1, 1).data
      if (red > 180 && green < 90) return 'red'
      if (green > 120 && red < 90) return 'green'
      return blue > 180 && red < 90 ? 'blue' : 'grey'
    }
    const [right, low] = [bitmap.width - 20, bitmap.height - 20]
    return [name(20, 20), name(right, 20), name(20, low), name(right, low)]
  }, bytes)

/** A new job, at its photos. */
export async function openPhotos(page: Page): Promise<void> {
  await page.locator('button.main').first().click()
  await page.waitForURL(/survey/u)
  await page.evaluate(() => {
    location.hash = `${location.hash}/photos`
  })
  await page.locator('[data-slot]').first().waitFor()
}

/** Writes photos where a browser finds them: sent through the driver, large ones take long. */
export function onDisk(...photos: readonly Buffer[]): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), 'tubwright-photos-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return photos.map((bytes, index) => {
    const path = join(folder, `IMG_${index}.JPG`)
    writeFileSync(path, bytes)
    return path
  })
}

/** Gives a slot a photo, as a camera does. */
export async function take(
  page: Page,
  of: string,
  photo: Buffer,
  source: 'camera' | 'file' = 'camera',
): Promise<void> {
  const button = page.locator(`[data-slot="${of}"] button`).nth(source === 'camera' ? 0 : 1)
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button.click()])
  await chooser.setFiles([...onDisk(photo)])
}
