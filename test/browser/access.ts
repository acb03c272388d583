import AxeBuilder from '@axe-core/playwright'
import { expect } from 'vitest'
import type { Page } from 'playwright-core'

/** Serious and critical violations, each with the element it was found at. */
async function graveFaults(page: Page, rules?: string[]): Promise<string[]> {
  const builder = new AxeBuilder({ page })
  const { violations } = await (rules ? builder.withRules(rules) : builder).analyze()
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`))
}

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)

/** No serious accessibility fault in the light, no lack of contrast in the dark, no sideways scroll. */
export async function expectSound(page: Page): Promise<void> {
  expect(await sideways(page)).toBeLessThanOrEqual(0)
  await page.emulateMedia({ colorScheme: 'light' })
  expect(await graveFaults(page)).toEqual([])
  await page.emulateMedia({ colorScheme: 'dark' })
  expect(await graveFaults(page, ['color-contrast'])).toEqual([]) // the dark differs in colour only
}

/** Opens what is folded in the first of the elements, as far as it goes. */
export const unfoldFirst = (page: Page, selector: string): Promise<void> =>
  page
    .locator(selector)
    .first()
    .evaluate((element) => element.querySelectorAll('details').forEach((one) => one.setAttribute('open', '')))
