import { createHash } from 'node:crypto'
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest'
import { realWorld } from '../helpers.ts'
import { expectSound } from './access.ts'
import { missingButton, pasteAndAnswer, recipeOf, untilChecked, useButtons } from './bench-on-page.ts'
import { makeServer } from './server-that-stops.ts'
import type { Server } from './server-that-stops.ts'
import { builtPage, launch } from './start-app.ts'

const SLOW_MS = 240_000
const POLL = { timeout: 60_000 }

let webRoot: string
let server: Server
let browser: Browser
beforeAll(async () => {
  webRoot = await builtPage()
  server = makeServer(webRoot)
  browser = await launch()
}, SLOW_MS)
beforeEach(async () => {
  await server.stop()
  await server.start()
})
afterAll(async () => {
  await browser?.close()
  await server?.stop()
  if (webRoot) rmSync(webRoot, { recursive: true })
})

/** What the browser itself says of a request that failed; the page says it in words. */
const OF_THE_NETWORK = /^Failed to load resource/

async function open(options: BrowserContextOptions = {}): Promise<{ page: Page; faults: string[] }> {
  const context = await browser.newContext({
    viewport: { width: 390, height: 900 },
    reducedMotion: 'reduce',
    ...options,
  })
  const faults: string[] = []
  context.on('request', (request) => {
    if (!request.url().startsWith(`${server.address()}/`)) faults.push(`asks ${request.url()}`)
  })
  const page = await context.newPage()
  page.setDefaultTimeout(60_000)
  page.on('console', (message) => {
    if (message.type() === 'error' && !OF_THE_NETWORK.test(message.text())) faults.push(message.text())
  })
  page.on('pageerror', (error) => faults.push(String(error)))
  await page.goto(`${server.address()}/`)
  return { page, faults }
}

const untilKept = (page: Page) => page.getByText('This page is kept in your browser').waitFor()
const notice = (page: Page) => page.locator('.notice').first().innerText()
const version = realWorld().knowledge.version

test(
  'after one visit the page answers without its server: check, stand-ins, other pages; and says when it is back',
  async () => {
    const { page, faults } = await open()
    await untilKept(page)
    await server.stop()
    await page.reload()
    await pasteAndAnswer(page)
    expect(await notice(page)).toContain(`answers come from this page. Data of version ${version}`)
    await missingButton(page).click()
    await useButtons(page).first().waitFor()
    await expectSound(page)
    await page.goto(`${server.address()}/label`)
    await expect.poll(() => page.getByLabel('List ready to copy').inputValue(), POLL).toContain('Glycerin')
    await page.goto(`${server.address()}/batch`)
    await page.locator('.work').waitFor()
    await page.goto(`${server.address()}/ingredient/sodium-benzoate`)
    await page.locator('.claims').waitFor()
    await page.goto(`${server.address()}/calculation/required-hlb`)
    await page.getByRole('heading', { name: 'Which HLB do these oils ask for?' }).waitFor()
    await page.getByText('8.889').first().waitFor()
    await server.start()
    await expect.poll(() => notice(page), POLL).toContain('The server is back')
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'without any network at all it answers too, and takes a stand-in',
  async () => {
    const { page, faults } = await open()
    await untilKept(page)
    await page.context().setOffline(true)
    await page.reload()
    await pasteAndAnswer(page)
    const first = await recipeOf(page)
    await missingButton(page).click()
    await useButtons(page).first().click()
    await expect.poll(() => missingButton(page).count(), POLL).toBe(0)
    await untilChecked(page)
    const second = await recipeOf(page)
    expect(second).not.toEqual(first)
    await page.context().setOffline(false)
    await expect.poll(() => notice(page), POLL).toContain('The server is back')
    await page.reload()
    await expect.poll(() => recipeOf(page), POLL).toEqual(second)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'a server that fails before anything is kept is named, and the recipe is there when it is back',
  async () => {
    const { page, faults } = await open({ serviceWorkers: 'block' })
    await pasteAndAnswer(page)
    const first = await recipeOf(page)
    const gateway = { status: 502, contentType: 'text/html', body: '<h1>Bad gateway</h1>' }
    await page.route('**/api/**', (route) => route.fulfill(gateway))
    await missingButton(page).click()
    await page.getByRole('alert').filter({ hasText: 'The server answered with 502' }).waitFor()
    expect(await notice(page)).toContain('The server does not answer, and this page has no data of its own yet')
    expect(await recipeOf(page)).toEqual(first)
    await expectSound(page)
    await page.unrouteAll()
    await page.getByRole('button', { name: 'Ask again' }).first().click()
    await useButtons(page).first().waitFor()
    expect(await recipeOf(page)).toEqual(first)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'a server that takes too long is not waited for once the page can answer',
  async () => {
    const { page, faults } = await open()
    await untilKept(page)
    await page.route('**/api/{check,health}', () => undefined) // never answered
    await pasteAndAnswer(page)
    expect(await notice(page)).toContain('answers come from this page')
    await page.unrouteAll({ behavior: 'ignoreErrors' })
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

const cachesOf = (page: Page): Promise<string[]> => page.evaluate(() => caches.keys())

/** The page as another build would leave it: another title, hashes to match. */
function otherBuild(): string {
  const folder = mkdtempSync(join(tmpdir(), 'understudy-next-'))
  cpSync(webRoot, folder, { recursive: true })
  const hashOf = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`
  const home = readFileSync(join(folder, 'index.html'), 'utf8')
  const next = home.replace('</title>', '</title><meta name="next" content="yes" />')
  writeFileSync(join(folder, 'index.html'), next)
  const worker = readFileSync(join(folder, 'service-worker.js'), 'utf8')
  expect(worker).toContain(hashOf(home))
  const changed = worker.replace(hashOf(home), hashOf(next)).replace(/VERSION = '\w+'/, "VERSION = 'next'")
  writeFileSync(join(folder, 'service-worker.js'), changed)
  return folder
}

test(
  'a new version waits until it is wanted, then replaces the old one whole; what was entered stays',
  async () => {
    const { page, faults } = await open()
    await untilKept(page)
    await pasteAndAnswer(page)
    const first = await recipeOf(page)
    const before = await cachesOf(page)
    expect(before).toHaveLength(1)
    const folder = otherBuild()
    await server.stop()
    await server.start({ webRoot: folder, version: 'next-data' })
    await page.reload()
    const load = page.getByRole('button', { name: 'Load it' })
    await load.waitFor()
    expect(await page.locator('meta[name=next]').count()).toBe(0)
    await page.getByText('Put another recipe on the bench').click()
    await page.getByLabel('Your recipe as text').last().fill('3 % urea')
    await load.click()
    await page.getByText('not on the bench yet').waitFor()
    expect(await page.getByLabel('Your recipe as text').last().inputValue()).toBe('3 % urea')
    await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Load it anyway' }).click()])
    await expect.poll(() => page.locator('meta[name=next]').count(), POLL).toBe(1)
    await expect.poll(() => cachesOf(page), POLL).toEqual(['understudy next /api/graph-data/next-data'])
    await expect.poll(() => recipeOf(page), POLL).toEqual(first)
    await server.stop()
    await page.reload()
    await untilChecked(page)
    expect(await notice(page)).toContain('Data of version next-data')
    expect(faults).toEqual([])
    await page.context().close()
    rmSync(folder, { recursive: true })
  },
  SLOW_MS,
)
