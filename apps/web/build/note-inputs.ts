import { writeFileSync } from 'node:fs'
import type { Plugin } from 'vite'
import { inputsOf, noteIn } from './inputs.ts'

/** Leaves a note of what the bundle was made from, so that it can be told whether it still is. */
export function noteInputs(root: string): Plugin {
  let inputs = ''
  return {
    name: 'tubwright-note-inputs',
    apply: 'build',
    // Read at the start: what is saved while the build runs may or may not be in it.
    buildStart() {
      inputs = inputsOf(root.replace(/[\\/]$/u, ''))
    },
    writeBundle({ dir }) {
      if (dir) writeFileSync(noteIn(dir), inputs)
    },
  }
}
