/** The work sheet in the page. */
export const SHEET_WEB_EN = {
  'sheet.title': 'Sheet',
  'sheet.whole': 'The whole sheet',
  'sheet.lid': 'Lid sheet',
  'sheet.parts': 'What to print',
  'sheet.part-front': 'Front page',
  'sheet.part-bring': 'To bring',
  'sheet.part-board': 'Boards',
  'sheet.part-ladder': 'Ladder',
  'sheet.part-wires': 'Wire table',
  'sheet.part-tables': 'Tables',
  'sheet.part-steps': 'Steps',
  'sheet.part-load-sheet': 'Load sheet',
  'sheet.print': 'Print',
  'sheet.save': 'Save as a file',
  'sheet.preview': 'The sheet as it will be printed',
  'sheet.no-plan': 'No plan is taken yet, so there is no sheet.',
  'sheet.job-file': 'The whole job',
  'sheet.job-file-help':
    'One file with everything: survey, plan, ticks, readings, photos. Somebody else can open it, go on, and send it back: both copies are merged.',
} as const
