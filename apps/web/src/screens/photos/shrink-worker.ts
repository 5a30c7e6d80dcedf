import { offscreenSheet } from './sheets.ts'
import type { Intake } from './shrink.ts'
import { shrink } from './shrink.ts'

const scope = self as unknown as {
  onmessage: (event: MessageEvent<Blob>) => void
  postMessage: (intake: Intake) => void
}

const faultOf = (error: unknown): Intake => ({
  ok: false,
  refused: { why: 'fault', size: error instanceof Error ? error.message : String(error) },
})

/** One photo for each worker: it ends with it, and so does all that the decoding took. */
scope.onmessage = ({ data }) => {
  void shrink(data, offscreenSheet)
    .catch(faultOf)
    .then(intake => scope.postMessage(intake))
}
