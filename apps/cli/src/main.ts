import { EXIT } from './exits.ts'
import { run } from './run.ts'

let lost = false

for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    // A reader that goes away, such as `| head`, is no fault of anybody's.
    if (error.code === 'EPIPE' || lost) return
    lost = true
    process.stderr.write(`The output was not written: ${error.message}\n`)
  })

process.on('exit', () => {
  if (lost) process.exitCode = EXIT.badInput
})

process.exitCode = await run(process.argv.slice(2), process, process.env)
