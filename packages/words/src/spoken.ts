import type { Params } from './say.ts'
import { say } from './say.ts'
import type { Tables } from './words.ts'

/** What a parameter is a word of; after its message where the name alone does not tell. */
const GROUPS: Readonly<Record<string, string>> = {
  kind: 'kind',
  function: 'function',
  missing: 'function',
  here: 'function',
  'lines-joined.other': 'function',
  colour: 'colour',
  otherColour: 'colour',
  taped: 'colour',
  'touch-volts.from': 'touched',
  'touch-volts.to': 'touched',
  'touch-same-metal.from': 'touched',
  'touch-same-metal.to': 'touched',
  'touch-from-outside.from': 'touched',
  'touch-from-outside.to': 'touched',
  system: 'system',
  'not-for-system.offers': 'system',
  needs: 'current',
  gives: 'current',
  proof: 'proof',
  reason: 'reason',
  plate: 'list',
  offers: 'list',
}

/** Data joins its lists by a comma or by the English word. */
const BETWEEN = / or |, /u

function spokenValue(values: Tables['values'], group: string, text: string): string {
  const named: Readonly<Record<string, string>> = values
  const between = text.includes(' or ') ? ` ${values['list.or']} ` : ', '
  const word = (each: string): string => {
    const name = `${group}.${each}`
    return (Object.hasOwn(named, name) ? named[name] : undefined) ?? each
  }
  return text.split(BETWEEN).map(word).join(between)
}

/** Parameters with the words of the files among them in the language; labels stay as they are. */
export const spoken = (values: Tables['values'], message: string, params: Params): Params =>
  Object.fromEntries(
    Object.entries(params).map(([name, value]) => {
      const group = GROUPS[`${message}.${name}`] ?? GROUPS[name]
      return typeof value === 'string' && group !== undefined
        ? [name, spokenValue(values, group, value)]
        : [name, value]
    }),
  )

/** A sentence with such parameters. */
export const speak = (
  { values }: Pick<Tables, 'values'>,
  template: string,
  message: string,
  params: Params,
): string => say(template, spoken(values, message, params))
