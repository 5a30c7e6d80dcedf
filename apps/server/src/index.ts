export { policyHeader, policyMeta } from './policy.ts'
export type { Running, ServeOptions } from './serve.ts'
export { isTaken, serve } from './serve.ts'
