import type {
  Change,
  Finding,
  OpenQuestion,
  Severity,
  SheetMessage,
  SheetParam,
  SheetText,
  WireRole,
} from '@tubwright/core'
import type { SHEET_PAGE_EN, Words } from '@tubwright/words'
import { say } from '@tubwright/words'

/** Everything that a sheet needs of one language. */
export interface SheetWords {
  /** As in the `lang` attribute. */
  readonly language: string
  readonly messages: Readonly<Record<SheetMessage, string>>
  readonly page: Readonly<Record<keyof typeof SHEET_PAGE_EN, string>>
  /** By colour name; a colour that is not listed is said as it is named. */
  readonly colours: Readonly<Record<string, string>>
  readonly lines: Readonly<Record<WireRole, string>>
  readonly severities: Readonly<Record<Severity, string>>
  readonly findingText: (finding: Finding) => string
  readonly changeText: (change: Change) => string
  /** What is to be done about a change, by its kind. */
  readonly toGet: Readonly<Record<Change['kind'], string>>
  readonly questionText: (question: OpenQuestion) => string
  /** That nobody qualified has read these words yet; it stands at the head of whatever is printed. */
  readonly unreviewedNotice?: string
}

/**
 * What a sheet needs of a language.
 *
 * @param nameOf - what a person calls a command of the box
 */
export function sheetWords(words: Words, nameOf: (command: string) => string): SheetWords {
  const { page, hasUnreviewed, unreviewedNotice } = words
  return {
    language: words.language,
    messages: words.sheet,
    // A part alone has a head of its own, which must say it too.
    page: hasUnreviewed ? { ...page, partOnly: `${page.partOnly} ${unreviewedNotice}` } : page,
    colours: words.colours,
    lines: words.lines,
    severities: words.severities,
    findingText: finding => words.tellFinding(finding, nameOf),
    questionText: words.tellMatch,
    changeText: change => words.tellChange(change),
    toGet: words.toGet,
    ...(hasUnreviewed ? { unreviewedNotice } : {}),
  }
}

const isText = (param: SheetParam): param is SheetText =>
  typeof param === 'object' && 'message' in param

function paramText(param: SheetParam, words: SheetWords): string | number {
  if (typeof param === 'string' || typeof param === 'number') return param
  if (isText(param)) return textOf(param, words)
  return param.map(each => String(paramText(each, words))).join(', ')
}

/** A sentence of the sheet, made readable. */
export const textOf = ({ message, params }: SheetText, words: SheetWords): string =>
  say(
    words.messages[message],
    Object.fromEntries(
      Object.entries(params).map(([name, param]) => [name, paramText(param, words)]),
    ),
  )

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
