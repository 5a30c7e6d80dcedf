import * as z from 'zod'
import { canonical } from './canonical.ts'
import { digestOf } from './digest.ts'
import type { Entry } from './entry.ts'
import { textOf } from './entry-text.ts'
import type { Fault, Outcome } from './fault.ts'
import { fail, ok, told, within } from './fault.ts'
import type { Json } from './json.ts'
import { byText } from './json.ts'
import { AROUND_ENTRY, ENTRY_DEPTH_MAX } from './limits.ts'
import { parseCanonical } from './parse-canonical.ts'
import type { Reader } from './reader.ts'
import { READER } from './reader.ts'
import { compareEntries, sortEntries } from './sort-entries.ts'
import { readEntries } from './wire.ts'

/** A photo by the hash that its makers gave it: equal hash, equal photo. */
export interface Photo {
  readonly hash: string
  /** Media type, such as `image/jpeg`. */
  readonly type: string
  /** Base64, padded. */
  readonly bytes: string
}

/** A whole job in one file. */
export interface JobFile {
  readonly job: string
  /** In the order of a log. */
  readonly entries: readonly Entry[]
  /** By hash. */
  readonly photos: readonly Photo[]
  /** The survey as the command line reads it: made by the caller, carried along. */
  readonly survey: string
}

const isBase64 = (text: string): boolean =>
  text.length % 4 === 0 && !/[^A-Za-z0-9+/]/u.test(text.replace(/={0,2}$/u, ''))

const photo = z.strictObject({
  hash: z.string().regex(/^[A-Za-z0-9_-]{1,128}$/u, 'letters, digits, "-" and "_", 1 to 128'),
  type: z.string().regex(/^[a-z]+\/[a-z0-9.+-]{1,60}$/u, 'a media type such as "image/jpeg"'),
  bytes: z.string().refine(isBase64, 'base64 with its padding'),
})
const digest = z.string().regex(/^[0-9a-f]{16}$/u, '16 hex digits')
const job = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9_.-]{0,63}$/u, 'letters, digits, "-", "_", "."')

const SCHEMA = 'job-file/1'
const SURVEY_MAX = 4_000_000 // characters

const file = z.strictObject({
  schema: z.literal(SCHEMA),
  job,
  entries: z.array(z.unknown()),
  photos: z.array(photo),
  survey: z.string().max(SURVEY_MAX),
  /** Digests of every part, so that a slip is found where it is. */
  sums: z.strictObject({
    job: digest,
    entries: z.array(digest),
    photos: z.array(digest),
    survey: digest,
  }),
})
type WrittenFile = z.output<typeof file>
type Unsummed = Pick<JobFile, 'job' | 'photos' | 'survey'> & { entries: readonly unknown[] }

const sumOf = (value: unknown): string => digestOf(canonical(value as Json))

const sumsOf = (written: Unsummed): WrittenFile['sums'] => ({
  job: sumOf(written.job),
  entries: written.entries.map(sumOf),
  photos: written.photos.map(sumOf),
  survey: sumOf(written.survey),
})

const byHash = (a: Photo, b: Photo): number => byText(a.hash, b.hash)

/** The job as one canonical text: the same job is the same bytes. */
export function writeJobFile({ job, entries, photos, survey }: JobFile): string {
  const written = {
    schema: SCHEMA,
    job,
    entries: [...sortEntries([], entries)],
    photos: photos.map(({ hash, type, bytes }) => ({ hash, type, bytes })).sort(byHash),
    survey,
  } as const
  return canonical({ ...written, sums: sumsOf(written) } as unknown as Json)
}

