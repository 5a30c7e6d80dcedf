import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { bundleOptions, bundlePlugins } from './build/plugins.ts'
import { writeShell } from './build/shell.ts'

export default defineConfig({
  // Relative, so that the bundle works in any folder of any host.
  base: './',
  plugins: [react(), writeShell(), ...bundlePlugins(new URL('./', import.meta.url))],
  worker: { format: 'es' },
  build: bundleOptions,
})
