import { jobOf, planAndProve } from '@tubwright/core'
import { tellFinding } from '@tubwright/words'
import { expect, test } from 'vitest'
import { boxNamed, devices, tubNamed, tubText } from '../../../../bench/demo.ts'
import { openApp } from '../support/app.ts'

/** What the least bad landing of a box breaks, in the words of the command line. */
function breaksOf(tub: string, box: string): readonly string[] {
  const planned = planAndProve(jobOf(tubNamed(tub), boxNamed(box), devices))
  if (planned.ok || planned.failure.reason !== 'no-plan') throw new Error('something else')
  const { closest } = planned.failure
  const findings = (closest?.findings ?? []).filter(each => each.verdict === 'breaks')
  return [...new Set(findings.map(each => tellFinding(each)))]
}

test('a box on which every landing breaks something says what the least bad one breaks', async () => {
  const { page } = await openApp({ language: 'en' })
  await page.getByRole('button', { name: 'Demo shop' }).click()
  await page.getByText('Begin with a tub of the demo').waitFor()
  const survey = {
    name: 'tub.yaml',
    mimeType: 'text/yaml',
    buffer: Buffer.from(tubText('turnable-120')),
  }
  await page.locator('input[type=file]').setInputFiles(survey)
  await page.waitForURL(/#\/job\/.*survey/u)
  await page.getByRole('link', { name: 'Match' }).click()
  await page.locator('[data-box="tern-2"][data-verdict^="serves"]').waitFor({ timeout: 60_000 })
  const told = await page.locator('[data-box="heron-4"] li').allTextContents()
  const breaks = breaksOf('turnable-120', 'heron-4')
  expect(breaks.length).toBeGreaterThan(0)
  expect(told).toEqual(expect.arrayContaining([...breaks]))
})
