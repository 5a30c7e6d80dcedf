import './no-eval.ts'
import { ANSWERS, newDesk, Refused } from './answer.ts'
import type { Question, Questions, Reply, Request } from './protocol.ts'

const desk = newDesk()
const scope = self as unknown as {
  onmessage: (event: MessageEvent<Request>) => void
  postMessage: (reply: Reply) => void
}

async function answer<Asked extends Question>({
  id,
  question,
  asks,
}: Request<Asked>): Promise<void> {
  try {
    const given = ANSWERS[question] as (
      ...args: [typeof desk, Questions[Asked]['asks'], (detail: string) => void]
    ) => unknown
    const answers = await given(desk, asks, detail =>
      scope.postMessage({ id, kind: 'progress', detail }),
    )
    scope.postMessage({ id, kind: 'answer', answers })
  } catch (error) {
    const refusal =
      error instanceof Refused
        ? error.refusal
        : {
            reason: 'fault' as const,
            detail: error instanceof Error ? error.message : String(error),
          }
    scope.postMessage({ id, kind: 'refusal', refusal })
  }
}

/** One after the other, in the order in which they were asked. */
let last = Promise.resolve()
scope.onmessage = ({ data }) => {
  last = last.then(() => answer(data))
}
