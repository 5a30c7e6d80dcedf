import type { Photo } from '@tubwright/records'
import { documentOf, readJobFile, writeJobFile } from '@tubwright/records'
import type { Core } from '../../ask/ask.ts'
import type { Document } from '../../ask/protocol.ts'
import type { StoredPhoto } from '../../store/database.ts'
import type { JobStore } from '../../store/job-store.ts'
import { sha256 } from '../../store/sha256.ts'
import type { JobSpace } from '../../store/space.ts'

const CHUNK = 0x8000

/** Bytes as base64. */
export function toBase64(bytes: Uint8Array): string {
  let binary = ''
  for (let at = 0; at < bytes.length; at += CHUNK)
    binary += String.fromCharCode(...bytes.subarray(at, at + CHUNK))
  return btoa(binary)
}

const fromBase64 = (text: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(text), each => each.charCodeAt(0))

async function wirePhoto({ hash, type, bytes }: StoredPhoto): Promise<Photo> {
  return { hash, type, bytes: toBase64(new Uint8Array(await bytes.arrayBuffer())) }
}

/** Hashes of the photos that a job speaks of. */
function photosIn(job: JobStore): readonly string[] {
  const photos = documentOf(job.view.state, ['photos'])
  if (!Array.isArray(photos)) return []
  return photos.flatMap(each => {
    const { hash } = each as { readonly hash?: unknown }
    return typeof hash === 'string' ? [hash] : []
  })
}

/** The whole job as one text, byte-equal for equal entries and photos. */
export async function jobFileOf(job: JobStore, space: JobSpace, core: Core): Promise<string> {
  const document = documentOf(job.view.state, ['survey']) as Document
  const { text: survey } = await core.ask('yaml', { document })
  const found = await Promise.all([...new Set(photosIn(job))].map(hash => space.photo(hash)))
  const photos = await Promise.all(found.flatMap(each => (each ? [wirePhoto(each)] : [])))
  return writeJobFile({ job: job.id, entries: job.entries, photos, survey })
}

/** What came of opening a file. */
export type OpenedFile =
  | { readonly kind: 'job'; readonly id: string; readonly added: number; readonly isNew: boolean }
  | { readonly kind: 'survey'; readonly document: Document }
  | {
      readonly kind: 'description'
      readonly text: string
      readonly of: string
      readonly id: string
    }
  | { readonly kind: 'refused'; readonly why: string }

const DESCRIPTIONS = ['control-box', 'supply-device']

/** A photo by another hash than its own could take the place of another photo: it is left out. */
async function photoFrom({ hash, type, bytes }: Photo): Promise<StoredPhoto | undefined> {
  const raw = fromBase64(bytes)
  if ((await sha256(raw)) !== hash) return undefined
  const blob = new Blob([raw], { type })
  const bitmap = await createImageBitmap(blob).catch(() => undefined)
  const { width = 0, height = 0 } = bitmap ?? {}
  bitmap?.close()
  return { hash, type, width, height, bytes: blob }
}

async function openJob(text: string, space: JobSpace): Promise<OpenedFile> {
  const read = readJobFile(text)
  if (!read.ok) {
    const { path, is, may } = read.failure
    return { kind: 'refused', why: `${path.join('.') || '·'}: ${is} (${may})` }
  }
  const { job, entries, photos } = read.value
  const isNew = !space.cards.some(each => each.id === job)
  const own = (await Promise.all(photos.map(photoFrom))).flatMap(each => each ?? [])
  const added = await space.takeIn(job, entries, own)
  return { kind: 'job', id: job, added, isNew }
}

const isItems = (value: unknown): boolean =>
  value === undefined ||
  (Array.isArray(value) &&
    value.every(each => typeof each === 'object' && each !== null && typeof each.id === 'string'))

/** Whether what a form walks through is there as lists of items with ids, or not at all. */
function isSurveyShaped({ loads, supply = {} }: Document): boolean {
  if (typeof supply !== 'object' || supply === null || Array.isArray(supply)) return false
  const { devices, cables } = supply as { readonly devices?: unknown; readonly cables?: unknown }
  const inner = [
    ...(Array.isArray(cables) ? cables.map(each => each?.conductors) : []),
    ...(Array.isArray(loads) ? loads.flatMap(each => [each?.leads, each?.circuits]) : []),
  ]
  return [loads, devices, cables, ...inner].every(isItems)
}

/** Opens a job file, a survey or a description; nothing is taken of one that cannot be read whole. */
export async function openFile(text: string, space: JobSpace, core: Core): Promise<OpenedFile> {
  if (text.trimStart().startsWith('{"')) return openJob(text, space)
  const { document, diagnostics } = await core.ask('readYaml', { text })
  const said = document?.['schema']
  if (document && said === 'survey/1')
    return isSurveyShaped(document)
      ? { kind: 'survey', document }
      : { kind: 'refused', why: 'survey/1: loads, devices, cables' }
  const of = DESCRIPTIONS.find(each => said === `${each}/1`)
  const id = document?.['id']
  if (of && typeof id === 'string') return { kind: 'description', text, of, id }
  const [first] = diagnostics
  return { kind: 'refused', why: first ? `${first.line}: ${first.is}` : String(said ?? '?') }
}

/** Hands a text to the person as a file. */
export function saveAs(name: string, text: string, type: string): void {
  const url = URL.createObjectURL(new Blob([text], { type }))
  const link = document.createElement('a')
  link.href = url
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(url), 10_000)
}

export const fileName = (title: string): string =>
  title
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/gu, '')
    .slice(0, 60)
    .toLowerCase() || 'job'
