/** Old and new, as printed. */
export const UNITED_KINGDOM = {
  old: { lines: ['red', 'yellow', 'blue'], neutral: 'black' },
  now: { lines: ['brown', 'black', 'grey'], neutral: 'blue' },
} as const

/** What turned in April 2006, and what did not. */
export const TURNED = [
  { colour: 'black', turned: true },
  { colour: 'blue', turned: true },
  { colour: 'brown', turned: false },
  { colour: 'red', turned: false },
  { colour: 'grey', turned: false },
  { colour: 'green-yellow', turned: false },
] as const

/** What one colour says in two parts of the world. */
export const SAYS = [
  { region: 'US', colour: 'white', means: 'neutral' },
  { region: 'US', colour: 'grey', means: 'neutral' },
  { region: 'US', colour: 'green', means: 'earth' },
  { region: 'US', colour: 'blue', means: 'line' },
  { region: 'CA', colour: 'white', means: 'neutral' },
  { region: 'CA', colour: 'red', means: 'line' },
  { region: 'CA', colour: 'orange', means: undefined },
  { region: 'EU', colour: 'grey', means: 'line' },
  { region: 'EU', colour: 'blue', means: 'neutral' },
  { region: 'EU', colour: 'green', means: undefined },
  { region: 'EU', colour: 'white', means: undefined },
  { region: 'UK', colour: 'black', means: 'line' },
  { region: 'AU', colour: 'black', means: 'neutral' },
  { region: 'AU', colour: 'red', means: 'line' },
  { region: 'NZ', colour: 'green', means: undefined },
] as const

/** Whether tape at the ends may give a conductor its colour. */
export const TAPE = [
  { awg: 14, taped: false },
  { awg: 8, taped: false },
  { awg: 6, taped: false },
  { awg: 5, taped: false },
  { awg: 4, taped: true },
  { awg: 2, taped: true },
  { awg: 0, taped: true },
] as const

/** Earth and neutral in one. */
export const JOINED = {
  mm2: 16,
  ways: [
    ['green-yellow', 'blue'],
    ['blue', 'green-yellow'],
  ],
} as const
