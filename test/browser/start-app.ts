import { execFile } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { promisify } from 'node:util'
import { chromium } from 'playwright-core'
import type { Browser, Page } from 'playwright-core'
import { buildApp } from '#api/app.ts'
import { packRaw } from '#load/pack-raw.ts'
import { realRaw, realWorld } from '../helpers.ts'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
const FLAGS = ['--no-sandbox', '--disable-background-networking', '--disable-component-update', '--disable-sync']
const STEP_MS = 30_000 // the first question of a fresh server is the slowest

export interface Started {
  address: string
  browser: Browser
  stop: () => Promise<void>
}

/** Builds the page as it stands into a folder of its own, so that no other test finds it half built. */
export async function builtPage(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'understudy-page-'))
  const words = ['build', '--config', 'web/vite.config.ts', '--outDir', folder, '--emptyOutDir', '--logLevel', 'warn']
  const env = { ...process.env, NODE_ENV: 'production' }
  await promisify(execFile)(process.execPath, ['node_modules/vite/bin/vite.js', ...words], { cwd: ROOT, env })
  return folder
}

export const launch = (): Promise<Browser> => chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS })

/** The whole program with the real data on a free port, and a browser beside it. */
export async function startApp(): Promise<Started> {
  const webRoot = await builtPage()
  const app = await buildApp({ world: realWorld(), graphData: packRaw(realRaw()), webRoot })
  const address = await app.listen({ port: 0, host: '127.0.0.1' })
  const browser = await launch()
  const stop = async () => {
    await browser.close()
    await app.close()
    await rm(webRoot, { recursive: true })
  }
  return { address, browser, stop }
}

export interface Opened {
  page: Page
  /** what the console complains of, and every request to another host */
  faults: string[]
}

/** A fresh page with nothing kept, as wide as asked. */
export async function openPage({ browser, address }: Started, width: number): Promise<Opened> {
  const context = await browser.newContext({ viewport: { width, height: 900 }, reducedMotion: 'reduce' })
  const page = await context.newPage()
  const faults: string[] = []
  page.setDefaultTimeout(STEP_MS)
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()))
  page.on('pageerror', (error) => faults.push(String(error)))
  page.on('request', (request) => !request.url().startsWith(`${address}/`) && faults.push(`asks ${request.url()}`))
  await page.goto(`${address}/`)
  await page.getByRole('button', { name: 'Put on the bench' }).waitFor()
  return { page, faults }
}
