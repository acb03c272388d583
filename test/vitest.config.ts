import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** Tests that only read: one module cache a worker, so that the data are read once and not once a file. */
const READ_ONLY = 'test/{engine,graph-data,invariants,published}/**/*.test.ts'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  oxc: { jsx: { runtime: 'automatic' } },
  test: {
    environment: 'node', // a view test asks for happy-dom in its first line
    testTimeout: 60_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
    projects: [
      { extends: true, test: { name: 'data', include: [READ_ONLY], isolate: false } },
      { extends: true, test: { name: 'rest', include: ['test/**/*.test.{ts,tsx}'], exclude: [READ_ONLY] } },
    ],
  },
})
