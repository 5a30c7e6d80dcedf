import type { Sheet } from './shrink.ts'

type Canvas2d = OffscreenCanvasRenderingContext2D | CanvasRenderingContext2D

/** On white: what is seen through in a drawing would be black in a JPEG. */
function drawOn(context: Canvas2d): Sheet['draw'] {
  return (bitmap, width, height) => {
    context.fillStyle = '#fff'
    context.fillRect(0, 0, width, height)
    context.imageSmoothingQuality = 'high'
    context.drawImage(bitmap, 0, 0, width, height)
  }
}

function withContext<Context>(context: Context | null): Context {
  if (!context) throw new Error('no canvas can be drawn on')
  return context
}

/** A sheet of a worker. */
export function offscreenSheet(width: number, height: number): Sheet {
  const canvas = new OffscreenCanvas(width, height)
  const context = withContext(canvas.getContext('2d'))
  return {
    draw: drawOn(context),
    toJpeg: quality => canvas.convertToBlob({ type: 'image/jpeg', quality }),
  }
}

/** A sheet of the page, for browsers whose workers cannot draw. */
export function pageSheet(width: number, height: number): Sheet {
  const canvas = document.createElement('canvas')
  canvas.width = width
  canvas.height = height
  const context = withContext(canvas.getContext('2d'))
  return {
    draw: drawOn(context),
    toJpeg: quality =>
      new Promise((resolve, reject) => {
        const done = (blob: Blob | null) =>
          blob ? resolve(blob) : reject(new Error('no picture could be written'))
        canvas.toBlob(done, 'image/jpeg', quality)
      }),
  }
}