const valueAt = (value: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((inner, step) => (inner as Record<PropertyKey, unknown>)?.[step], value)

function faultOf(value: unknown, issue: z.core.$ZodIssue): Fault {
  const path = issue.path.map(step => (typeof step === 'symbol' ? step.toString() : step))
  if (issue.code === 'unrecognized_keys')
    return { path: [...path, issue.keys[0] ?? ''], is: 'an unknown key', may: 'none' }
  return { path, is: told(valueAt(value, issue.path)), may: issue.message }
}

function checkShape(value: Json): Outcome<WrittenFile> {
  const read = file.safeParse(value)
  if (read.success) return ok(read.data)
  return fail(faultOf(value, read.error.issues[0] as z.core.$ZodIssue))
}

const changed = (path: Fault['path'], is: string, may: string): Fault => ({
  path,
  is: `changed: its digest is ${is}`,
  may: `digest ${may}`,
})

function checkList(
  name: 'entries' | 'photos',
  are: readonly string[],
  were: readonly string[],
): Fault | undefined {
  if (are.length !== were.length)
    return { path: [name], is: `${are.length} of them`, may: `${were.length} of them` }
  const index = are.findIndex((each, place) => each !== were[place])
  return index < 0 ? undefined : changed([name, index], are[index] ?? '', were[index] ?? '')
}

/** Where a part is not what was written, or undefined. */
function checkSums(written: WrittenFile): Fault | undefined {
  const { sums } = written
  const are = sumsOf(written)
  if (are.job !== sums.job) return changed(['job'], are.job, sums.job)
  if (are.survey !== sums.survey) return changed(['survey'], are.survey, sums.survey)
  return (
    checkList('entries', are.entries, sums.entries) ?? checkList('photos', are.photos, sums.photos)
  )
}

/** Where a list is not in its order, or has something twice. */
function checkOrder<Value>(
  name: string,
  list: readonly Value[],
  compare: (a: Value, b: Value) => number,
): Fault | undefined {
  const index = list.findIndex(
    (each, place) => place > 0 && compare(list[place - 1] as Value, each) >= 0,
  )
  return index < 0
    ? undefined
    : { path: [name, index], is: 'out of order, or twice', may: 'each once, in order' }
}

/** A job from its file: whole, or what is wrong and where. */
export function readJobFile(text: unknown, reader: Reader = READER): Outcome<JobFile> {
  const value = parseCanonical(text, ENTRY_DEPTH_MAX + AROUND_ENTRY)
  if (!value.ok) return value
  const shape = checkShape(value.value)
  if (!shape.ok) return shape
  const { job, photos, survey } = shape.value
  const sums = checkSums(shape.value)
  if (sums) return fail(sums)
  const entries = readEntries(shape.value.entries as Json[], reader)
  if (!entries.ok) return fail(within(['entries'], entries.failure))
  const order =
    checkOrder('entries', entries.value, compareEntries) ?? checkOrder('photos', photos, byHash)
  return order ? fail(order) : ok({ job, entries: entries.value, photos, survey })
}

/** Entries of both, each once. */
function unionOf(a: readonly Entry[], b: readonly Entry[]): readonly Entry[] {
  const all = [...a, ...b].map(each => [textOf(each), each] as const)
  return sortEntries([], [...new Map(all).values()])
}

function photosOf(a: readonly Photo[], b: readonly Photo[]): Outcome<readonly Photo[]> {
  const all = new Map(a.map(each => [each.hash, each]))
  for (const [index, each] of b.entries()) {
    const own = all.get(each.hash) ?? each
    if (own.bytes !== each.bytes || own.type !== each.type)
      return fail({
        path: ['photos', index],
        is: 'another photo',
        may: `that of hash ${each.hash}`,
      })
    all.set(each.hash, each)
  }
  return ok([...all.values()].sort(byHash))
}

/**
 * Two files of one job as one: every entry and every photo of both.
 *
 * @param surveyOf - makes the survey text anew from all entries
 */
export function mergeJobFiles(
  a: JobFile,
  b: JobFile,
  surveyOf: (entries: readonly Entry[]) => string,
): Outcome<JobFile> {
  if (a.job !== b.job) return fail({ path: ['job'], is: told(b.job), may: told(a.job) })
  const photos = photosOf(a.photos, b.photos)
  if (!photos.ok) return photos
  const entries = unionOf(a.entries, b.entries)
  return ok({ job: a.job, entries, photos: photos.value, survey: surveyOf(entries) })
}
