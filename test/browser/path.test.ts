import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { expectSound, unfoldFirst } from './access.ts'
import {
  ANSWER,
  choice,
  missingButton,
  pasteAndAnswer,
  RECIPE,
  recipeOf,
  sumOf,
  untilChecked,
  useButtons,
} from './bench-on-page.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 180_000 // the start reads all data and may build the page first
const POLL = { timeout: 30_000 }
const MOST_TABS = 200

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

/** After the stand-in was taken: another recipe, of 100 %. After undo: the first one. */
async function expectTakenAndUndone(page: Page, first: string[], undo: () => Promise<void>): Promise<void> {
  await expect.poll(() => missingButton(page).count(), POLL).toBe(0)
  await untilChecked(page)
  const second = await recipeOf(page)
  expect(second).toHaveLength(first.length)
  expect(second.filter((line) => !first.includes(line))).not.toEqual([])
  expect(await sumOf(page)).toBe('100 %')
  await undo()
  await expect.poll(() => recipeOf(page), POLL).toEqual(first)
  expect(await missingButton(page).getAttribute('aria-pressed')).toBe('true')
}

test(
  'a messy recipe is pasted, a name answered, a line marked missing, the first stand-in taken and given back',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await pasteAndAnswer(page)
    const first = await recipeOf(page)
    expect(first).toHaveLength(7)
    expect(await sumOf(page)).toBe('100 %')
    await missingButton(page).click()
    await useButtons(page).first().waitFor()
    expect(await useButtons(page).count()).toBeGreaterThan(1)
    await useButtons(page).first().click()
    await expectTakenAndUndone(page, first, () => page.getByRole('button', { name: 'Undo' }).click())
    await page.reload()
    await expect.poll(() => recipeOf(page), POLL).toEqual(first)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

/** What a screen reader would call the element in focus, roughly. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const element = document.activeElement
    const label = element instanceof HTMLTextAreaElement ? element.labels[0]?.textContent : undefined
    return element?.getAttribute('aria-label') ?? label ?? element?.textContent ?? ''
  })

/** Presses Tab until the focus is there. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let presses = 0; presses < MOST_TABS; presses += 1) {
    if (name.test(await focused(page))) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`no Tab leads to ${name}`)
}

test(
  'the keyboard alone walks the same path',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await page.keyboard.press('Tab')
    expect(await focused(page)).toBe('Skip to the content')
    await page.keyboard.press('Enter')
    await tabTo(page, /^Your recipe as text/)
    await page.keyboard.insertText(RECIPE)
    await tabTo(page, /^Put on the bench/)
    await page.keyboard.press('Enter')
    await choice(page).waitFor()
    await tabTo(page, ANSWER)
    await page.keyboard.press('Enter')
    await untilChecked(page)
    const first = await recipeOf(page)
    await tabTo(page, /^Prunus amygdalus dulcis oil is missing/)
    await page.keyboard.press('Space')
    await useButtons(page).first().waitFor()
    await tabTo(page, /^Use (?!this)/)
    await page.keyboard.press('Enter')
    await expectTakenAndUndone(page, first, () => page.keyboard.press('Control+z'))
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'bench, stand-ins and an ingredient are sound on a phone: access, contrast in light and dark, no sideways scroll',
  async () => {
    const { page, faults } = await openPage(app, 390)
    await pasteAndAnswer(page)
    await page.locator('.finding').first().waitFor()
    await expectSound(page)
    await missingButton(page).click()
    await useButtons(page).first().waitFor()
    await unfoldFirst(page, '.swap')
    await expectSound(page)
    await page.goto(`${app.address}/ingredient/sodium-benzoate`)
    await page.locator('.claims').waitFor()
    await page.locator('.swap').first().waitFor()
    await expectSound(page)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)
