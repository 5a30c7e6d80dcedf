import type { Plugin } from 'vite'
import { policyMeta } from '../../server/src/policy.ts'

/** Puts the policy into the page itself: it holds even where the host sends no header. */
export function writePolicy(): Plugin {
  return {
    name: 'tubwright-write-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: policyMeta() },
        // First of all: it binds only what comes after it.
        injectTo: 'head-prepend',
      },
    ],
  }
}
