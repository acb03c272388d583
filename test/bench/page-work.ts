import type { Page } from 'playwright-core'

const OILS = [
  'sunflower oil',
  'jojoba oil',
  'sweet almond oil',
  'castor oil',
  'olive oil',
  'shea butter',
  'cocoa butter',
]
const WATER = ['glycerin', 'panthenol', 'urea', 'sorbitol', 'betaine', 'propanediol', 'sodium lactate', 'allantoin']
const REST = [
  'cetyl alcohol',
  'stearic acid',
  'glyceryl stearate',
  'xanthan gum',
  'sodium benzoate',
  'potassium sorbate',
  'citric acid',
  'tocopherol',
  'bisabolol',
  'squalane',
  'isopropyl myristate',
  'caprylic/capric triglyceride',
  'zinc oxide',
  'sodium hyaluronate',
]

/** A recipe of thirty lines, of our own: as long as they come. */
export const longRecipe = (): string =>
  ['water to 100', ...[...OILS, ...WATER, ...REST].map((name, at) => `${name} ${((at % 5) + 1) / 2} %`)].join('\n')

/** Takes down how long each interaction waits for its next paint; the browser counts in steps of 8 ms. */
const WATCH = `
  window.interactions = new Map()
  new PerformanceObserver((list) => {
    for (const { interactionId, duration } of list.getEntries()) {
      if (interactionId) interactions.set(interactionId, Math.max(duration, interactions.get(interactionId) ?? 0))
    }
  }).observe({ type: 'event', durationThreshold: 16, buffered: true })
`

const settle = (page: Page) => page.waitForTimeout(700)

/** What a person does at the bench, line by line: another share, a line missing and not, undo, the wishes. */
async function work(page: Page): Promise<void> {
  const lines = page.locator('.recipe .line')
  for (const at of [3, 12, 28]) {
    await lines.nth(at).locator('.share input').click()
    await page.keyboard.type('2.5')
    await page.keyboard.press('Tab')
    await settle(page)
  }
  for (const at of [2, 9, 20]) {
    const missing = lines.nth(at).getByRole('button', { name: /is missing$/ })
    await missing.click()
    await settle(page)
    await missing.click()
    await settle(page)
  }
  await page.getByRole('button', { name: 'Undo' }).click()
  await settle(page)
  await page.getByRole('button', { name: 'Redo' }).click()
  await settle(page)
}

export interface Work {
  /** delay of each interaction; of less than 16 ms the browser tells nothing */
  delays_ms: number[]
  /** processor time of the main thread for all of it */
  work_ms: number
}

/** Puts the long recipe on the bench and works on it. @param worked_ms processor time so far */
export async function workAtTheBench(page: Page, address: string, worked_ms: () => Promise<number>): Promise<Work> {
  await page.goto(address)
  await page.getByLabel('Your recipe as text').fill(longRecipe())
  await page.getByRole('button', { name: 'Put on the bench' }).click()
  await page.locator('.recipe .line').nth(29).waitFor()
  await settle(page)
  await page.waitForLoadState('networkidle')
  await page.evaluate(WATCH.replace(', buffered: true', ''))
  const before_ms = await worked_ms()
  await work(page)
  const work_ms = (await worked_ms()) - before_ms
  return { delays_ms: await page.evaluate('[...interactions.values()]'), work_ms }
}
