import { open } from '../test/support/open.ts'
import { measureAnswers, measureGestures } from '../test/wiring/wiring-speed.ts'
import type { Bench, Line } from './line.ts'
import { atMost, median } from './line.ts'

type Opened = Awaited<ReturnType<typeof open>>

async function onPhone<Found>(
  { bundle }: Bench,
  look: (app: Opened) => Promise<Found>,
): Promise<Found> {
  const app = await open({ bundle, device: 'phone', language: 'en' })
  try {
    return await look(app)
  } finally {
    await app.close()
  }
}

export const wiringLines: readonly Line[] = [
  {
    name: '500 conductors panned and pinched, 4× slower: frame, 95 %',
    unit: 'ms',
    // Two beats of a screen that shows sixty a second take 33.4.
    goal: atMost(33.5),
    measure: bench =>
      onPhone(bench, async ({ page, context }) =>
        median((await measureGestures(page, context)).moved),
      ),
  },
  {
    name: 'an end moved, to its verdict, largest demo tub',
    unit: 'ms',
    goal: atMost(100),
    measure: bench =>
      onPhone(bench, async ({ page }) => median((await measureAnswers(page)).verdicts)),
  },
  {
    name: 'a mode chosen, to its figures on the wires',
    unit: 'ms',
    goal: atMost(50),
    measure: bench =>
      onPhone(bench, async ({ page }) => median((await measureAnswers(page)).modes)),
  },
]
