import type { Region, SupplyReport, Survey } from '@tubwright/core'
import { checkSupply, REGIONS, yard } from '@tubwright/core'
import { ENGLISH } from '@tubwright/words'
import { SPANISH } from '@tubwright/words/es'
import { describe, expect, test } from 'vitest'
import { demoDevices, demoTub } from '../../../core/test/support/demo.ts'
import { isOver } from '../../src/board/scene.ts'
import { drawYard, layOutYard } from '../../src/index.ts'
import { clashes } from '../support/overlaps.ts'

type YardText = Parameters<typeof yard.parse>[0]

const AMERICAN: readonly Region[] = ['US', 'CA']
const MARKER = 8

function judged(region: Region, text: YardText) {
  const base = AMERICAN.includes(region) ? 'everyday-240-plain' : 'garden-230'
  const survey: Survey = { ...demoTub(base), region, yard: yard.parse(text) }
  return { survey, report: checkSupply(survey, demoDevices) }
}

/** Twelve things and the disconnect, near and far, all with names of 60 letters. */
function crowd(letter: string, distances: readonly string[]): YardText {
  const thing = (id: string, index: number) => ({
    id,
    label: `${id} ${letter.repeat(60)}`.slice(0, 60),
    distance: distances[index % distances.length],
  })
  return {
    setting: 'outdoors',
    disconnect: { distance: distances[0], inSight: 'yes' },
    receptacles: [0, 1, 2].map(at => thing(`r${at}`, at)),
    lights: [3, 4, 5].map(at => ({ ...thing(`l${at}`, at), height: '2 m' })),
    switches: [6, 7].map(at => thing(`s${at}`, at)),
    metal: [8, 9, 10, 11].map(at => ({ ...thing(`m${at}`, at), bonded: 'no' })),
  }
}

const THINGS = [
  'yard.disconnect',
  ...['r0', 'r1', 'r2'].map(id => `yard.receptacles.${id}`),
  ...['l3', 'l4', 'l5'].map(id => `yard.lights.${id}`),
  ...['s6', 's7'].map(id => `yard.switches.${id}`),
  ...['m8', 'm9', 'm10', 'm11'].map(id => `yard.metal.${id}`),
]

const NEAR = ['3 ft', '5 ft', '6 ft', '2 ft', '8 ft', '12 ft', '4 ft', '19 ft']
const CROWDS = [
  ['near', NEAR],
  ['all in one distance', ['6 ft']],
  ['some far away', [...NEAR, '45 ft', '70 ft']],
] as const

/** What is not known has no place, but a name. */
const UNKNOWN = { unknown: 'not measured' }

describe.each(REGIONS)('%s', region => {
  test.each(CROWDS)(
    '%s: no label lies on another or on a marker, and all are on the paper',
    (_, distances) => {
      for (const letter of ['a', 'W', 'lorem ipsum '])
        for (const words of [ENGLISH, SPANISH]) {
          const { survey, report } = judged(region, crowd(letter, distances))
          const scene = layOutYard(survey, report, words)
          expect(clashes(scene.labels)).toEqual([])
          const discs = scene.markers.map(({ x, y }) => ({
            x: x - MARKER,
            y: y - MARKER,
            width: 2 * MARKER,
            height: 2 * MARKER,
          }))
          const covered = scene.labels.filter(each => discs.some(disc => isOver(each, disc)))
          expect(covered.map(each => each.text)).toEqual([])
          for (const { x, y, width, height } of scene.labels) {
            expect(x).toBeGreaterThanOrEqual(-0.01)
            expect(y).toBeGreaterThanOrEqual(0)
            expect(x + width).toBeLessThanOrEqual(scene.width + 0.01)
            expect(y + height).toBeLessThanOrEqual(scene.height)
          }
        }
    },
  )

  test('every thing is there, at its distance, with the worst that is said of it', () => {
    const { survey, report } = judged(region, crowd('a', NEAR))
    const { markers, middle, tub } = layOutYard(survey, report, ENGLISH)
    expect(markers.map(each => each.at).sort()).toEqual([...THINGS].sort())
    // The tub is 2 m wide: all else is to its scale.
    for (const { at, x, y } of markers) {
      const text = at === 'yard.disconnect' ? NEAR[0] : distanceOf(survey, at)
      const metres = Math.hypot(x - middle.x, y - middle.y) / tub - 1
      expect(metres / 0.3048).toBeCloseTo(Number.parseFloat(text ?? ''), 1)
    }
    for (const { at, verdict } of markers) {
      const own = report.yard.filter(each => each.subjects[0] === at).map(each => each.verdict)
      expect(own).toContain(verdict)
      if (own.includes('breaks')) expect(verdict).toBe('breaks')
      if (own.some(each => each !== 'holds')) expect(verdict).not.toBe('holds')
    }
  })
})

