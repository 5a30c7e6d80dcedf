import { defineConfig } from 'vitest/config'

const BROWSER = 'apps/web/test/**/*.browser.test.ts'
const ELSEWHERE = ['**/node_modules/**', '**/dist/**']
const common = {
  testTimeout: 120_000,
  hookTimeout: 120_000,
  // Modules hold no state, so files may share them: saves half of the time that goes into loading.
  isolate: false,
}

export default defineConfig({
  test: {
    maxWorkers: 2,
    projects: [
      {
        test: {
          ...common,
          name: 'node',
          include: [
            'packages/*/test/**/*.test.ts',
            'apps/*/test/**/*.test.{ts,tsx}',
            'bench/**/*.test.ts',
          ],
          exclude: [...ELSEWHERE, BROWSER],
        },
      },
      {
        test: {
          ...common,
          name: 'browser',
          include: [BROWSER],
          exclude: ELSEWHERE,
          globalSetup: 'apps/web/test/support/global-setup.ts',
          setupFiles: 'apps/web/test/support/each-file.ts',
        },
      },
    ],
  },
})
