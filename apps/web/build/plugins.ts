import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'
import { noteInputs } from './note-inputs.ts'
import { offline } from './offline.ts'
import { pack } from './pack.ts'
import { writePolicy } from './write-policy.ts'

/** What makes a built page into an app that runs anywhere, with and without a network. */
export function bundlePlugins(web: URL): readonly Plugin[] {
  const pathTo = (relative: string) => fileURLToPath(new URL(relative, web))
  return [
    writePolicy(),
    // In this order: what is kept offline is what was built, what is packed is both.
    noteInputs(pathTo('../..')),
    offline(pathTo('src/offline/service-worker.ts')),
    pack(),
  ]
}

/** How the page is built, for the app and for the small pages that tests build. */
export const bundleOptions = {
  target: 'es2023',
  emptyOutDir: true,
  assetsInlineLimit: 0,
  reportCompressedSize: false,
  // It is for browsers that are older than the target.
  modulePreload: { polyfill: false },
  rolldownOptions: { checks: { pluginTimings: false } },
} as const
