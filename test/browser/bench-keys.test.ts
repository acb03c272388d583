import AxeBuilder from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { ANSWER, choice, missingButton, RECIPE, recipeOf, sumOf, untilChecked, useButtons } from './bench-on-page.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 480_000 // the start reads all data and builds the page first; a busy machine takes minutes for all keys
const POLL = { timeout: 30_000 }
const MOST_TABS = 260

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

/** What a screen reader would call the element in focus, roughly. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement
    const isField = element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement
    const label = isField ? element.labels?.[0]?.textContent : undefined
    return element === document.body
      ? 'the page'
      : (element?.getAttribute('aria-label') ?? label ?? element?.textContent ?? '')
  })

/** Presses Tab until the focus is there; Shift goes back. */
async function tabTo(page: Page, name: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> {
  for (let presses = 0; presses < MOST_TABS; presses += 1) {
    if (name.test(await focused(page))) return
    await page.keyboard.press(key)
  }
  throw new Error(`no ${key} leads to ${name}`)
}

async function faultsOf(page: Page, rules?: string[]): Promise<string[]> {
  const builder = new AxeBuilder({ page })
  const { violations } = await (rules ? builder.withRules(rules) : builder).analyze()
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}

/** No violation of any weight, no sideways scroll. */
async function expectNoFault(page: Page): Promise<void> {
  expect(await faultsOf(page)).toEqual([])
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0)
}

/** The dark differs in colour only. */
async function expectContrastInTheDark(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: 'dark' })
  expect(await faultsOf(page, ['color-contrast'])).toEqual([])
  await page.emulateMedia({ colorScheme: 'light' })
}

/** Words of the announcements, as they stand now. */
const said = (page: Page): Promise<string> =>
  page.locator('[aria-live=polite]').evaluateAll((regions) => regions.map(({ textContent }) => textContent).join(''))

async function pasteByKeys(page: Page): Promise<void> {
  await tabTo(page, /^Your recipe as text/)
  await page.keyboard.insertText(RECIPE)
  await tabTo(page, /^Put on the bench/)
  await page.keyboard.press('Enter')
  await expect.poll(() => focused(page), POLL).toBe('Recipe')
  expect(await said(page)).toContain('7 lines on the bench')
}

