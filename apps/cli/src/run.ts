import { Command, CommanderError } from 'commander'
import type { Shelf } from './catalogue.ts'
import type { DescribeOptions } from './commands/describe.ts'
import type { LintOptions } from './commands/lint.ts'
import type { MatchOptions } from './commands/match.ts'
import type { MeterOptions } from './commands/meter.ts'
import type { PlanOptions } from './commands/plan.ts'
import type { SheetOptions } from './commands/sheet.ts'
import type { SolveOptions } from './commands/solve.ts'
import type { SupplyOptions } from './commands/supply.ts'
import type { VerifyOptions } from './commands/verify.ts'
import { BadInput, EXIT } from './exits.ts'
import type { Environment, Streams, Talk } from './talk.ts'
import { plain, talkTo } from './talk.ts'

const EXITS = `
Ends with 0 when all is fine, 1 when something breaks or needs heeding, 2 on bad input, 3 when the
fault is ours.`

const LINT_EXITS = `
Ends with 0 when it is clean or has notices only, 1 when there are warnings, 2 when it cannot be read.`

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
/** As in the documents package, which is loaded only when it is asked for; a test compares them. */
export const SHEET_PARTS = 'front, bring, board, ladder, wires, tables, steps, load-sheet'
const JSON_FORM = ['--json', 'the wire form, for programs'] as const

const example = (words: string): string => `\nExample:\n  tubwright ${words}`

/** What a command does, given everything it is about. It is loaded only when it is called. */
type Action<Options> = (
  shelf: Shelf,
  name: string,
  options: Options,
  talk: Talk,
) => number | Promise<number>

interface Ending {
  code: number
}

/** Reads the catalogue, loads a command's code, does it. */
type Act = <Options extends object>(
  name: string,
  command: Command,
  load: () => Promise<Action<Options>>,
) => Promise<void>

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
    .addHelpText('afterAll', ({ command }) => (command.name() === 'lint' ? LINT_EXITS : EXITS))
    .version('0.1.0')
}

