import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { buildApp } from '#api/app.ts'
import { FaultyData, openWorld } from '#api/open-world.ts'
import { loadRaw } from '#load/load-raw.ts'
import { packRaw } from '#load/pack-raw.ts'

const ROOT = fileURLToPath(new URL('..', import.meta.url))
const WEB = join(ROOT, 'web')
const WEB_BUILT = join(WEB, 'dist')
/** what the page is made of: it carries the engine, so as to answer without a server */
const PAGE_SOURCES = [WEB, ...['engine', 'contract', 'answers'].map((part) => join(ROOT, 'server', part))]
const MOST_PORT = 65_535

interface Settings {
  port: number
  host: string
  /** folder for what people store; made when something is stored, not before */
  dataDir: string
}

/** A fault of the one who starts the server: said in one line, without a stack. */
class BadStart extends Error {}

function portOf(text: string | undefined): number {
  if (text === undefined || text === '') return 8080
  const port = Number(text)
  if (/^\d+$/.test(text) && port <= MOST_PORT) return port
  throw new BadStart(`PORT: expected a whole number from 0 to ${MOST_PORT}, got ${text}`)
}

const settingsOf = (env: NodeJS.ProcessEnv): Settings => ({
  port: portOf(env['PORT']),
  host: env['HOST'] || '127.0.0.1',
  dataDir: resolve(env['DATA_DIR'] || join(ROOT, 'data')),
})

/** @throws BadStart when something else than a folder has that name */
function mustBeFolderOrNothing(path: string): void {
  if (existsSync(path) && !statSync(path).isDirectory()) throw new BadStart(`DATA_DIR: ${path} is not a folder`)
}

/** Time of the last change below a folder [ms since 1970], built files left out. */
function newestChange(folder: string): number {
  const entries = readdirSync(folder, { withFileTypes: true })
  const times = entries.map((entry) => {
    const path = join(folder, entry.name)
    if (path === WEB_BUILT || entry.name === 'node_modules') return 0
    return entry.isDirectory() ? newestChange(path) : statSync(path).mtimeMs
  })
  return Math.max(0, ...times)
}

/** Builds the page where it is missing or older than its sources. @returns its folder, undefined when there is no page */
async function builtPage(): Promise<string | undefined> {
  if (!existsSync(join(WEB, 'index.html'))) return undefined
  const page = join(WEB_BUILT, 'index.html')
  if (!existsSync(page) || statSync(page).mtimeMs < Math.max(...PAGE_SOURCES.map(newestChange))) {
    const { build } = await import('vite') // slow to load and rarely needed
    await build({ configFile: join(WEB, 'vite.config.ts'), logLevel: 'warn' })
  }
  return WEB_BUILT
}

const programVersion = (): string =>
  String((JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as { version?: unknown }).version ?? '0')

async function start(settings: Settings): Promise<void> {
  mustBeFolderOrNothing(settings.dataDir)
  const raw = loadRaw(join(ROOT, 'graph-data'))
  const world = openWorld(raw)
  const webRoot = await builtPage()
  const app = await buildApp({
    world,
    graphData: packRaw(raw),
    version: programVersion(),
    logger: { level: 'warn' },
    ...(webRoot !== undefined && { webRoot }),
  })
  for (const signal of ['SIGTERM', 'SIGINT'] as const) {
    process.once(signal, () => void app.close().then(() => process.exit(0)))
  }
  await app.listen({ port: settings.port, host: settings.host })
  const { port } = app.server.address() as AddressInfo
  const host = settings.host.includes(':') ? `[${settings.host}]` : settings.host
  console.log(`Understudy listens on http://${host}:${port}`)
  // The index of names takes a second to make: the first who looks one up need not wait for it.
  setImmediate(() => void world.knowledge.names)
}

/** One line for what the starter can mend, everything for what is our fault. */
function say(error: unknown): void {
  const code = error instanceof Error ? (error as NodeJS.ErrnoException).code : undefined
  const plain = error instanceof BadStart || error instanceof FaultyData || code === 'EADDRINUSE' || code === 'EACCES'
  console.error(plain && error instanceof Error ? error.message : error)
}

try {
  await start(settingsOf(process.env))
} catch (error) {
  say(error)
  process.exitCode = 1
}
