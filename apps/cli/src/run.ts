import { Command, CommanderError } from 'commander'
import type { Shelf } from './catalogue.ts'
import type { PlanOptions } from './commands/plan.ts'
import type { SheetOptions } from './commands/sheet.ts'
import type { SolveOptions } from './commands/solve.ts'
import type { VerifyOptions } from './commands/verify.ts'
import { BadInput, EXIT } from './exits.ts'
import type { Environment, Streams, Talk } from './talk.ts'
import { plain, talkTo } from './talk.ts'

const EXITS = `
Ends with 0 when all is fine, 1 when something breaks or needs heeding, 2 on bad input, 3 when the
fault is ours.`

const CATALOG = [
  '--catalog <folder>',
  'folder with boxes, devices and tubs (default: the demo)',
] as const
const SURVEY = ['<survey>', 'a survey file, or a tub of the catalogue by its id'] as const
const BOX = [
  '--box <box>',
  'a box of the catalogue, or a box file (default: the best that may serve)',
] as const
const LANDING = ['--landing <file>', 'a landing as built (default: the plan)'] as const
const JSON_FORM = ['--json', 'the wire form, for programs'] as const

const example = (words: string): string => `\nExample:\n  tubwright ${words}`

/** What a command does, given everything it is about. It is loaded only when it is called. */
type Action<Options> = (shelf: Shelf, name: string, options: Options, talk: Talk) => number

interface Ending {
  code: number
}

function programFor({ stdout, stderr }: Streams): Command {
  return new Command('tubwright')
    .description(
      'Plans the refit of a hot tub with another control box, and proves the plan by solving its circuit.',
    )
    .option(...CATALOG)
    .showHelpAfterError('(add --help for the words that may stand here)')
    .exitOverride()
    .configureOutput({
      writeOut: text => stdout.write(text),
      writeErr: text => stderr.write(text),
      outputError: (text, write) => write(plain(text)),
    })
    .addHelpText('after', example('demo'))
    .addHelpText('afterAll', EXITS)
    .version('0.1.0')
}

/** Commands, each of which reads the catalogue and loads its own code only once it is called. */
function addCommands(program: Command, talk: Talk, ending: Ending): void {
  const act = async <Options extends object>(
    name: string,
    command: Command,
    load: () => Promise<Action<Options>>,
  ): Promise<void> => {
    const { demoFolder, readShelf } = await import('./catalogue.ts')
    const { heedTo } = await import('./heed.ts')
    const action = await load()
    const { catalog, ...options } = command.optsWithGlobals<Options & { catalog?: string }>()
    const shelf = readShelf(catalog ?? demoFolder(), heedTo(talk))
    ending.code = action(shelf, name, options as never, talk)
  }
  const about = <Options extends object>(
    name: string,
    description: string,
    words: string,
    load: () => Promise<Action<Options>>,
  ): Command =>
    program
      .command(name)
      .description(description)
      .argument(...SURVEY)
      .addHelpText('after', example(words))
      .action((survey: string, _: unknown, command: Command) => act(survey, command, load))

  about<{ json?: boolean }>(
    'match',
    'which boxes may serve this tub, and every reason why the others cannot',
    'match everyday-240-circulation',
    async () => (await import('./commands/match.ts')).runMatch,
  )
    .option(...JSON_FORM)
    .option(...CATALOG)
  about<PlanOptions>(
    'plan',
    'where every wire lands, which jumpers move, what is set; proven',
    'plan everyday-240-circulation --out landing.yaml',
    async () => (await import('./commands/plan.ts')).runPlan,
  )
    .option(...BOX)
    .option('--out <file>', 'write the planned landing there')
    .option(...JSON_FORM)
    .option(...CATALOG)
  about<VerifyOptions>(
    'verify',
    'judge a landing, as planned or as built, before power',
    'verify everyday-240-circulation --landing landing.yaml',
    async () => (await import('./commands/verify.ts')).runVerify,
  )
    .option(...BOX)
    .option(...LANDING)
    .option(...JSON_FORM)
    .option(...CATALOG)
  about<SolveOptions>(
    'solve',
    'volts and amps of everything in one mode, or its netlist for any simulator',
    'solve everyday-240-circulation --mode circulate+heat+ozone --spice',
    async () => (await import('./commands/solve.ts')).runSolve,
  )
    .option(...BOX)
    .option(...LANDING)
    .option('--mode <commands>', 'commands that are on, joined by +, or off', 'off')
    .option('--spice', 'print the network as a SPICE netlist')
    .option('--map <file>', 'with --spice: write there what each name of the netlist stands for')
    .option(...JSON_FORM)
    .option(...CATALOG)
  about<SheetOptions>(
    'sheet',
    'the sheet to work from, as one HTML file for screen and print',
    'sheet everyday-240-circulation --out sheet.html',
    async () => (await import('./commands/sheet.ts')).runSheet,
  )
    .option(...BOX)
    .option('--out <file>', 'where to write it (default: standard output)')
    .option(...CATALOG)

  program
    .command('catalog')
    .description('what the catalogue holds')
    .option(...JSON_FORM)
    .option(...CATALOG)
    .addHelpText('after', example('catalog'))
    .action((_: unknown, command: Command) =>
      act('', command, async () => (await import('./commands/catalog.ts')).runCatalog),
    )
  program
    .command('demo')
    .description('plan the demo tub, print the summary, write its sheet')
    .option('--out <file>', 'where to write the sheet', 'tubwright-sheet.html')
    .option(...CATALOG)
    .addHelpText('after', example('demo --out sheet.html'))
    .action((_: unknown, command: Command) =>
      act('', command, async () => (await import('./commands/demo.ts')).runDemo),
    )
}

/**
 * Tells an error to the person who can mend it.
 *
 * @returns what the program ends with: bad input, or a fault of ours
 */
export async function report(error: unknown, talk: Talk): Promise<number> {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.badInput
  if (error instanceof BadInput) {
    talk.note(error.message)
    if (error.diagnostics.length === 0) return EXIT.badInput
    const { tellLocated } = await import('./heed.ts')
    for (const each of error.diagnostics) talk.note(tellLocated(each))
    return EXIT.badInput
  }
  const told = error instanceof Error ? (error.stack ?? error.message) : String(error)
  talk.note(`This is a fault of tubwright, not of what you gave it:\n${told}`)
  return EXIT.ourFault
}

/**
 * The whole program: words in, an exit code out. Writes only to the streams, and to named files.
 *
 * @param words - what stands behind the program's name
 */
export async function run(
  words: readonly string[],
  streams: Streams,
  environment: Environment,
): Promise<number> {
  const talk = talkTo(streams, environment)
  if (words.includes('')) {
    talk.note(
      'One of the words is empty (""), as an unset variable leaves it. Name a file or a tub.',
    )
    return EXIT.badInput
  }
  const ending: Ending = { code: EXIT.fine }
  const program = programFor(streams)
  addCommands(program, talk, ending)
  try {
    await program.parseAsync(words, { from: 'user' })
    return ending.code
  } catch (error) {
    return report(error, talk)
  }
}
