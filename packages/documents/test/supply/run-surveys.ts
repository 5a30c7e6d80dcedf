import type { Survey } from '@tubwright/core'
import { checkSupply } from '@tubwright/core'
import { readSurvey } from '@tubwright/formats'
import { demoDevices, demoText, demoTub } from '../../../core/test/support/demo.ts'

const EVERYDAY = 'everyday-240-circulation'

/** A survey from its text. */
function read(id: string, text: string): Survey {
  const { value, diagnostics } = readSurvey(id, text, demoDevices)
  if (!value) throw new Error(JSON.stringify(diagnostics, null, 2))
  return value
}

function replaced(text: string, changes: readonly (readonly [string, string])[]): string {
  return changes.reduce((sum, [from, to]) => {
    if (!sum.includes(from)) throw new Error(`the demo tub has no ${from}`)
    return sum.replaceAll(from, to)
  }, text)
}

export const judge = (survey: Survey) => checkSupply(survey, demoDevices)

const LAID = `length: 35 ft
      where: outdoors
      material: copper
      insulation: 90 °C
      method: conduit
      ambient: 30 °C
      alongside: '0'
      conduit: { kind: PVC 40, size: '1' }`

const PLATE = `codeEdition: '2020'
plate: { draws: 32 A, minimumCircuit: 40 A, maximumProtection: 50 A }
bay:`

const DEVICE = 'device: ground-fault-breaker-2, '

/** The everyday tub with every answer that the page asks for: nothing is open. */
export const surveyed = (): Survey =>
  read(
    EVERYDAY,
    replaced(demoText('tubs', EVERYDAY), [
      ['length: 35 ft', LAID],
      ['bay:', PLATE],
      [DEVICE, `${DEVICE}terminals: 75 °C, enclosure: 60 A, `],
    ]),
  )

/** The same where most is wrong: thin wire, a sheathed cable outdoors, the neutral past the device. */
export const wrong = (): Survey =>
  read(
    EVERYDAY,
    replaced(demoText('tubs', EVERYDAY), [
      ['length: 35 ft', LAID.replace('method: conduit', 'method: sheathed-cable')],
      ['bay:', PLATE.replace('draws: 32 A', 'draws: 44 A')],
      [DEVICE, `${DEVICE}terminals: 60 °C, enclosure: 40 A, heatMark: true, `],
      ['size: 6 AWG', 'size: 10 AWG'],
      ['from: N }', 'from: NB }'],
      ['earth, size: 10 AWG, colour: green', 'earth, size: 14 AWG, colour: bare'],
    ]),
  )

/** A label of so many letters. */
export const longLabel = (letters: number): string =>
  'From the old board in the cellar past the garage wall and the pond to the fence post'
    .padEnd(letters, 'n')
    .slice(0, letters)
    .trimEnd()

/** A run of so many pieces, each with a label of so many letters. */
export function longRun(pieces: number, letters = 60): Survey {
  const label = (number: number): string => `${number} ${longLabel(letters - 2)}`
  const devices = Array.from({ length: pieces - 1 }, (_, index) => ({
    id: `isolator-${index}`,
    label: label(index),
  }))
  const ends = ['rcd', ...devices.map(each => each.id), 'box']
  const cables = Array.from({ length: pieces }, (_, index) => {
    const [from = '', to = ''] = [ends[index], ends[index + 1]]
    const at = (line: string): string => {
      const out = index === 0 ? line : `${line}-out`
      const start = index === 0 && line === 'E' ? 'EB' : out
      return to === 'box' ? `from: ${start}` : `from: ${start}, to: ${line}-in`
    }
    return `    - id: piece-${index}
      label: ${label(index)}
      from: ${from}
      to: ${to}
      length: ${index + 3} m
      conductors:
        - { id: line, function: leg1, size: 6 mm2, colour: brown, ${at('L')} }
        - { id: neutral, function: neutral, size: 6 mm2, colour: blue, ${at('N')} }
        - { id: earth, function: earth, size: 6 mm2, colour: green-yellow, ${at('E')} }`
  })
  const text = demoText('tubs', 'garden-230')
  const [head = '', rest = ''] = text.split(/ {2}cables:[\s\S]*?(?=^loads:)/mu)
  return read(
    'garden-230',
    `${head.replace(
      / {4}- \{ id: isolator,.*\n/u,
      devices
        .map(each => `    - { id: ${each.id}, device: isolator-2, label: ${each.label} }\n`)
        .join(''),
    )}  cables:\n${cables.join('\n')}\n${rest}`,
  )
}

const ATTACK = `</style></title><script>alert(1)</script>"onload='a(b)'&amp;]]>`

/** A tub whose every label tries to be markup. */
export function hostile(): Survey {
  const survey = demoTub('garden-230')
  const attacked = <Thing extends object>(each: Thing): Thing => ({ ...each, label: ATTACK })
  return {
    ...survey,
    title: ATTACK,
    supply: {
      ...survey.supply,
      devices: survey.supply.devices.map(attacked),
      cables: survey.supply.cables.map(attacked),
    },
    loads: survey.loads.map(attacked),
  }
}
