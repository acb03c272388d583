import { readFile } from 'node:fs/promises'
import AxeBuilder from '@axe-core/playwright'
import type { Download, Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { coloursOf, pagesOf, strayOnPaper } from './on-paper.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 240_000
const FOLDER = process.env['PICTURES'] // where to put pictures and papers to look at; none: nowhere

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

/** Every violation counts, in the light and in the dark, and nothing scrolls sideways. */
async function expectNoFault(page: Page, name: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    const { violations } = await new AxeBuilder({ page }).analyze()
    const found = violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
    expect([name, colorScheme, found]).toEqual([name, colorScheme, []])
  }
  await page.emulateMedia({ colorScheme: 'light' })
  expect([name, await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)]).toEqual([name, 0])
  if (FOLDER) await page.screenshot({ path: `${FOLDER}/teach-${name}.png`, fullPage: true })
}

/** The page as paper: how many pages, in both formats, with nothing of the screen. */
async function paperOf(page: Page, name: string): Promise<[number, number]> {
  const [a4, letter] = [await page.pdf({ format: 'A4' }), await page.pdf({ format: 'Letter' })]
  if (FOLDER) await page.pdf({ format: 'A4', path: `${FOLDER}/teach-${name}.pdf` })
  const size = page.viewportSize() ?? { width: 1280, height: 900 }
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' })
  await page.setViewportSize({ width: 794, height: 1123 }) // A4 at 96 dots an inch
  expect([name, await strayOnPaper(page), await coloursOf(page)]).toEqual([
    name,
    [],
    ['rgb(0, 0, 0)', 'rgb(255, 255, 255)'],
  ])
  await page.emulateMedia({ media: null, colorScheme: 'light' }) // `screen` would print the screen
  await page.setViewportSize(size)
  return [pagesOf(a4), pagesOf(letter)]
}

async function textOf(saved: Promise<Download>): Promise<string> {
  return readFile(await (await saved).path(), 'utf8')
}

const part = (page: Page, name: string) =>
  page.getByRole('group', { name: 'Parts of this page' }).getByRole('button', { name }).click()

async function makeClass(page: Page): Promise<void> {
  await page.getByRole('link', { name: 'Learn' }).click()
  await page.getByRole('link', { name: /For teachers/ }).click()
  await page.getByRole('button', { name: 'New class' }).click()
  await page.getByLabel('Name of the class').fill('Evening group')
  await page.getByLabel('Winter hand cream (example)').check()
}

/** The letters of the key, in the order of the sheet. */
const keyOf = (page: Page): Promise<string> =>
  page
    .locator('.teach-letters td')
    .allInnerTexts()
    .then((letters) => letters.join(''))

async function makeQuiz(page: Page): Promise<void> {
  await part(page, 'Question sheet')
  await page.getByLabel('How many questions').fill('6')
  await page.getByLabel('Seed').fill('4711')
  await page.getByRole('button', { name: 'Make the sheet' }).click()
  await page.getByText('The key is complete.').waitFor()
}

const otherThan = (letter: string): string => (letter === 'A' ? 'B' : 'A')

test.each([1280, 390])(
  'at %i px: a class, a sheet of questions with its key on paper, letters of students, tables; sound throughout',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await makeClass(page)
    await page.getByText('Choose roles').click()
    await page.getByLabel('Preservative', { exact: true }).check()
    await expectNoFault(page, `class-${width}`)
    await page.getByLabel('Preservative', { exact: true }).uncheck()
    await makeQuiz(page)
    await expectNoFault(page, `quiz-${width}`)
    expect(await paperOf(page, `quiz-${width}`)).toEqual([2, 2])
    const key = await keyOf(page)
    expect(key).toMatch(/^[A-F]{6}$/)
    await part(page, 'Results')
    await page.getByLabel('Name or number').fill('=Ada')
    await page.getByLabel('Letters, one a question').fill(key.toLowerCase())
    await page.keyboard.press('Enter')
    await page.getByText('Paste several').click()
    const half = `${key.slice(0, 3)}-${otherThan(key[4] ?? '')}${otherThan(key[5] ?? '')}`
    await page.getByLabel('One student a line').fill(`Bo; ${half}\nCy; AB`)
    await page.getByRole('button', { name: 'Take them in' }).click()
    await page.getByText('Line 1, “Cy; AB”: 2 letters, the sheet has 6 questions').waitFor()
    expect(await page.getByLabel('One student a line').inputValue()).toBe('Cy; AB')
    await expectNoFault(page, `results-${width}`)
    const saved = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save by student (CSV)' }).click()
    expect((await textOf(saved)).split('\r\n')).toEqual([
      `\ufeffStudent,Right,of,"Right, %",${[1, 2, 3, 4, 5, 6].map((n) => `question ${n}`).join(',')}`,
      `'=Ada,6,6,100,${[...key].join(',')}`,
      `Bo,3,6,50,${[...half].join(',').replace('-', 'open')}`,
      '',
    ])
    await page.reload()
    expect(await page.getByLabel('Letters of Bo').inputValue()).toBe(half)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'the same seed makes the same sheet again',
  async () => {
    const sheets: string[] = []
    for (const _ of [1, 2]) {
      const { page } = await openPage(app, 1280)
      await makeClass(page)
      await makeQuiz(page)
      sheets.push(await page.locator('.teach-items').innerText())
      await page.context().close()
    }
    expect(sheets[0]).toContain('Answer')
    expect(sheets[1]).toBe(sheets[0])
  },
  SLOW_MS,
)

test.each([1280, 390])(
  'at %i px a hand-out has blanks on its first page and the key on its second, with the cautions of lye on both',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await page
      .getByLabel('Your recipe as text')
      .fill('Aqua q.s.\n0.2 % Carbomer\n0.1 % Sodium hydroxide\n4 % Glycerin\n0.9 % Phenoxyethanol\npH 5.5')
    await page.getByRole('button', { name: 'Put on the bench' }).click()
    await page.locator('.verdict').waitFor()
    await makeClass(page)
    await page.getByLabel(/\(on the bench\)/).check()
    await part(page, 'Hand-out')
    await page.getByText('The key is worked out for all 10 lines.').waitFor({ timeout: 90_000 })
    await expectNoFault(page, `handout-${width}`)
    expect(await paperOf(page, `handout-${width}`)).toEqual([2, 2])
    await page.getByRole('combobox', { name: 'Recipe' }).selectOption({ index: 1 })
    await page.getByText('The key is worked out for all 5 lines.').waitFor({ timeout: 90_000 })
    expect(await page.locator('.teach-cautions', { hasText: /Sodium hydroxide burns skin and eyes/ }).count()).toBe(2)
    expect(await paperOf(page, `handout-lye-${width}`)).toEqual([2, 2])
    await page.getByLabel('Print the key too').uncheck()
    expect(await paperOf(page, `blanks-${width}`)).toEqual([1, 1])
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)
