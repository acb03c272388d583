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
  'at %d px a change is made, guessed at and looked at, by keyboard alone',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    await page
      .getByRole('button', { name: /light hand cream|hand cream/i })
      .first()
      .click()
    await page.getByRole('link', { name: 'What if' }).click()
    await page.locator('.what-if-form').waitFor()
    await expectSound(page)
    await page.getByLabel('New pH').focus()
    await page.keyboard.type('8,5')
    await page.keyboard.press('Enter')
    await page.getByText('Tick all that you expect').waitFor()
    await expectSound(page)
    await page.keyboard.press('Space') // the first choice has the focus
    await page.keyboard.press('Enter')
    await page.locator('.what-if-outcome').waitFor()
    await expectSound(page)
    const folder = process.env['PICTURES']
    if (folder) await page.screenshot({ path: `${folder}/what-if-${width}.png`, fullPage: true })
    expect(await page.locator('.what-if-outcome .findings').count()).toBeGreaterThan(0)
    await page.keyboard.press('Enter') // the way on has the focus
    await page.locator('.what-if-form').waitFor()
    expect(faults).toEqual([])
  },
  SLOW_MS,
)
