import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { DEMOS } from '#web/demo/index.ts'
import { expectSound } from './access.ts'
import { coloursOf, pagesOf, strayOnPaper } from './on-paper.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 180_000 // the start reads all data and may build the page first
const SHEET_MS = 90_000 // a search for each line
const CREAM = 'Winter hand cream'

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

async function untilDone(page: Page): Promise<void> {
  await page.getByText(/^All \d+ lines are worked out/).waitFor({ timeout: SHEET_MS })
}

async function openSheet(page: Page, title = CREAM): Promise<void> {
  await page.getByRole('button', { name: new RegExp(title) }).click()
  await page.locator('.verdict').waitFor()
  await page.getByRole('link', { name: 'Swap sheet' }).click()
  await untilDone(page)
}

const row = (page: Page, name: string) =>
  page.locator('.swap-table tbody tr', { has: page.getByRole('link', { name, exact: true }) })

test(
  'each line has its job, stand-ins with a dose, and what happens without it; prices say what a swap costs',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await openSheet(page)
    expect(await page.locator('.swap-table tbody tr').count()).toBe(10)
    const glycerin = row(page, 'Glycerin')
    expect(await glycerin.innerText()).toMatch(/humectant[\s\S]*Propanediol\s+\d[\d.]* %[\s\S]*Can be left out/)
    expect(await row(page, 'Phenoxyethanol').innerText()).toMatch(/Cannot be left out/)
    expect(await page.getByText(/dearer per kg|cheaper per kg/).count()).toBe(0)
    await page.getByText('Prices, to see what a swap costs').click()
    await page.getByLabel('Currency').fill('EUR')
    const prices = page.locator('.price-grid')
    await prices.getByLabel('Glycerin', { exact: true }).fill('5')
    await prices.getByLabel('Propanediol', { exact: true }).fill('12')
    await prices.getByLabel('Aqua', { exact: true }).fill('0')
    // 5 % at 12 for 4 % at 5 is 0.60 for 0.20 in a kilogram
    expect(await glycerin.locator('li', { hasText: 'Propanediol' }).innerText()).toContain('0.40 EUR dearer per kg')
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test.each([390, 1280])(
  'at %i px the sheet is sound: access, contrast in light and dark, no sideways scroll',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await openSheet(page)
    await expectSound(page)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

const LONG = `Aqua q.s.
4 % Glycerin
0.3 % Xanthan gum
2 % Propanediol
1 % Panthenol
0.2 % Allantoin
1 % Betaine
0.5 % Sodium PCA
8 % Prunus amygdalus dulcis oil
4 % Helianthus annuus seed oil
3 % Butyrospermum parkii butter
2 % Squalane
2 % Cetyl alcohol
2 % Stearic acid
5 % Glyceryl stearate citrate
0.5 % Tocopherol
0.5 % Bisabolol
0.9 % Phenoxyethanol
0.1 % Ethylhexylglycerin
0.2 % Sodium phytate
pH 5.5`

describe('on paper', () => {
  test.each(DEMOS.map(({ title }) => title))(
    '%s: one page of A4 and of Letter, black on white, with nothing of the screen',
    async (title) => {
      const { page } = await openPage(app, 1280)
      await openSheet(page, title)
      for (const format of ['A4', 'Letter']) expect([format, pagesOf(await page.pdf({ format }))]).toEqual([format, 1])
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
      await page.setViewportSize({ width: 794, height: 1123 }) // A4 at 96 dots an inch
      expect(await strayOnPaper(page)).toEqual([])
      expect(await coloursOf(page)).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)'])
      await page.context().close()
    },
    SLOW_MS,
  )
  test(
    'a long recipe continues on a second page',
    async () => {
      const { page } = await openPage(app, 1280)
      await page.getByLabel('Your recipe as text').fill(LONG)
      await page.getByRole('button', { name: 'Put on the bench' }).click()
      await page.locator('.verdict').waitFor()
      await page.getByRole('link', { name: 'Swap sheet' }).click()
      await untilDone(page)
      expect(await page.locator('.swap-table tbody tr').count()).toBe(20)
      for (const format of ['A4', 'Letter']) expect([format, pagesOf(await page.pdf({ format }))]).toEqual([format, 2])
      await page.context().close()
    },
    SLOW_MS,
  )
})
