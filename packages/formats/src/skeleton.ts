import { stringify } from 'yaml'
import type { FieldText } from './json-schema.ts'
import { fieldNames } from './json-schema.ts'
import type { SkeletonAnswers } from './skeleton-answers.ts'
import { skeletonBox } from './skeleton-box.ts'

/** The sentences of a skeleton that belong to no field. */
export interface SkeletonWords {
  readonly head: readonly string[]
  readonly each: string
  readonly more: string
  readonly jumpers: readonly string[]
  readonly label: string
  readonly maker: string
  readonly note: string
  readonly limitEntered: string
  readonly afterReset: string
}

/** On one line; lists without room inside their brackets. */
const flow = (value: unknown): string =>
  stringify(value, { collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: true })
    .trim()
    .replaceAll('[ ', '[')
    .replaceAll(' ]', ']')

const block = (value: unknown, indent: string): readonly string[] =>
  stringify(value, { lineWidth: 0 })
    .trimEnd()
    .split('\n')
    .map(line => `${indent}${line}`)

const SUPPLIED = 'control-box.supplied'
const NAME_WIDTH = 14 // [characters] of the names in a list of fields
const COMMENT_AT = 44 // [characters] where comments beside a field begin

/** Writes lines, each with what its field is for. */
class Writer {
  readonly lines: string[] = []
  readonly #textOf: FieldText
  readonly #words: SkeletonWords

  constructor(textOf: FieldText, words: SkeletonWords) {
    this.#textOf = textOf
    this.#words = words
  }

  comment(text: string, indent = ''): void {
    this.lines.push(`${indent}# ${text}`.trimEnd())
  }

  /** One field on its line, explained beside it. */
  field(name: string, value: unknown, indent = ''): void {
    const key = name.slice(name.lastIndexOf('.') + 1)
    const line = `${indent}${key}:${value === undefined ? '' : ` ${flow(value)}`}`
    const text = this.#textOf(name)
    this.lines.push(text === undefined ? line : `${line.padEnd(COMMENT_AT - 1)} # ${text}`)
  }

  /** What may stand in each entry of a list: a line of comment for each field. */
  explain(list: string, names: readonly string[], indent: string): void {
    this.comment(`${this.#textOf(list)}. ${list === SUPPLIED ? '' : this.#words.each}`, indent)
    const own = names.filter(name => name.startsWith(list === SUPPLIED ? 'load.' : `${list}.`))
    for (const name of own) {
      const short = name.slice(list === SUPPLIED ? 'load.'.length : list.length + 1)
      const depth = short.split('.').length - 1
      const label = `${'  '.repeat(depth)}${short.slice(short.lastIndexOf('.') + 1)}`
      this.comment(`  ${label.padEnd(NAME_WIDTH)} ${this.#textOf(name) ?? ''}`, indent)
    }
  }

  list(key: string, entries: readonly unknown[], indent: string): void {
    if (entries.length === 0) {
      this.lines.push(`${indent}${key}: []`)
      return
    }
    this.lines.push(`${indent}${key}:`)
    for (const each of entries) this.lines.push(`${indent}  - ${flow(each)}`)
  }

  blank(): void {
    this.lines.push('')
  }
}

/** The fields that a skeleton uses of its supplied loads; the schema has many more. */
const LOAD_FIELDS: readonly string[] = [
  'load.kind',
  'load.id',
  'load.label',
  'load.volts',
  'load.curve',
  'load.place',
  'load.leads',
  'load.leads.id',
  'load.leads.function',
  'load.leads.size',
  'load.leads.colour',
  'load.circuits',
  'load.circuits.id',
  'load.circuits.across',
  'load.circuits.amps',
  'load.circuits.power',
  'load.plug',
  'load.plug.shape',
  'load.plug.pins',
]

/**
 * A control box to begin a description from, as commented YAML: it can be read and linted as it stands.
 *
 * @param textOf - what each field is for
 */
export function writeSkeleton(
  answers: SkeletonAnswers,
  textOf: FieldText,
  words: SkeletonWords,
): string {
  const box = skeletonBox(answers)
  const names = fieldNames('control-box')
  const out = new Writer(textOf, words)
  for (const line of words.head) out.comment(line)
  out.blank()
  const top = (key: string, value: unknown) => out.field(`control-box.${key}`, value)
  top('schema', 'control-box/1')
  top('id', answers.id)
  top('label', words.label)
  top('maker', words.maker)
  top('note', words.note)
  top('regions', box.regions)
  top('frequencies', [box.frequency])
  top('size', undefined)
  out.field('control-box.size.width', `${box.width + 60} mm`, '  ')
  out.field('control-box.size.height', '240 mm', '  ')
  out.field('control-box.size.depth', '110 mm', '  ')
  top('largestBreaker', box.family.breaker)
  out.blank()
  top('board', undefined)
  out.field('board.size', undefined, '  ')
  out.field('board.size.width', `${box.width} mm`, '    ')
  out.field('board.size.height', '160 mm', '    ')
  out.field('board.earth', 'PE', '  ')
  for (const key of ['terminals', 'connectors', 'parts'] as const) {
    out.explain(`board.${key}`, names, '  ')
    out.list(key, box[key], '  ')
  }
  out.explain('board.jumpers', names, '  ')
  if (box.jumpers.length === 0) for (const line of words.jumpers) out.comment(line, '  ')
  out.list('jumpers', box.jumpers, '  ')
  for (const key of ['feeds', 'places', 'commands'] as const) {
    out.blank()
    out.explain(`control-box.${key}`, names, '')
    out.list(key, box[key], '')
  }
  top('exclusive', box.exclusive)
  top('heat', 'heat')
  out.blank()
  out.explain('control-box.profiles', names, '')
  out.list('profiles', box.profiles, '')
  top('profileFactory', box.profiles[0]?.['id'])
  out.blank()
  top('currentLimit', undefined)
  out.field('control-box.currentLimit.offered', box.family.limits, '  ')
  out.field('control-box.currentLimit.factory', box.family.limits[0], '  ')
  out.field('control-box.currentLimit.names', 'draw', '  ')
  out.field('control-box.currentLimit.entered', words.limitEntered, '  ')
  out.field('control-box.currentLimit.by', 'small-switches', '  ')
  top('afterReset', words.afterReset)
  out.blank()
  out.explain('control-box.sensors', names, '')
  out.list('sensors', box.sensors, '')
  top('flowProof', 'pressure-switch')
  out.blank()
  out.explain(SUPPLIED, LOAD_FIELDS, '')
  out.comment(words.more)
  out.lines.push('supplied:', ...block(box.supplied, '  '))
  top('keypadHole', undefined)
  out.field('control-box.keypadHole.width', '90 mm', '  ')
  out.field('control-box.keypadHole.height', '60 mm', '  ')
  return `${out.lines.join('\n')}\n`
}
