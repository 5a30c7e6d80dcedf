import { COLOUR_EN, LINE_EN, SHEET_EN, SHEET_PAGE_EN } from '../../words/src/sheet.en.ts'
import { tellFinding, tellMatch } from '../../words/src/tell.ts'
import { SEVERITY_EN } from '../../words/src/terms.en.ts'
import type { SheetWords } from '../src/index.ts'

/** The English of the tests. */
export const WORDS: SheetWords = {
  language: 'en',
  messages: SHEET_EN,
  page: SHEET_PAGE_EN,
  colours: COLOUR_EN,
  lines: LINE_EN,
  severities: SEVERITY_EN,
  findingText: tellFinding,
  questionText: tellMatch,
}
