import AxeBuilder from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 480_000
const STEP_MS = 60_000
const POLL = { timeout: 30_000 }
const WIDTHS = [1280, 390]

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

/** A fresh page in a browser that is set to German. */
async function openGerman(width: number): Promise<{ page: Page; faults: string[] }> {
  const viewport = { width, height: 900 }
  const context = await app.browser.newContext({ viewport, locale: 'de-DE', reducedMotion: 'reduce' })
  const page = await context.newPage()
  const faults: string[] = []
  page.setDefaultTimeout(STEP_MS)
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()))
  page.on('pageerror', (error) => faults.push(String(error)))
  await page.goto(`${app.address}/`)
  await page.getByRole('button', { name: 'Auf die Werkbank' }).waitFor()
  return { page, faults }
}

async function faultsOf(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}

/** No violation of any weight in light and dark, no sideways scroll. */
async function expectNoFault(page: Page): Promise<void> {
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0)
  expect(await faultsOf(page)).toEqual([])
  await page.emulateMedia({ colorScheme: 'dark' })
  expect(await faultsOf(page)).toEqual([])
  await page.emulateMedia({ colorScheme: 'light' })
}

const language = (page: Page) => page.evaluate(() => document.documentElement.lang)
const lineOf = (page: Page, name: string) => page.locator('tbody.line').filter({ hasText: name })
const openDemo = async (page: Page) => {
  await page.getByRole('button', { name: /^Winterhandcreme/ }).click()
  await page.locator('.verdict').waitFor()
}

/** What is on the bench, whatever its language: names, shares as numbers, what is marked. */
const benchOf = (page: Page) =>
  page.locator('tbody.line').evaluateAll((lines) =>
    lines.map((line) => ({
      name: line.querySelector('.line-name a')?.textContent,
      share: Number(line.querySelector<HTMLInputElement>('.share input')?.value.replace(',', '.')),
      missing: line.hasAttribute('data-missing'),
    })),
  )

test.each(WIDTHS)(
  'at %d px a German browser gets German: demo, finding, stand-in; English and back keep the recipe',
  async (width) => {
    const { page, faults } = await openGerman(width)
    expect(await language(page)).toBe('de')
    await expectNoFault(page)
    await openDemo(page)
    expect(await lineOf(page, 'Xanthan gum').locator('.share input').inputValue()).toBe('0,3')

    const finding = lineOf(page, 'Prunus amygdalus').locator('details.finding').first()
    await finding.locator('summary').click()
    expect(await finding.locator('dt').allInnerTexts()).toContain('Weil')
    expect(await finding.locator('.message').innerText()).not.toMatch(/\b(?:the|and|about|comes from)\b/)
    expect(await finding.locator('[lang=en]').count()).toBe(0)

    await page.getByRole('button', { name: 'Butyrospermum parkii butter fehlt' }).click()
    await page.locator('article.swap').first().waitFor()
    expect(await page.locator('#swaps-title').innerText()).toBe('Ersatz für Butyrospermum parkii butter')
    expect(await page.locator('article.swap .grade').first().innerText()).toMatch(/^(?:Gut|Brauchbar) erfüllt/)
    await expectNoFault(page)

    await expect.poll(() => page.url(), POLL).toContain('#r1.')
    const [before, address] = [await benchOf(page), page.url()]
    await page.getByRole('button', { name: 'English' }).click()
    await page.getByRole('heading', { name: 'Stand-ins for Butyrospermum parkii butter' }).waitFor()
    expect(await language(page)).toBe('en')
    expect(await lineOf(page, 'Xanthan gum').locator('.share input').inputValue()).toBe('0.3')
    expect(await benchOf(page)).toEqual(before)
    expect(page.url()).toBe(address)
    expect(await page.getByRole('button', { name: 'English' }).getAttribute('aria-pressed')).toBe('true')

    await page.getByRole('button', { name: 'Deutsch' }).focus()
    await page.keyboard.press('Enter')
    await page.getByRole('heading', { name: 'Ersatz für Butyrospermum parkii butter' }).waitFor()
    expect(await benchOf(page)).toEqual(before)
    await page.getByRole('button', { name: 'Rückgängig' }).click()
    await expect.poll(() => page.locator('[data-missing]').count(), POLL).toBe(0)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'text that is on no bench yet outlives the change of language, once',
  async () => {
    const { page } = await openGerman(1280)
    const field = () => page.locator('form.paste textarea').first()
    await field().fill('Wasser ad 100\nGlycerin 3 %')
    await page.getByRole('button', { name: 'English' }).click()
    await page.getByRole('button', { name: 'Put on the bench' }).waitFor()
    expect(await field().inputValue()).toBe('Wasser ad 100\nGlycerin 3 %')
    await page.reload()
    await page.getByRole('button', { name: 'Put on the bench' }).waitFor()
    expect(await field().inputValue()).toBe('')
    await page.context().close()
  },
  SLOW_MS,
)

const PAGES = [
  'batch',
  'label',
  'working',
  'what-if',
  'roles',
  'learn',
  'calculation/lye',
  'ingredient/glycerin',
  'teach',
]

test.each(WIDTHS)(
  'at %d px the other pages are German and sound; what is still English says so',
  async (width) => {
    const { page, faults } = await openGerman(width)
    await openDemo(page)
    for (const path of PAGES) {
      await page.goto(`${app.address}/${path}`)
      await page.locator('h1').waitFor()
      await page.waitForLoadState('networkidle')
      await expectNoFault(page)
      const isMarked = (await page.locator('main [lang=en]').count()) > 0
      expect(isMarked && (await page.locator('.in-english').count()) === 0, `${path} says what is English`).toBe(false)
    }
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'the switch is big enough to hit and each name is in its own language',
  async () => {
    const { page } = await openGerman(390)
    for (const [name, lang] of [
      ['English', 'en'],
      ['Deutsch', 'de'],
    ] as const) {
      const button = page.getByRole('button', { name, exact: true })
      expect(await button.getAttribute('lang')).toBe(lang)
      const { width, height } = (await button.boundingBox())!
      expect(Math.min(width, height)).toBeGreaterThanOrEqual(24) // WCAG 2.2, 2.5.8
    }
    await page.context().close()
  },
  SLOW_MS,
)
