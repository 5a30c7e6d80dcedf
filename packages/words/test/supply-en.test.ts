import { readdirSync, readFileSync } from 'node:fs'
import { SUPPLY_RULES } from '@tubwright/core'
import { describe, expect, test } from 'vitest'
import { SPANISH } from '../src/es/index.ts'
import { ENGLISH, holesOf } from '../src/index.ts'

const rules = new URL('../../core/src/stages/verify/rules/supply/', import.meta.url)
const sources = readdirSync(rules).map(name => readFileSync(new URL(name, rules), 'utf8'))
const helpers = new URL('../../core/src/stages/verify/supply/', import.meta.url)
const shared = readdirSync(helpers).map(name => readFileSync(new URL(name, helpers), 'utf8'))
const books = new URL('../../core/src/domain/codebook/', import.meta.url)
const figures = readdirSync(books)
  .filter(name => name.endsWith('.ts'))
  .map(name => readFileSync(new URL(name, books), 'utf8'))
const all = [...sources, ...shared, ...figures].join('\n')

/** Every word in quotes that a rule could give for a message. */
const quoted = new Set(
  [...all.matchAll(/['`]([a-z]+(?:-[a-z]+)*)['`]/gu)].map(each => each[1] ?? ''),
)
const gaps = new Set(
  [...all.matchAll(/notCovered\(\s*'([\w-]+)'/gu)].map(each => `not-covered-${each[1] ?? ''}`),
)
/** What stands behind `message:` in so many words. */
const messages = [...all.matchAll(/message:\s*'([\w-]+)'/gu)].map(each => each[1] ?? '')
const says: Readonly<Record<string, string>> = ENGLISH.supplySays

for (const [, template = ''] of all.matchAll(/`([^`]*\$\{[^`]*)`/gu))
  for (const part of template.split(/\$\{[^}]*\}/u))
    for (const word of part.split('-')) if (word !== '') quoted.add(word)

const isSpelled = (words: readonly string[]): boolean =>
  words.length === 0 ||
  words.some(
    (_, at) => quoted.has(words.slice(0, at + 1).join('-')) && isSpelled(words.slice(at + 1)),
  )

/** A message that is put together: what it is about, and what is asked of it. */
const isJoined = (message: string): boolean =>
  isSpelled(message.replace(/^not-covered-/u, '').split('-'))

describe('the sentences of the supply', () => {
  test('every rule has its title, as the rule itself calls it, and no title is of no rule', () => {
    expect(ENGLISH.supplyRules).toEqual(
      Object.fromEntries(SUPPLY_RULES.map(({ id, title }) => [id, title])),
    )
    expect(Object.keys(SPANISH.supplyRules)).toEqual(Object.keys(ENGLISH.supplyRules))
  })

  test('every message of a rule has its sentence', () => {
    expect(messages.length).toBeGreaterThan(40)
    const missing = [...messages, ...gaps].filter(each => !Object.hasOwn(says, each))
    // What a rule leaves unsaid where there is nothing to say.
    expect(missing.filter(each => each !== 'conduit-none' && each !== 'wiring-none')).toEqual([])
  })

  test('every sentence is said by some rule', () => {
    const unused = Object.keys(says).filter(
      each => !quoted.has(each) && !gaps.has(each) && !all.includes(each) && !isJoined(each),
    )
    expect(unused).toEqual([])
  })

  test.each(Object.keys(says))('%s asks for what its rule gives, in both languages', message => {
    const holes = holesOf(says[message] ?? '')
    for (const hole of holes) expect(all).toMatch(new RegExp(`\\b${hole}\\b`, 'u'))
    expect(
      [...holesOf(SPANISH.supplySays[message as keyof typeof SPANISH.supplySays])].sort(),
    ).toEqual([...holes].sort())
  })
})
