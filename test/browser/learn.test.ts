import { afterAll, beforeAll, expect, test } from 'vitest'
import { expectSound } from './access.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 240_000

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

test.each([1280, 390])(
  'at %d px questions are answered by keyboard alone and kept over a reload, and the page is sound',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await page.getByRole('link', { name: 'Learn' }).click()
    await page.locator('.learn-item').waitFor()
    await page.getByLabel('What is wrong here').check()
    await page.locator('.learn-recipe').waitFor()
    await expectSound(page)
    await page.locator('.learn-choice input').first().focus()
    await page.keyboard.press('ArrowDown')
    await page.keyboard.press('Enter')
    await page.locator('.learn-feedback').waitFor()
    await expectSound(page)
    const folder = process.env['PICTURES']
    if (folder) await page.screenshot({ path: `${folder}/learn-${width}.png`, fullPage: true })
    await page.keyboard.press('Enter') // the way on has the focus
    await page.getByText('Question 2 of 6').waitFor()
    await page.reload()
    await page.getByText('1 question answered so far').waitFor()
    expect(faults).toEqual([])
  },
  SLOW_MS,
)
