import { defineConfig } from 'tsdown'

const common = {
  platform: 'node' as const,
  target: 'node20.19',
  fixedExtension: false,
  dts: false,
  clean: true,
  logLevel: 'warn' as const,
}

export default defineConfig([
  {
    ...common,
    entry: { main: 'apps/cli/src/main.ts' },
    outDir: 'apps/cli/dist',
    deps: { alwaysBundle: [/.*/u] },
  },
  {
    ...common,
    entry: { run: 'bench/run.ts' },
    outDir: 'bench/dist',
    deps: { alwaysBundle: [/^@tubwright/u, 'zod', 'yaml'], neverBundle: ['eecircuit-engine'] },
  },
])
