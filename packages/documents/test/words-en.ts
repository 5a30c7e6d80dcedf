import {
  COLOUR_EN,
  LINE_EN,
  SEVERITY_EN,
  SHEET_EN,
  SHEET_PAGE_EN,
  TO_GET_EN,
  tellChange,
  tellFinding,
  tellMatch,
} from '@tubwright/words'
import type { SheetWords } from '../src/index.ts'

/** The English of the tests. */
export const WORDS: SheetWords = {
  language: 'en',
  messages: SHEET_EN,
  page: SHEET_PAGE_EN,
  colours: COLOUR_EN,
  lines: LINE_EN,
  severities: SEVERITY_EN,
  findingText: finding => tellFinding(finding),
  questionText: tellMatch,
  changeText: change => tellChange(change),
  toGet: TO_GET_EN,
}
