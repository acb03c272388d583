import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { DEMOS } from '#web/demo/index.ts'
import { expectSound, unfoldFirst } from './access.ts'
import { coloursOf, pagesOf, strayOnPaper } from './on-paper.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 180_000 // the start reads all data and may build the page first
const POLL = { timeout: 30_000 }
const MOST_TABS = 200
const CREAM = 'Winter hand cream'

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

async function openDemo(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(title) }).click()
  await page.locator('.verdict').waitFor()
}

/** The sheet has been worked out for what stands in the fields. */
async function untilWorkedOut(page: Page): Promise<void> {
  await page.locator('.work').waitFor()
  await expect.poll(() => page.locator('[aria-busy=true]').count(), POLL).toBe(0)
}

async function openSheet(page: Page, title = CREAM): Promise<void> {
  await openDemo(page, title)
  await page.getByRole('link', { name: 'Batch sheet' }).click()
  await untilWorkedOut(page)
}

const gramsOf = (page: Page): Promise<string[]> =>
  page.locator('.weigh tbody tr:not(.phase) .grams').evaluateAll((cells) => cells.map((cell) => cell.textContent ?? ''))

/** In thousandths of a gram: sums of figures are compared as whole numbers. */
const sumOf = (grams: readonly string[]): number =>
  grams.reduce((sum, text) => sum + Math.round(Number(text) * 1000), 0)

const total = (page: Page) => page.locator('.weigh tfoot .grams').innerText()

test(
  'the weights add up to the batch, also for another size, scale and overage, and the address brings the same sheet back',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await openSheet(page)
    expect(await total(page)).toBe('200.0')
    expect(sumOf(await gramsOf(page))).toBe(200_000)
    await page.getByLabel('Batch, g').fill('333,3')
    await page.getByLabel('Scale shows, g').selectOption('0.01')
    await page.getByLabel('On top, %').fill('5')
    await page.getByLabel('Batch code', { exact: true }).fill('W-12')
    await expect.poll(() => total(page), POLL).toBe('349.97')
    await untilWorkedOut(page)
    const grams = await gramsOf(page)
    expect(sumOf(grams)).toBe(349_970)
    await expect.poll(() => page.url(), POLL).toMatch(/#r1\..*~.*c=W-12/)
    const address = page.url()
    await page.context().close()

    const fresh = await openPage(app, 1280)
    await fresh.page.goto(address)
    await untilWorkedOut(fresh.page)
    await expect.poll(() => gramsOf(fresh.page), POLL).toEqual(grams)
    expect(await fresh.page.locator('.sheet-line').innerText()).toMatch(/weighed out 349.97 g .* code W-12/)
    expect([...faults, ...fresh.faults]).toEqual([])
    await fresh.page.context().close()
  },
  SLOW_MS,
)

/** What a screen reader would call the element in focus, roughly. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement
    const label = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : undefined
    return element?.getAttribute('aria-label') ?? label ?? element?.textContent ?? ''
  })

async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let presses = 0; presses < MOST_TABS; presses += 1) {
    if (name.test(await focused(page))) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`no Tab leads to ${name}`)
}

test(
  'the keyboard alone opens the sheet, changes the size, ticks a line off and keeps the tick over a reload',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await openDemo(page, CREAM)
    await tabTo(page, /^Batch sheet$/)
    await page.keyboard.press('Enter')
    await untilWorkedOut(page)
    await tabTo(page, /^Batch, g/)
    await page.keyboard.press('Control+a')
    await page.keyboard.insertText('500')
    await expect.poll(() => total(page), POLL).toBe('500.0')
    await untilWorkedOut(page)
    await tabTo(page, /^Glycerin is weighed/)
    await page.keyboard.press('Space')
    await tabTo(page, /^Done: Clean and disinfect/)
    await page.keyboard.press('Space')
    await page.reload()
    await untilWorkedOut(page)
    expect(await page.getByRole('checkbox', { name: 'Glycerin is weighed', exact: true }).isChecked()).toBe(true)
    expect(await page.getByRole('checkbox', { name: 'Done: Clean and disinfect', exact: true }).isChecked()).toBe(true)
    expect(await page.getByRole('checkbox', { name: 'Aqua is weighed', exact: true }).isChecked()).toBe(false)
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
    await unfoldFirst(page, '.weigh')
    await unfoldFirst(page, '.step')
    await page.getByLabel('Price of one kilogram of Glycerin').fill('8,5')
    await page.locator('.batch-cost').waitFor()
    await expectSound(page)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

describe('on paper', () => {
  test.each(DEMOS.map(({ title }) => title))(
    '%s: the recipe takes one page and its batch sheet two at most, of A4 and of Letter, with nothing of the screen',
    async (title) => {
      const { page } = await openPage(app, 1280)
      await openDemo(page, title)
      await page.locator('.verdict small').waitFor({ state: 'detached' })
      for (const format of ['A4', 'Letter']) expect([format, pagesOf(await page.pdf({ format }))]).toEqual([format, 1])
      await page.getByRole('link', { name: 'Batch sheet' }).click()
      await untilWorkedOut(page)
      for (const format of ['A4', 'Letter']) {
        const pages = pagesOf(await page.pdf({ format }))
        expect(pages).toBeGreaterThan(0)
        expect(pages).toBeLessThanOrEqual(2)
      }
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
      await page.setViewportSize({ width: 794, height: 1123 }) // A4 at 96 dots an inch
      expect(await strayOnPaper(page)).toEqual([])
      expect(await coloursOf(page)).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)'])
      await page.context().close()
    },
    SLOW_MS,
  )
})
