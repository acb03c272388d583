import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  oxc: { jsx: { runtime: 'automatic' } },
  test: {
    include: ['test/**/*.test.{ts,tsx}'],
    environment: 'node', // a view test asks for happy-dom in its first line
    testTimeout: 60_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
  },
})
