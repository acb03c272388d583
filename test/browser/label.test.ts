import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { expectSound, unfoldFirst } from './access.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 240_000
const POLL = { timeout: 30_000 }

const SCENTED = `water to 100
caprylic/capric triglyceride 12 %
Cetearyl Olivate (and) Sorbitan Olivate 5%
beeswax 2
lavender essential oil 0.5 %
CI 77491 0.3
Parfum 0.2
Phenoxyethanol (and) Ethylhexylglycerin 1
pH 5.5`

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

const listOn = (page: Page) => page.getByLabel('List ready to copy')

async function toLabel(page: Page): Promise<void> {
  await page.getByLabel('Your recipe as text').fill(SCENTED)
  await page.getByRole('button', { name: 'Put on the bench' }).click()
  await page.getByRole('link', { name: 'Label', exact: true }).click()
  await listOn(page).waitFor()
}

test(
  'the list of the recipe on the bench, EU and US, with allergens, questions and a link that carries it',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await toLabel(page)
    const eu = await listOn(page).inputValue()
    expect(eu).toMatch(/^Ingredients: Aqua, Caprylic\/Capric Triglyceride, /)
    expect(eu).toMatch(/Linalool.*, CI 77491$/)
    expect(
      await page
        .getByRole('row', { name: /^Lavandula Oil\/Extract/ })
        .first()
        .innerText(),
    ).toContain('0.5 %')
    expect(await page.getByText('Which fragrance allergens does Parfum hold').first().isVisible()).toBe(true)
    await page.getByRole('radio', { name: 'United States' }).check()
    await expect.poll(() => listOn(page).inputValue(), POLL).toMatch(/^Ingredients: Water, .*Fragrance.*Iron Oxides$/)
    await page.getByRole('radio', { name: 'European Union' }).check()
    await expect.poll(() => listOn(page).inputValue(), POLL).toBe(eu)
    await page.getByLabel('Day on which the goods reach the market').fill('2026-07-31')
    await expect.poll(() => listOn(page).inputValue(), POLL).not.toContain('Lavandula Oil/Extract')
    await expect.poll(() => page.url(), POLL).toContain('/label#r1.')
    const other = await page.context().browser()!.newContext()
    const second = await other.newPage()
    await second.goto(page.url())
    await expect.poll(() => listOn(second).inputValue(), POLL).toBe(eu)
    await other.close()
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'the keyboard reaches the copy button, and the list is copied or marked',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await toLabel(page)
    const copy = page.getByRole('button', { name: 'Copy the list' })
    for (let presses = 0; presses < 60; presses += 1) {
      if (await copy.evaluate((button) => button === document.activeElement)) break
      await page.keyboard.press('Tab')
    }
    await page.keyboard.press('Enter')
    await expect.poll(() => page.getByText(/^Copied\.|^Your browser does not allow/).count(), POLL).toBe(1)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test.each([390, 1280])(
  'the label is sound at %i px: access, contrast in light and dark, no sideways scroll',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await toLabel(page)
    await page.locator('.finding').first().waitFor()
    await unfoldFirst(page, '.findings')
    await expectSound(page)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)
