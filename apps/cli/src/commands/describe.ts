import { existsSync, mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { ProfileKind, SchemaName, SkeletonAnswers, SkeletonKind } from '@tubwright/formats'
import {
  FEED_KINDS,
  jsonSchemaOf,
  OUTPUT_KINDS,
  PROFILE_KINDS,
  PUMP_OF,
  PUMPS_MAX,
  SCHEMA_NAMES,
  SKELETON_KINDS,
  writeSkeleton,
} from '@tubwright/formats'
import { DESCRIBE_EN, fieldText, SKELETON_EN, say } from '@tubwright/words'
import { BadInput, EXIT } from '../exits.ts'
import { writeWhole } from '../files.ts'
import type { Talk } from '../talk.ts'

export interface DescribeOptions {
  readonly out: string
  readonly id: string
  readonly from: string
  readonly feeds?: string
  readonly outputs?: string
  readonly heaterPoles?: string
  readonly profiles?: string
  readonly schema?: string
}

/** One word of an option that has to be one of some. */
function oneOf<Word extends string>(option: string, word: string, may: readonly Word[]): Word {
  const found = may.find(each => each === word)
  if (found !== undefined) return found
  throw new BadInput(say(DESCRIBE_EN['wrong-word'], { option, word, may: may.join(', ') }))
}

/** Words joined by commas. */
const someOf = <Word extends string>(
  option: string,
  words: string,
  may: readonly Word[],
): readonly Word[] => words.split(',').map(each => oneOf(option, each.trim(), may))

function refuseTwice(option: string, words: readonly string[]): void {
  const twice = words.find((each, index) => words.indexOf(each) < index)
  if (twice !== undefined) throw new BadInput(say(DESCRIBE_EN.twice, { option, word: twice }))
}

const isPump = (output: string): boolean => output.endsWith('-speed-pump')

/** Profiles as they are given, else those of the kind whose pump is there, else what a pump allows. */
function profilesOf(
  given: string | undefined,
  usual: readonly ProfileKind[],
  outputs: readonly string[],
): readonly ProfileKind[] {
  const hasPump = (each: ProfileKind) => outputs.includes(PUMP_OF[each])
  if (given === undefined) {
    const served = usual.filter(hasPump)
    return served.length > 0 ? served : PROFILE_KINDS.filter(hasPump)
  }
  return someOf('--profiles', given, PROFILE_KINDS)
}

function answersOf(options: DescribeOptions): SkeletonAnswers {
  const { id } = options
  if (!/^[A-Za-z][A-Za-z0-9-]{0,39}$/u.test(id))
    throw new BadInput(say(DESCRIBE_EN['wrong-id'], { word: id }))
  const kinds = Object.keys(SKELETON_KINDS) as readonly SkeletonKind[]
  const usual = SKELETON_KINDS[oneOf('--from', options.from, kinds)]
  const feeds = options.feeds ? someOf('--feeds', options.feeds, FEED_KINDS) : usual.feeds
  const outputs = options.outputs
    ? someOf('--outputs', options.outputs, OUTPUT_KINDS)
    : usual.outputs
  const profiles = profilesOf(options.profiles, usual.profiles, outputs)
  refuseTwice('--feeds', feeds)
  refuseTwice(
    '--outputs',
    outputs.filter(each => !isPump(each)),
  )
  refuseTwice('--profiles', profiles)
  if (feeds.includes('one-phase-230') && feeds.length > 1)
    throw new BadInput(say(DESCRIBE_EN['two-families'], { feeds: feeds.join(',') }))
  if (outputs.filter(isPump).length > PUMPS_MAX)
    throw new BadInput(say(DESCRIBE_EN['too-many-pumps'], { most: PUMPS_MAX }))
  const [first = 'circulation'] = usual.profiles
  for (const each of profiles.length > 0 ? profiles : [first])
    if (!outputs.includes(PUMP_OF[each])) {
      const needs = { profile: each, output: PUMP_OF[each] }
      throw new BadInput(say(DESCRIBE_EN['profile-needs'], needs))
    }
  const poles = options.heaterPoles
    ? oneOf('--heater-poles', options.heaterPoles, ['1', '2'])
    : String(usual.heaterPoles)
  return { id, feeds, outputs, heaterPoles: poles === '1' ? 1 : 2, profiles }
}

function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true })
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    throw new BadInput(say(DESCRIBE_EN['no-folder'], { folder, why }))
  }
}

const quoted = (word: string): string => (/^[\w./-]+$/u.test(word) ? word : `'${word}'`)

function printSchema(name: SchemaName, talk: Talk): number {
  talk.data(JSON.stringify(jsonSchemaOf(name, fieldText), null, 2))
  return EXIT.fine
}

/** Writes a commented box to begin a description from, or prints the schema of a kind of file. */
export async function runDescribe(options: DescribeOptions, talk: Talk): Promise<number> {
  if (options.schema !== undefined)
    return printSchema(oneOf('--schema', options.schema, SCHEMA_NAMES), talk)
  const file = join(options.out, `${options.id}.yaml`)
  const text = writeSkeleton(answersOf(options), fieldText, SKELETON_EN)
  if (existsSync(file)) throw new BadInput(say(DESCRIBE_EN.exists, { file }))
  makeFolder(options.out)
  writeWhole(file, text)
  const name = quoted(file)
  talk.data(say(DESCRIBE_EN.written, { file }))
  talk.data(`\n${DESCRIBE_EN.next}`)
  talk.data(`  ${DESCRIBE_EN['next-edit']}\n    tubwright lint ${name} --watch`)
  talk.data(`  ${DESCRIBE_EN['next-lint']}\n    tubwright lint ${name}`)
  const { tubFor } = await import('./tub-for.ts')
  const tub = tubFor(file, text)
  if (tub !== undefined)
    talk.data(`  ${DESCRIBE_EN['next-plan']}\n    tubwright plan ${tub} --box ${name}`)
  return EXIT.fine
}