test.each([1280, 390])(
  'at %d px the keyboard alone pastes, answers, asks, reads why, takes, undoes, compares and prints',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await page.addInitScript(() => {
      window.print = () => document.body.toggleAttribute('data-printed', true)
    })
    await page.reload()
    await expectNoFault(page)
    await pasteByKeys(page)
    await choice(page).waitFor()
    await expectNoFault(page)
    await tabTo(page, ANSWER)
    await page.keyboard.press('Enter')
    await untilChecked(page)
    expect(await focused(page)).not.toBe('the page')
    const first = await recipeOf(page)
    await tabTo(page, /^Prunus amygdalus dulcis oil is missing/)
    await page.keyboard.press('Space')
    await useButtons(page).first().waitFor()
    await tabTo(page, /^Use (?!this)/)
    await tabTo(page, /^Why and how sure/)
    await page.keyboard.press('Enter')
    await page.locator('.swap .detail').first().waitFor()
    await expectNoFault(page)
    await expectContrastInTheDark(page)
    await tabTo(page, /^Use (?!this)/, 'Shift+Tab')
    await page.keyboard.press('Enter')
    await expect.poll(() => missingButton(page).count(), POLL).toBe(0)
    await untilChecked(page)
    await expect.poll(() => focused(page), POLL).not.toBe('the page')
    expect(await page.getByText(/is in the recipe now/).count()).toBe(1)
    const second = await recipeOf(page)
    expect(await sumOf(page)).toBe('100 %')
    await expectNoFault(page)
    await tabTo(page, /^Give it back/, 'Shift+Tab')
    await page.keyboard.press('Enter')
    await expect.poll(() => recipeOf(page), POLL).toEqual(first)
    await expect.poll(() => said(page), POLL).toContain('Undone')
    await page.keyboard.press('Control+y')
    await expect.poll(() => recipeOf(page), POLL).toEqual(second)
    await tabTo(page, /^Compare before and after/, 'Shift+Tab')
    await page.keyboard.press('Enter')
    await page.locator('.compared [data-change=added]').first().waitFor()
    expect(await page.locator('.compared [data-change=removed]').count()).toBe(1)
    await expectNoFault(page)
    await expectContrastInTheDark(page)
    await tabTo(page, /^To the bench/)
    await page.keyboard.press('Enter')
    await untilChecked(page)
    await tabTo(page, /^Print$/)
    await page.keyboard.press('Enter')
    expect(await page.locator('body[data-printed]').count()).toBe(1)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'a name is picked from the list by keys and by finger; free text stays as it was typed',
  async () => {
    const { page, faults } = await openPage(app, 390)
    await pasteByKeys(page)
    const field = page.getByRole('combobox', { name: 'Add an ingredient' })
    await field.focus()
    await page.keyboard.type('niacin')
    await page
      .getByRole('option', { name: /Niacinamide/ })
      .first()
      .waitFor()
    expect(await field.getAttribute('aria-expanded')).toBe('true')
    await expectNoFault(page)
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('ArrowDown')
    const active = await field.getAttribute('aria-activedescendant')
    expect(await page.locator(`[id="${active}"]`).innerText()).toContain('Niacinamide')
    await page.keyboard.press('Enter')
    await expect.poll(() => focused(page), POLL).toBe('Share of Niacinamide in per cent')
    await page.keyboard.type('4,5')
    await field.focus()
    await page.keyboard.type('shea')
    await page
      .getByRole('option', { name: /Butyrospermum parkii butter/ })
      .first()
      .click()
    await expect.poll(() => focused(page), POLL).toBe('Share of Butyrospermum parkii butter in per cent')
    await field.focus()
    await page.keyboard.type('3 % my own thing')
    await page.keyboard.press('Enter')
    await expect.poll(() => recipeOf(page), POLL).toContain('my own thing 3')
    expect(await recipeOf(page)).toContain('Niacinamide 4,5')
    await field.focus()
    await page.keyboard.type('gly')
    await page
      .getByRole('option', { name: /^Glycerin/ })
      .first()
      .waitFor()
    await page.keyboard.press('Escape')
    expect(await field.getAttribute('aria-expanded')).toBe('false')
    expect(await field.inputValue()).toBe('gly')
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

const firstNames = async (page: Page) => (await recipeOf(page)).slice(0, 3).map((line) => line.replace(/ \S*$/, ''))

test(
  'lines are moved by arrow keys and by dragging, and say where they went; grams and per cent follow each other',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await page.getByRole('button', { name: /Winter hand cream/ }).click()
    await untilChecked(page)
    expect(await firstNames(page)).toEqual(['Aqua', 'Glycerin', 'Xanthan gum'])
    const grip = page.getByRole('button', { name: 'Move Glycerin', exact: true })
    await grip.focus()
    await page.keyboard.press('ArrowDown')
    await expect.poll(() => firstNames(page), POLL).toEqual(['Aqua', 'Xanthan gum', 'Glycerin'])
    await expect.poll(() => focused(page), POLL).toBe('Move Glycerin')
    expect(await said(page)).toBe('Glycerin is line 3 of 10 now')
    await grip.hover()
    await page.mouse.down()
    await page
      .locator('.recipe .line')
      .first()
      .hover({ position: { x: 20, y: 10 } })
    await page.mouse.up()
    await expect.poll(() => firstNames(page), POLL).toEqual(['Glycerin', 'Aqua', 'Xanthan gum'])
    await page.keyboard.press('Control+z')
    await page.keyboard.press('Control+z')
    await expect.poll(() => firstNames(page), POLL).toEqual(['Aqua', 'Glycerin', 'Xanthan gum'])
    await page.getByLabel('Mass of Glycerin in grams').fill('10,5')
    expect(await page.getByLabel('Share of Glycerin in per cent').inputValue()).toBe('5.25')
    await page.getByLabel('Share of Glycerin in per cent').fill('5')
    expect(await page.getByLabel('Mass of Glycerin in grams').inputValue()).toBe('10')
    await page.getByLabel('Batch, g').fill('1000')
    expect(await page.getByLabel('Mass of Glycerin in grams').inputValue()).toBe('50')
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'several recipes are kept, renamed, copied, removed and put back; a link stands beside one’s own',
  async () => {
    const { page, faults } = await openPage(app, 390)
    await page.getByRole('button', { name: /Winter hand cream/ }).click()
    await untilChecked(page)
    await expect.poll(() => page.evaluate(() => window.location.hash), POLL).toMatch(/^#r1\./)
    const hash = await page.evaluate(() => window.location.hash)
    await page.getByLabel('Name of the recipe').fill('Hands, my way')
    await page.getByRole('button', { name: 'New recipe' }).click()
    await page
      .getByRole('button', { name: /Rose face gel|gel/i })
      .last()
      .click()
    await untilChecked(page)
    await page.getByRole('link', { name: 'My recipes' }).first().click()
    await page.getByRole('button', { name: 'Open Hands, my way' }).waitFor()
    await expectNoFault(page)
    await page.getByRole('button', { name: 'Copy Hands, my way' }).click()
    await page.getByRole('button', { name: 'Rename Hands, my way (copy)' }).click()
    await page.getByLabel('New name').fill('Second try')
    await page.keyboard.press('Enter')
    await page.getByRole('button', { name: 'Remove Second try' }).click()
    expect(await page.getByRole('button', { name: 'Open Second try' }).count()).toBe(0)
    await page.getByRole('button', { name: 'Put it back' }).click()
    await page.getByRole('button', { name: 'Open Second try' }).waitFor()
    await page.goto(`${app.address}/${hash}`)
    await page.getByText('This recipe came with the link').waitFor({ state: 'attached' })
    await page.goto(`${app.address}/recipes`)
    await page.getByRole('button', { name: 'Open Hands, my way' }).first().waitFor()
    await page.getByRole('button', { name: 'Open Winter hand cream' }).waitFor()
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

async function printedPages(page: Page): Promise<number> {
  const pdf = (await page.pdf({ format: 'A4', preferCSSPageSize: true })).toString('latin1')
  return pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0
}

test(
  'the recipe prints on one page of A4, two compared recipes too',
  async () => {
    const { page } = await openPage(app, 1280)
    await page.getByRole('button', { name: /Winter hand cream/ }).click()
    await untilChecked(page)
    expect(await printedPages(page)).toBe(1)
    await page.goto(`${app.address}/compare`)
    await page.getByLabel('First', { exact: true }).selectOption({ label: 'Winter hand cream' })
    await page.getByLabel('Second', { exact: true }).selectOption({ label: 'Winter hand cream' })
    await page.locator('.compared [data-change=same]').first().waitFor()
    expect(await printedPages(page)).toBe(1)
    await page.context().close()
  },
  SLOW_MS,
)
