import { mkdir } from 'node:fs/promises'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { expectSound, unfoldFirst } from './access.ts'
import { pasteAndAnswer } from './bench-on-page.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 240_000
const POLL = { timeout: 30_000 }
const WIDTHS = [1280, 390]

/** A cream with two acids against germs, an oil phase and a pH: enough for every drawing. */
const CREAM = `water to 100
glycerin 3
sunflower oil 18
Cetearyl Olivate (and) Sorbitan Olivate 5
sodium benzoate 0,5
potassium sorbate 0,3
xanthan gum 0,3
pH 5,2`

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

/** Pictures to look at, where a folder for them is given. */
async function picture(page: Page, name: string, width: number): Promise<void> {
  const folder = process.env['PICTURES']
  if (!folder) return
  await mkdir(folder, { recursive: true })
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    await page.screenshot({ path: `${folder}/${name}-${width}-${colorScheme}.png`, fullPage: true })
  }
}

const putOnBench = async (page: Page, recipe: string): Promise<void> => {
  await page.getByLabel('Your recipe as text').fill(recipe)
  await page.getByRole('button', { name: 'Put on the bench' }).click()
  await page.locator('.verdict').waitFor()
}

test.each(WIDTHS)(
  'at %d px a calculation is found, answered and refused at its field, and is sound',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await page.getByRole('link', { name: 'Calculations' }).click()
    await page.getByRole('heading', { name: 'Oils and soap' }).waitFor()
    await expectSound(page)
    await picture(page, 'list', width)
    await page.getByRole('link', { name: 'How much lye turns these fats into soap?' }).click()
    await page.locator('.calc-steps').waitFor()
    expect(await page.locator('.caution').innerText()).toMatch(/goggles/i)
    await page.getByLabel('Purity of the lye, %').fill('90,5')
    await expect.poll(() => new URL(page.url()).searchParams.get('purity_percent'), POLL).toBe('90,5')
    await expectSound(page)
    await picture(page, 'lye', width)
    await page.reload()
    expect(await page.getByLabel('Purity of the lye, %').inputValue()).toBe('90,5')
    await page.getByLabel('Oil or fat').first().fill('almond')
    await page.locator('.calc-nearest button').first().waitFor()
    await expectSound(page)
    await picture(page, 'lye-refused', width)
    expect(faults.filter((fault) => !fault.includes('404'))).toEqual([]) // the browser logs the refusal itself
    await page.context().close()
  },
  SLOW_MS,
)

test.each(WIDTHS)(
  'at %d px the recipe on the bench shows how it works, with drawings that have their tables',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await putOnBench(page, CREAM)
    await page.getByRole('link', { name: 'How it works' }).click()
    await page.locator('.agents').waitFor()
    await page.locator('.chart-pair .chart').nth(1).waitFor()
    await page.locator('.ends').waitFor()
    await page.locator('#adjust .chart').waitFor()
    expect(await page.locator('.challenge').innerText()).toMatch(/challenge test/i)
    expect(await page.locator('main').innerText()).not.toMatch(/\bis preserved\.|well preserved|\bsafe\b/i)
    await page.getByRole('button', { name: 'Add a reading' }).click()
    await page.getByRole('button', { name: 'Add a reading' }).click()
    await page.getByLabel('Acid or base').selectOption('citric-acid')
    const readings = page.locator('#adjust .calc-row')
    for (const [row, added, ph] of [
      [0, '0', '6,1'],
      [1, '0,1', '5,8'],
    ] as const) {
      await readings.nth(row).getByLabel('Added so far, g').fill(added)
      await readings.nth(row).getByLabel('pH read').fill(ph)
    }
    await page.getByText('Starts at pH 6.1, as read').waitFor()
    await page.getByText('Still to add').waitFor()
    await page.locator('#adjust .chart').waitFor()
    expect(await page.locator('.chart-table').count()).toBe(await page.locator('.chart svg[role=img]').count())
    await picture(page, 'working', width)
    await unfoldFirst(page, '.working')
    await expectSound(page)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test.each(WIDTHS)(
  'at %d px two oils stand side by side',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await page.goto(`${app.address}/compare-oils?from=coconut+oil&to=olive+oil`)
    await page.locator('.chart svg[role=img]').waitFor()
    await page.getByText(/^Cosine distance/).waitFor()
    await picture(page, 'oils', width)
    await unfoldFirst(page, '.page')
    await expectSound(page)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'the keyboard alone adds a row and the focus goes to it',
  async () => {
    const { page } = await openPage(app, 1280)
    await page.goto(`${app.address}/calculation/blend-hlb`)
    const rows = page.getByRole('group', { name: /^Emulsifiers, row/ })
    await rows.first().waitFor()
    await page.getByRole('button', { name: 'Add a row: Emulsifiers' }).focus()
    await page.keyboard.press('Enter')
    expect(await rows.count()).toBe(3)
    await page.keyboard.insertText('2,5')
    expect(await rows.nth(2).getByLabel('Share, %').inputValue()).toBe('2,5')
    await page.keyboard.press('Tab')
    await page.keyboard.insertText('8')
    // (3.2 × 15 + 1.8 × 4.3 + 2.5 × 8) / 7.5
    await page.locator('.calc-values').getByText('10.1', { exact: true }).waitFor()
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'the first load of the bench asks for none of these pages',
  async () => {
    const { page } = await openPage(app, 1280)
    const asked: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    await page.goto(`${app.address}/`)
    await pasteAndAnswer(page)
    expect(asked.filter((url) => /calculations-page|working-page|compare-oils/.test(url))).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)
