import { tellDiagnostic } from '@tubwright/words'
import { Command, CommanderError } from 'commander'
import type { Shelf } from './catalogue.ts'
import { demoFolder, readShelf } from './catalogue.ts'
import { runCatalog } from './commands/catalog.ts'
import { runDemo } from './commands/demo.ts'
import { runMatch } from './commands/match.ts'
import type { PlanOptions } from './commands/plan.ts'
import { runPlan } from './commands/plan.ts'
import type { SheetOptions } from './commands/sheet.ts'
import { runSheet } from './commands/sheet.ts'
import type { SolveOptions } from './commands/solve.ts'
import { runSolve } from './commands/solve.ts'
import type { VerifyOptions } from './commands/verify.ts'
import { runVerify } from './commands/verify.ts'
import { BadInput, EXIT } from './exits.ts'
import { plain, talkTo } from './talk.ts'

const talk = talkTo(process.stdout, process.stderr, process.env)

const EXITS = `
Ends with 0 when all is fine, 1 when something breaks or needs heeding, 2 on bad input, 3 when the
fault is ours.`

interface Global {
  readonly catalog?: string
}

const program = new Command('tubwright')
  .description(
    'Plans the refit of a hot tub with another control box, and proves the plan by solving its circuit.',
  )
  .option('--catalog <folder>', 'folder with boxes, devices and tubs (default: the demo)')
  .showHelpAfterError('(add --help for the words that may stand here)')
  .exitOverride()
  .configureOutput({ outputError: (text, write) => write(plain(text)) })
  .addHelpText('after', EXITS)
  .version('0.1.0')

const shelf = (): Shelf => readShelf(program.opts<Global>().catalog ?? demoFolder())

const run =
  <Options>(action: (name: string, options: Options) => number) =>
  (name: string, options: Options): void => {
    process.exitCode = action(name, options)
  }

const SURVEY = ['<survey>', 'a survey file, or a tub of the catalogue by its id'] as const
const BOX = [
  '--box <box>',
  'a box of the catalogue, or a box file (default: the best that may serve)',
] as const
const LANDING = ['--landing <file>', 'a landing as built (default: the plan)'] as const
const JSON_FORM = ['--json', 'the wire form, for programs'] as const

program
  .command('match')
  .description('which boxes may serve this tub, and every reason why the others cannot')
  .argument(...SURVEY)
  .option(...JSON_FORM)
  .addHelpText('after', '\nExample:\n  tubwright match everyday-240-circulation')
  .action(run<{ json?: boolean }>((name, { json }) => runMatch(shelf(), name, json === true, talk)))

program
  .command('plan')
  .description('where every wire lands, which jumpers move, what is set; proven')
  .argument(...SURVEY)
  .option(...BOX)
  .option('--landing <file>', 'write the planned landing there')
  .option(...JSON_FORM)
  .addHelpText(
    'after',
    '\nExample:\n  tubwright plan everyday-240-circulation --landing landing.yaml',
  )
  .action(run<PlanOptions>((name, options) => runPlan(shelf(), name, options, talk)))

program
  .command('verify')
  .description('judge a landing, as planned or as built, before power')
  .argument(...SURVEY)
  .option(...BOX)
  .option(...LANDING)
  .option(...JSON_FORM)
  .addHelpText(
    'after',
    '\nExample:\n  tubwright verify everyday-240-circulation --landing landing.yaml',
  )
  .action(run<VerifyOptions>((name, options) => runVerify(shelf(), name, options, talk)))

program
  .command('solve')
  .description('volts and amps of everything in one mode, or its netlist for any simulator')
  .argument(...SURVEY)
  .option(...BOX)
  .option(...LANDING)
  .option('--mode <commands>', 'commands that are on, joined by +, or off', 'off')
  .option('--spice', 'print the network as a SPICE netlist')
  .option('--map <file>', 'with --spice: write there what each name of the netlist stands for')
  .option(...JSON_FORM)
  .addHelpText(
    'after',
    '\nExample:\n  tubwright solve everyday-240-circulation --mode circulate+heat+ozone --spice',
  )
  .action(run<SolveOptions>((name, options) => runSolve(shelf(), name, options, talk)))

program
  .command('sheet')
  .description('the sheet to work from, as one HTML file for screen and print')
  .argument(...SURVEY)
  .option(...BOX)
  .option('--out <file>', 'where to write it (default: standard output)')
  .addHelpText('after', '\nExample:\n  tubwright sheet everyday-240-circulation --out sheet.html')
  .action(run<SheetOptions>((name, options) => runSheet(shelf(), name, options, talk)))

program
  .command('catalog')
  .description('what the catalogue holds')
  .option(...JSON_FORM)
  .addHelpText('after', '\nExample:\n  tubwright catalog')
  .action(({ json }: { json?: boolean }) => {
    process.exitCode = runCatalog(shelf(), json === true, talk)
  })

program
  .command('demo')
  .description('plan the demo tub, print the summary, write its sheet')
  .option('--out <file>', 'where to write the sheet', 'tubwright-sheet.html')
  .action(({ out }: { out: string }) => {
    process.exitCode = runDemo(shelf(), out, talk)
  })

function report(error: unknown): number {
  if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.fine : EXIT.badInput
  if (error instanceof BadInput) {
    talk.note(plain(error.message))
    for (const each of error.diagnostics)
      talk.note(plain(`${each.file}:${each.line}:${each.column}: ${tellDiagnostic(each)}`))
    return EXIT.badInput
  }
  talk.note(
    `This is a fault of tubwright, not of what you gave it:\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}`,
  )
  return EXIT.ourFault
}

// A reader that goes away, such as `| head`, is no fault of anybody's.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(EXIT.fine)
  throw error
})

try {
  program.parse()
} catch (error) {
  process.exitCode = report(error)
}
