import type { Page } from 'playwright-core'
import type { Thumb } from './thumb.ts'

/**
 * Surveys an invented tub of five loads from the list of jobs on, as somebody kneeling at it would:
 * two pumps, circulation pump, ozonator, light, on two legs behind 50 A.
 */
export async function surveyFiveLoads(page: Page, thumb: Thumb): Promise<void> {
  const next = () => thumb.tap('link', 'Next')
  const load = async (kind: string): Promise<void> => {
    await thumb.tap('button', kind)
    await page.getByRole('heading', { name: kind, level: 1 }).waitFor()
  }
  const finish = async (size: string, plug: string, asksEarth = true): Promise<void> => {
    if (asksEarth) await thumb.tap('radio', 'Yes', -1)
    await thumb.tap('radio', size)
    await thumb.tap('radio', /^As usual here/u)
    await thumb.tap('radio', plug)
    await thumb.tap('radio', /^1 .* · 2 /u)
  }
  const another = () => thumb.tap('link', 'Next')

  await thumb.tap('button', 'New job')
  await thumb.tap('link', /^The tub/u)
  await thumb.tap('radio', 'United States')
  await next()
  await thumb.tap('radio', '120/240 V on two legs')
  await thumb.tap('radio', '50 A')
  await next()
  await thumb.tap('radio', /^Two-pole ground-fault breaker/u)
  await thumb.tap('radio', /^leg 1 · leg 2 · neutral · earth/u)
  await thumb.tap('radio', /^Yes: leg 1/u)
  await next()
  await thumb.type('Length from there to the tub', '48')
  await thumb.tap('radio', '6 AWG', 0)
  await thumb.tap('radio', '10 AWG', 1)
  await thumb.tap('radio', /^As usual here/u)
  await next()

  await load('Pump, two speeds')
  await thumb.tap('radio', '240 V')
  await thumb.type('What the plate says', '10/3')
  await thumb.tap('radio', /^Yes, on high speed \+ low speed/u)
  await finish('14 AWG', 'four-way square plug')
  await another()
  await load('Pump, one speed')
  await thumb.tap('radio', '240 V')
  await thumb.type('What the plate says', '9')
  await thumb.tap('radio', 'No', 0)
  await finish('14 AWG', 'three-way square plug')
  await another()
  await load('Circulation pump')
  await thumb.tap('radio', '120 V')
  await thumb.type('What the plate says', '1.2')
  await thumb.tap('radio', 'Yes', 0)
  await finish('16 AWG', 'three-way small plug')
  await another()
  await load('Ozonator')
  await thumb.tap('radio', '120 V')
  await thumb.type('What the plate says', '.5')
  await finish('18 AWG', 'three-way small plug')
  await another()
  await load('Light')
  await thumb.tap('radio', '12 V')
  await thumb.type('What the plate says', '6')
  await finish('20 AWG', 'two-way light plug', false)
}
