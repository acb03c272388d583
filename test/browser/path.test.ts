import { spawn } from 'node:child_process'
import type { ChildProcess } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import AxeBuilder from '@axe-core/playwright'
import { chromium } from 'playwright-core'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))
const SLOW_MS = 180_000 // reads all data and may build the page first
const FLAGS = ['--no-sandbox', '--disable-background-networking', '--disable-component-update', '--disable-sync']

const RECIPE = `water q.s. to 100
3 % Glycerin
xanthan gum 0,3 %
sweet almond oil ... 12
Cetearyl Olivate (and) Sorbitan Olivate 5%
cetyl alcohol 2
Phenoxyethanol (and) Ethylhexylglycerin 1
pH 5.5, heat to 75 C`

let server: ChildProcess
let browser: Browser
let address: string

beforeAll(async () => {
  server = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts'], {
    cwd: ROOT,
    env: { ...process.env, PORT: '0' },
  })
  const line = await new Promise<string>((resolve, reject) => {
    server.stdout?.once('data', (chunk: Buffer) => resolve(chunk.toString()))
    server.once('exit', (code) => reject(new Error(`the server ended with ${code}`)))
  })
  address = /http:\/\/\S+/.exec(line)![0]
  browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: FLAGS })
}, SLOW_MS)

afterAll(async () => {
  await browser?.close()
  server?.kill('SIGTERM')
})

async function open(width: number): Promise<{ page: Page; faults: string[] }> {
  const context = await browser.newContext({ viewport: { width, height: 900 } })
  const page = await context.newPage()
  const faults: string[] = []
  page.setDefaultTimeout(25_000)
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()))
  page.on('pageerror', (error) => faults.push(String(error)))
  page.on('request', (request) => !request.url().startsWith(address) && faults.push(`asks ${request.url()}`))
  await page.goto(address)
  return { page, faults }
}

async function pasteRecipe(page: Page): Promise<void> {
  await page.getByRole('textbox').first().fill(RECIPE)
  await page.getByRole('button', { name: 'Put on the bench' }).click()
  await page
    .getByRole('link', { name: /Prunus amygdalus dulcis oil/i })
    .first()
    .waitFor()
}

test(
  'a recipe is pasted, a missing oil finds its stand-in, the swap is taken and undone',
  async () => {
    const { page, faults } = await open(1280)
    await pasteRecipe(page)
    const almond = page
      .locator('tr, li')
      .filter({ has: page.getByRole('link', { name: /Prunus amygdalus dulcis oil/i }) })
    await almond
      .getByRole('button', { name: /missing/i })
      .first()
      .click()
    await page
      .getByRole('button', { name: /^use prunus/i })
      .first()
      .click()
    await expect.poll(() => almond.getByRole('button', { name: /missing/i }).count(), { timeout: 25_000 }).toBe(0)
    expect(await page.getByText('100 %').count()).toBeGreaterThan(0)
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(() => almond.getByRole('button', { name: /missing/i }).count(), { timeout: 25_000 }).toBe(1)
    expect(faults).toEqual([])
    await page.close()
  },
  SLOW_MS,
)

test(
  'the bench has no serious accessibility fault and does not scroll sideways on a phone',
  async () => {
    const { page, faults } = await open(390)
    await pasteRecipe(page)
    const { violations } = await new AxeBuilder({ page }).analyze()
    expect(
      violations.filter(({ impact }) => impact === 'serious' || impact === 'critical').map(({ id }) => id),
    ).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0)
    expect(faults).toEqual([])
    await page.close()
  },
  SLOW_MS,
)