/** Commands, each of which reads the catalogue and loads its own code only once it is called. */
function addCommands(program: Command, talk: Talk, ending: Ending): void {
  const act: Act = async <Options extends object>(
    name: string,
    command: Command,
    load: () => Promise<Action<Options>>,
  ): Promise<void> => {
    const { demoFolder, readShelf } = await import('./catalogue.ts')
    const { heedTo } = await import('./heed.ts')
    const action = await load()
    const { catalog, ...options } = command.optsWithGlobals<Options & { catalog?: string }>()
    const shelf = readShelf(catalog ?? demoFolder(), heedTo(talk))
    ending.code = await action(shelf, name, options as never, talk)
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

  about<MatchOptions>(
    'match',
    'which boxes may serve this tub, and every reason why the others cannot',
    'match everyday-240-circulation\n  tubwright match no-box-120-ozonator-no-neutral --changes',
    async () => (await import('./commands/match.ts')).runMatch,
  )
    .option('--changes', 'for each box that cannot: the cheapest changes at the tub that would do')
    .option(...JSON_FORM)
    .option(...CATALOG)
  about<PlanOptions>(
    'plan',
    'where every wire lands, which jumpers move, what is set; proven',
    'plan everyday-240-circulation --out landing.yaml\n  tubwright plan no-box-120-ozonator-no-neutral --box alder-240 --with-changes',
    async () => (await import('./commands/plan.ts')).runPlan,
  )
    .option(...BOX)
    .option('--with-changes', 'where a box cannot serve: plan the tub with the cheapest changes')
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
  about<SupplyOptions>(
    'supply',
    'whether what feeds the tub is good enough, piece by piece, and by whose rule; no box needed',
    'supply everyday-240-circulation\n  tubwright supply everyday-240-circulation --page page.html',
    async () => (await import('./commands/supply.ts')).runSupply,
  )
    .option('--box <box>', 'count the heater of this box, id or file')
    .option('--landing <file>', 'count its box and what that is set to')
    .option('--page <file>', 'write the page for the electrician there, as one HTML file for print')
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
  about<MeterOptions>(
    'meter',
    'what an ohmmeter or an insulation tester reads between two points, power off',
    'meter everyday-240-circulation --from box.H1 --to box.H2 --plugged heater',
    async () => (await import('./commands/meter.ts')).runMeter,
  )
    .option(...BOX)
    .option(...LANDING)
    .requiredOption('--from <point>', 'a terminal (box.H1), an end (pump-a.high), pump-a.metal')
    .requiredOption('--to <point>', 'another')
    .option('--plugged <loads>', 'loads or ends that are in, joined by commas; all, or none', 'all')
    .option('--supply <how>', 'off the box, or landed: open or closed at its disconnect', 'open')
    .option('--at-temperature <degrees>', 'of the probes', '20 °C')
    .option('--insulation', 'an insulation test at 500 V direct, and what is unplugged for it')
    .option(...JSON_FORM)
    .option(...CATALOG)
  about<SheetOptions>(
    'sheet',
    'the sheet to work from, as one HTML file for screen and print',
    'sheet everyday-240-circulation --out sheet.html\n  tubwright sheet no-box-120-ozonator-no-neutral --box alder-240 --with-changes',
    async () => (await import('./commands/sheet.ts')).runSheet,
  )
    .option(...BOX)
    .option(
      '--landing <file>',
      'the sheet of a landing as built or made by hand, and what is wrong with it',
    )
    .option('--with-changes', 'where a box cannot serve: the sheet of the changed tub')
    .option('--part <part>', `one part alone: ${SHEET_PARTS}`)
    .option('--svg <drawing>', 'one drawing alone, as SVG: board or ladder')
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
  addAuthoring(program, talk, ending, act)
}

/** Commands for an author: they check and begin descriptions. */
function addAuthoring(program: Command, talk: Talk, ending: Ending, act: Act): void {
  program
    .command('lint')
    .description('what looks wrong in a box, device or survey; a box is solved by itself')
    .argument('<file>', 'its file, or one of the catalogue by its id')
    .option('--watch', 'check and draw it afresh at each save, until Ctrl-C')
    .option('--out <file>', 'with --watch: where to draw its board (default: beside it, .svg)')
    .option(...JSON_FORM)
    .option(...CATALOG)
    .addHelpText('after', `${example('lint my-box.yaml')}\n  tubwright lint my-box.yaml --watch`)
    .action((file: string, _: unknown, command: Command) =>
      act<LintOptions>(file, command, async () => (await import('./commands/lint.ts')).runLint),
    )
  program
    .command('describe')
    .description('write a commented control box to begin a description from')
    .option('--id <name>', 'its id, and the name of its file', 'my-box')
    .option('--out <folder>', 'where to write it', '.')
    .option(
      '--from <kind>',
      'what to begin from: two-legs, one-leg, convertible, one-phase-230',
      'two-legs',
    )
    .option('--feeds <feeds>', 'what feeds it: two-legs, one-leg, one-phase-230; joined by commas')
    .option(
      '--outputs <outputs>',
      'two-speed-pump, one-speed-pump, circulation-pump, ozonator, blower, light; joined by commas',
    )
    .option('--heater-poles <count>', 'leads of the heater that are switched: 1 or 2')
    .option(
      '--profiles <profiles>',
      'which pump may heat: circulation, low-speed, one-speed; joined by commas',
    )
    .option(
      '--schema <kind>',
      'print the JSON Schema instead: control-box, survey, supply-device, landing',
    )
    .addHelpText(
      'after',
      `${example('describe --id wren-3 --out my-boxes --outputs two-speed-pump,light')}\n  tubwright describe --schema control-box`,
    )
    .action(async (options: DescribeOptions) => {
      ending.code = await (await import('./commands/describe.ts')).runDescribe(options, talk)
    })
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