function distanceOf({ yard: found }: Survey, at: string): string | undefined {
  const [, list, id] = at.split('.') as [string, 'lights', string]
  const distance = found?.[list]?.find(each => each.id === id)?.distance
  return distance?.kind === 'known' ? distance.value.text : undefined
}

/** The findings of a thing, as if the rules had said nothing else. */
const only = (report: SupplyReport, verdict: 'holds' | 'breaks' | 'not-shown'): SupplyReport => ({
  ...report,
  yard: report.yard.map(each => ({ ...each, verdict })),
})

describe('the drawing', () => {
  const { survey, report } = judged('US', crowd('a', NEAR))
  const svg = drawYard(survey, report, ENGLISH)

  test('names itself and says all in words, in its language', () => {
    expect(svg).toMatch(/^<svg [^>]*role="img"[^>]*lang="en"/u)
    const [, ids = ''] = /aria-labelledby="([^"]+)"/u.exec(svg) ?? []
    for (const id of ids.split(' ')) expect(svg).toContain(` id="${id}"`)
    const [, says = ''] = /<desc[^>]*>([^<]*)</u.exec(svg) ?? []
    expect(says.split('; ').length).toBeGreaterThanOrEqual(THINGS.length)
    expect(says).toContain('✗ disconnect, 3 ft: it breaks')
    const spanish = drawYard(survey, report, SPANISH)
    expect(spanish).toContain('lang="es"')
    expect(spanish).toContain('seccionador: 3 ft')
    expect(spanish).not.toContain('it breaks')
  })

  test('has the distances of the book as rings', () => {
    for (const text of ['5 ft', '6 ft', '20 ft']) expect(svg).toContain(`>${text}</text>`)
    const uk = judged('UK', crowd('a', ['1 m', '3 m']))
    const metric = drawYard(uk.survey, uk.report, ENGLISH)
    for (const text of ['2 m', '3.5 m']) expect(metric).toContain(`>${text}</text>`)
    expect(metric).not.toMatch(/\d ft/u)
  })

  test('tells verdicts apart by sign, line and word, never by colour alone', () => {
    const signs = (['holds', 'breaks', 'not-shown'] as const).map(verdict => {
      const drawn = drawYard(survey, only(report, verdict), ENGLISH)
      expect(drawn).toContain(`>${ENGLISH.verdicts[verdict]}</text>`)
      return /data-verdict="[^"]+"[^>]*><path d="([^"]+)"/u.exec(drawn)?.[1]
    })
    expect(new Set(signs).size).toBe(3)
  })

  test('has a name and no marker for what nobody measured, and a bar for a range', () => {
    const drawn = judged('US', {
      switches: [
        { id: 'a', label: 'Garden switch', distance: UNKNOWN },
        { id: 'b', label: 'Pond switch', distance: { from: '3 ft', to: '8 ft', source: 'paced' } },
      ],
    } as YardText)
    const scene = layOutYard(drawn.survey, drawn.report, ENGLISH)
    expect(scene.markers.map(each => each.at)).toEqual(['yard.switches.b'])
    expect(scene.markers[0]?.to).toBeDefined()
    const texts = scene.labels.map(each => each.text)
    expect(texts).toContain('Garden switch')
    expect(texts).toContain('wall switch: 3 ft to 8 ft')
    expect(texts.join(' ')).toContain('disconnect: distance not known')
  })

  test('names what belongs to no thing below', () => {
    const { labels } = layOutYard(survey, report, ENGLISH)
    const rest = labels.filter(each => each.kind === 'rest').map(each => each.text)
    expect(rest.some(each => each.startsWith('Ground and floor around the tub'))).toBe(true)
    expect(rest.some(each => each.startsWith('An outlet for other things'))).toBe(true)
  })

  test('escapes what people wrote, and runs nothing', () => {
    const hostile = judged('US', {
      metal: [{ id: 'm', label: '</text><script>alert("x")</script>&\'<b>', distance: '3 ft' }],
    })
    const drawn = drawYard(
      { ...hostile.survey, title: '"><img onerror=x>' },
      hostile.report,
      ENGLISH,
    )
    expect(drawn).not.toMatch(/<script|<img|<b>|<[^>]*\son\w+=/u)
    expect(drawn).toContain('&lt;/text&gt;')
    expect(drawn).toContain('&quot;&gt;&lt;img onerror=x&gt;')
  })

  test('is nothing where no yard was surveyed, and the same bytes every time', () => {
    const { yard: _, ...bare } = survey
    expect(drawYard(bare, report, ENGLISH)).toBe('')
    expect(drawYard(survey, report, ENGLISH)).toBe(svg)
  })
})
