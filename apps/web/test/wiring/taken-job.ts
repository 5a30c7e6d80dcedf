import { readFileSync } from 'node:fs'
import type { Survey } from '@tubwright/core'
import { jobOf, planAndProve } from '@tubwright/core'
import { readWritten, wireLanding } from '@tubwright/formats'
import type { Act, Json } from '@tubwright/records'
import { actsBetween, JobLog, must, writeJobFile } from '@tubwright/records'
import type { Page } from 'playwright-core'
import { boxNamed, devices, tubNamed } from '../../../../bench/demo.ts'

const text = (tub: string): string =>
  readFileSync(
    new URL(`../../../../packages/catalog/data/tubs/${tub}.yaml`, import.meta.url),
    'utf8',
  )

/** What the best plan of an invented tub on an invented box lands. */
export function planOf(tub: string, box: string) {
  const survey: Survey = tubNamed(tub)
  const planned = planAndProve(jobOf(survey, boxNamed(box), devices))
  if (!planned.ok) throw new Error(`no plan of ${tub} on ${box}`)
  return wireLanding(planned.value.plan.landing)
}

const HAND = { author: 'Somebody', at: '2026-05-01T08:00:00.000Z' }

/** Two people, neither of whom saw what the other found. */
function disagree(log: JobLog): void {
  const found = (at: string): Act => ({
    do: 'set',
    path: ['asBuilt', 'ends', 'run.leg1@box'],
    value: at,
  })
  const other = JobLog.open('further-away', log.entries)
  must(log.append(found('box.A2'), HAND))
  must(other.append(found('loose'), HAND))
  log.merge(other.entries)
}

/**
 * A job with a survey of the demo shop and a plan that was taken, as the file that another device saved.
 *
 * @param isContested - two people found an end on different terminals
 */
export function takenJob(
  tub: string,
  box: string,
  further: readonly Act[] = [],
  isContested = false,
): string {
  const document = readWritten(`${tub}.yaml`, text(tub)).value as Json
  const log = JobLog.empty('elsewhere')
  const taken: Act = {
    do: 'set',
    path: ['plan', 'taken'],
    value: { box, landing: planOf(tub, box) } as unknown as Json,
  }
  const acts = [...actsBetween(undefined, document, ['survey']), taken, ...further]
  must(log.append(acts, HAND))
  if (isContested) disagree(log)
  return writeJobFile({ job: `job-${tub}`, entries: log.entries, photos: [], survey: text(tub) })
}

/** Opens such a job in the demo shop, on its wiring. */
export async function openWiring(page: Page, file: string): Promise<void> {
  await page.getByRole('button', { name: /Demo shop|Tienda de prueba/u }).click()
  await page.getByText(/Demo shop: invented|Tienda de prueba: /u).waitFor()
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(file) })
  await page.waitForURL(/#\/job\/.*survey/u)
  const at = page.url().replace(/\/survey.*$/u, '/wiring')
  await page.goto(at)
  await page.locator('.board-window svg g.wire').first().waitFor()
}
