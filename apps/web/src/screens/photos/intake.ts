import { ownScript } from '../../offline/index.ts'
import { pageSheet } from './sheets.ts'
import type { Intake } from './shrink.ts'
import { shrink } from './shrink.ts'
import workerUrl from './shrink-worker.ts?worker&url'

function inWorker(file: Blob): Promise<Intake> {
  const worker = new Worker(ownScript(workerUrl) as unknown as string, { type: 'module' })
  const done = new Promise<Intake>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<Intake>) => resolve(data)
    worker.onerror = event => reject(new Error(event.message))
  })
  worker.postMessage(file)
  return done.finally(() => worker.terminate())
}

const faultOf = (error: unknown): Intake => ({
  ok: false,
  refused: { why: 'fault', size: error instanceof Error ? error.message : String(error) },
})

/** Whether a worker can draw here: one that cannot leaves the work to the page. */
const canDrawApart = (): boolean => typeof OffscreenCanvas === 'function'

/** Takes one photo in, apart from the page; how long it took is measured under `photo-intake`. */
export async function takeIn(file: Blob): Promise<Intake> {
  const start = performance.now()
  const work = canDrawApart() ? inWorker(file) : shrink(file, pageSheet)
  const intake = await work.catch(faultOf)
  performance.measure('photo-intake', { start, end: performance.now() })
  return intake
}
