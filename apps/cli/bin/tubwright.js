#!/usr/bin/env node
import { existsSync } from 'node:fs'

const built = new URL('../dist/main.js', import.meta.url)
if (existsSync(built)) await import(built.href)
else {
  process.stderr.write('tubwright is not built yet: run "npm run build" once.\n')
  process.exitCode = 2
}
