import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Plugin } from 'vite'

const SOURCE = fileURLToPath(new URL('./service-worker.js', import.meta.url))

const integrityOf = (content: string | Uint8Array): string =>
  `sha256-${createHash('sha256').update(content).digest('base64')}`

/** Files that are served as they are, by path. */
const publicFiles = (folder: string): [string, string][] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => [file.slice(folder.length), integrityOf(readFileSync(file))])

/** Writes service-worker.js with the hashes of all files of this build; their hash is the version. */
export function serviceWorker(): Plugin {
  let publicFolder = ''
  return {
    name: 'understudy-service-worker',
    apply: 'build',
    enforce: 'post',
    configResolved: (config) => void (publicFolder = config.publicDir),
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const built = Object.values(bundle).map((file): [string, string] => [
          `/${file.fileName}`,
          integrityOf(file.type === 'chunk' ? file.code : file.source),
        ])
        const files = [...built, ...publicFiles(publicFolder)].sort(([a], [b]) => (a < b ? -1 : 1))
        const source = readFileSync(SOURCE, 'utf8')
        const version = createHash('sha256').update(source).update(JSON.stringify(files)).digest('hex').slice(0, 16)
        const head = `const VERSION = '${version}'\nconst FILES = ${JSON.stringify(Object.fromEntries(files), null, 2)}\n`
        this.emitFile({ type: 'asset', fileName: 'service-worker.js', source: head + source })
      },
    },
  }
}
