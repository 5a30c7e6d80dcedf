import { defineConfig } from 'tsdown'

export default defineConfig([
  {
    entry: { main: 'apps/cli/src/main.ts' },
    outDir: 'apps/cli/dist',
    platform: 'node',
    target: 'node20.19',
    deps: { alwaysBundle: [/.*/u] },
    fixedExtension: false,
    dts: false,
    clean: true,
    logLevel: 'warn',
  },
])
