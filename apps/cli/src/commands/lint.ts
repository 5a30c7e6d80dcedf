import { existsSync } from 'node:fs'
import { basename, join } from 'node:path'
import type { Mark } from '@tubwright/documents'
import { drawDescribed } from '@tubwright/documents'
import type { Linted, LocatedFinding } from '@tubwright/formats'
import { LINTED_KINDS, lintText, nearest } from '@tubwright/formats'
import { LINT_TALK_EN, say, tellLint } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { writeOutput } from '../catalogue.ts'
import { BadInput, EXIT } from '../exits.ts'
import { isSameFile, readText } from '../files.ts'
import { tellLocated } from '../heed.ts'
import { english } from '../sheet-html.ts'
import type { Talk } from '../talk.ts'
import { watchText } from '../watch.ts'

export interface LintOptions {
  readonly json?: boolean
  readonly watch?: boolean
  readonly out?: string
}

/** A file by its path, or a box, device or tub of the catalogue by its id. */
function pathOf(shelf: Shelf, name: string): string {
  if (existsSync(name)) return name
  const inShelf = ['boxes', 'devices', 'tubs']
    .map(folder => join(shelf.folder, folder, `${name}.yaml`))
    .find(each => existsSync(each))
  if (inShelf !== undefined) return inShelf
  const near = nearest(name, [...shelf.boxes.map(each => each.id), ...shelf.tubs])
  const hint = near === undefined ? '' : ` Did you mean "${near}"?`
  throw new BadInput(`${name}: there is no such file, box, device or tub.${hint}`)
}

const warningsOf = ({ diagnostics, findings }: Linted): number =>
  diagnostics.length + findings.filter(each => each.severity === 'warning').length

const isReadable = ({ box, device, survey }: Linted): boolean =>
  (box ?? device ?? survey) !== undefined

const exitOf = (linted: Linted): number =>
  !isReadable(linted) ? EXIT.badInput : warningsOf(linted) > 0 ? EXIT.found : EXIT.fine

function findingLine(finding: LocatedFinding, number: string, talk: Talk): string {
  const { file, line, column, severity, id } = finding
  const mark =
    severity === 'warning'
      ? talk.yellow(LINT_TALK_EN['warning-mark'])
      : talk.dim(LINT_TALK_EN['notice-mark'])
  return `${file}:${line}:${column}: ${mark} ${number}${tellLint(finding)} ${talk.dim(`[${id}]`)}`
}

/** Tells what was found; with marks, each finding has the number that the drawing shows. */
function show(file: string, linted: Linted, talk: Talk, isMarked: boolean): void {
  const { diagnostics, findings } = linted
  for (const each of diagnostics) talk.data(tellLocated(each))
  findings.forEach((each, index) => {
    talk.data(findingLine(each, isMarked ? `!${index + 1} ` : '', talk))
  })
  const warnings = warningsOf(linted)
  const notices = findings.length + diagnostics.length - warnings
  talk.data(
    warnings + notices === 0
      ? talk.green(say(LINT_TALK_EN.clean, { file }))
      : say(LINT_TALK_EN.counted, { file, warnings, notices }),
  )
}

/** Whether a text could be taken apart: what it says that it is can be doubted only then. */
const isYaml = ({ diagnostics }: Linted): boolean =>
  !diagnostics.some(each => each.code === 'yaml-syntax')

/** What cannot be read is bad input: every reason, each with its place. */
function refuse(file: string, linted: Linted): never {
  const { kind, diagnostics } = linted
  const message = say(LINT_TALK_EN.refused, { file, errors: diagnostics.length })
  const kinds = say(LINT_TALK_EN.kinds, { kinds: LINTED_KINDS.join(', ') })
  throw new BadInput(kind || !isYaml(linted) ? message : `${message}\n${kinds}`, diagnostics)
}

function once(shelf: Shelf, file: string, json: boolean, talk: Talk): number {
  const linted = lintText(file, readText(file), shelf.devices)
  if (!isReadable(linted)) refuse(file, linted)
  if (json) {
    const { kind, findings, diagnostics } = linted
    const told = findings.map(each => ({ ...each, text: tellLint(each) }))
    const form = { schema: 'lint/1', file, kind, findings: told, warnings: diagnostics }
    talk.data(JSON.stringify(form, null, 2))
  } else show(file, linted, talk, false)
  return exitOf(linted)
}

/** Beside a file of one's own; where one of the catalogue is drawn, in the folder one is in. */
function svgFor(name: string, file: string): string {
  const own = name === file ? file : basename(file)
  return `${own.replace(/\.ya?ml$/u, '')}.svg`
}

function draw(shelf: Shelf, linted: Linted, out: string, talk: Talk): void {
  const described = linted.box ?? linted.device
  if (!described) return
  const marks = linted.findings.map(({ path }, index): Mark => ({ number: index + 1, path }))
  try {
    writeOutput(shelf, out, `${drawDescribed(described, marks, english(linted.box))}\n`, [])
    talk.data(say(LINT_TALK_EN.drawn, { file: out }))
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    talk.data(say(LINT_TALK_EN.undrawn, { why }))
  }
}

/** Shows one state of a watched file; whatever it holds, watching goes on. */
function showAfresh(shelf: Shelf, file: string, text: string, out: string, talk: Talk): void {
  talk.data('')
  const linted = lintText(file, text, shelf.devices)
  if (isReadable(linted)) {
    show(file, linted, talk, true)
    draw(shelf, linted, out, talk)
    return
  }
  for (const each of linted.diagnostics) talk.data(tellLocated(each))
  talk.data(say(LINT_TALK_EN.refused, { file, errors: linted.diagnostics.length }))
}

async function watch(shelf: Shelf, file: string, out: string, talk: Talk): Promise<number> {
  const stop = new AbortController()
  const end = () => stop.abort()
  process.once('SIGINT', end)
  process.once('SIGTERM', end)
  talk.note(say(LINT_TALK_EN.watching, { file }))
  await watchText(
    file,
    text => {
      if (text === undefined) talk.data(`\n${say(LINT_TALK_EN.gone, { file })}`)
      else showAfresh(shelf, file, text, out, talk)
    },
    stop.signal,
  )
  process.off('SIGINT', end)
  process.off('SIGTERM', end)
  talk.note(LINT_TALK_EN.stopped)
  return EXIT.fine
}

/** What looks wrong in a control box, a supply device or a survey; once, or at each save of it. */
export function runLint(
  shelf: Shelf,
  name: string,
  options: LintOptions,
  talk: Talk,
): number | Promise<number> {
  if (options.watch && options.json) throw new BadInput(LINT_TALK_EN['watch-json'])
  if (options.out !== undefined && !options.watch) throw new BadInput(LINT_TALK_EN['out-alone'])
  const file = pathOf(shelf, name)
  if (!options.watch) return once(shelf, file, options.json === true, talk)
  const out = options.out ?? svgFor(name, file)
  if (isSameFile(file, out)) throw new BadInput(say(LINT_TALK_EN['same-file'], { file: out }))
  return watch(shelf, file, out, talk)
}
