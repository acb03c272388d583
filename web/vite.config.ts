import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import type { Plugin } from 'vite'
import { serviceWorker } from './offline/service-worker-plugin.ts'

/** The page itself is asked for after its words; the browser may fetch it meanwhile. */
function preloadStart(): Plugin {
  return {
    name: 'understudy-preload-start',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler(_html, { bundle = {} }) {
        const chunks = Object.values(bundle).filter((file) => file.type === 'chunk')
        const start = chunks.find(({ name }) => name === 'start')
        const entry = chunks.find(({ isEntry }) => isEntry)
        const scripts = start ? [start.fileName, ...start.imports].filter((file) => file !== entry?.fileName) : []
        const link = (rel: string) => (file: string) => ({
          tag: 'link',
          attrs: { rel, crossorigin: true, href: `/${file}` },
          injectTo: 'head' as const,
        })
        return [
          ...scripts.map(link('modulepreload')),
          ...[...(start?.viteMetadata?.importedCss ?? [])].map(link('stylesheet')),
        ]
      },
    },
  }
}

const START = fileURLToPath(new URL('./start.tsx', import.meta.url))
const ENTRY = fileURLToPath(new URL('./main.tsx', import.meta.url))

interface Modules {
  getModuleInfo: (id: string) => { importedIds: readonly string[] } | null
}

/** A module and all that it cannot do without. */
function wholeOf(id: string, modules: Modules, seen = new Set<string>()): Set<string> {
  if (seen.has(id)) return seen
  seen.add(id)
  for (const next of modules.getModuleInfo(id)?.importedIds ?? []) wholeOf(next, modules, seen)
  return seen
}

/** What the first screen needs comes as one file: as many small ones it packs worse. */
const chunkOf = (id: string, modules: Modules): string | null =>
  wholeOf(START, modules).has(id) && !wholeOf(ENTRY, modules).has(id) ? 'start' : null

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  plugins: [react(), preloadStart(), serviceWorker()],
  worker: { format: 'es' },
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    rolldownOptions: {
      output: {
        codeSplitting: { includeDependenciesRecursively: false, groups: [{ name: chunkOf, debugName: 'start' }] },
      },
    },
    assetsInlineLimit: 0, // an inlined file is a data: address, which our content policy refuses
  },
})
