import type { Page } from 'playwright-core'

/** As people write: bullets, dots, commas, headings, steps; one name that means several things. */
export const RECIPE = `Water phase:
- water q.s. to 100
- 3 % Glycerin
• xanthan gum 0,3 %

Oil phase (75 °C):
sweet almond oil ........ 12
Cetearyl Olivate (and) Sorbitan Olivate 5%
cetearyl\t2

Cool down:
Phenoxyethanol (and) Ethylhexylglycerin 1

Heat both phases to 75 C, then stir until cool
pH 5.5`

/** The choice that answers the name with several meanings. */
export const ANSWER = /^Cetearyl alcohol(?! and)/

const MISSING = 'Prunus amygdalus dulcis oil'

export const missingButton = (page: Page) => page.getByRole('button', { name: `${MISSING} is missing` })
export const useButtons = (page: Page) => page.getByRole('button', { name: /^Use (?!this)/ })
export const choice = (page: Page) =>
  page.getByRole('group', { name: 'Choose what cetearyl is' }).getByRole('button', { name: ANSWER })

/** Each line of the recipe with what stands in its share field. */
export const recipeOf = (page: Page): Promise<string[]> =>
  page.locator('.recipe .line').evaluateAll((lines) =>
    lines.map((line) => {
      const field = line.querySelector('input')
      return `${line.querySelector('.line-name > :first-child')?.textContent} ${field?.value || field?.placeholder}`
    }),
  )

export const sumOf = (page: Page): Promise<string> => page.locator('.recipe tfoot .total').innerText()

/** Waits for the verdict on the recipe as it stands now. */
export async function untilChecked(page: Page): Promise<void> {
  await page.locator('.verdict').waitFor()
  await page.locator('.verdict small').waitFor({ state: 'detached' })
}

export async function paste(page: Page): Promise<void> {
  await page.getByLabel('Your recipe as text').fill(RECIPE)
  await page.getByRole('button', { name: 'Put on the bench' }).click()
}

/** Paste, answer the asked name, and wait for the check. */
export async function pasteAndAnswer(page: Page): Promise<void> {
  await paste(page)
  await choice(page).click()
  await untilChecked(page)
}
