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
  }).observe({ type: 'event', durationThreshold: 16 })
`

const settle = (page: Page) => page.waitForTimeout(700)

export interface Work {
  /** by the clock, as the browser tells it: delay of each interaction; of less than 16 ms it tells nothing */
  delays_ms: number[]
  /** processor time of the main thread from each input until after its next paint */
  worked_ms: number[]
}

/** What a person does at the bench, line by line: another share, a line missing and not, undo and redo. */
function* inputs(page: Page): Generator<() => Promise<void>> {
  const lines = page.locator('.recipe .line')
  for (const at of [3, 12, 28]) {
    yield () => lines.nth(at).locator('.share input').click()
    for (const key of ['2', '.', '5', 'Tab']) yield () => page.keyboard.press(key)
  }
  for (const at of [2, 9, 20]) {
    const missing = lines.nth(at).getByRole('button', { name: /is missing$/ })
    yield () => missing.click()
    yield () => missing.click()
  }
  yield () => page.getByRole('button', { name: 'Undo' }).click()
  yield () => page.getByRole('button', { name: 'Redo' }).click()
}

const nextPaint = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve))))

/** Puts the long recipe on the bench and works on it. @param soFar_ms processor time of the main thread so far */
export async function workAtTheBench(page: Page, address: string, soFar_ms: () => Promise<number>): Promise<Work> {
  await page.goto(address)
  await page.getByLabel('Your recipe as text').fill(longRecipe())
  await page.getByRole('button', { name: 'Put on the bench' }).click()
  await page.locator('.recipe .line').nth(29).waitFor()
  await settle(page)
  await page.waitForLoadState('networkidle')
  await page.evaluate(WATCH)
  const worked_ms: number[] = []
  for (const input of inputs(page)) {
    const before_ms = await soFar_ms()
    await input()
    await nextPaint(page)
    worked_ms.push((await soFar_ms()) - before_ms)
    await settle(page)
  }
  return { delays_ms: await page.evaluate('[...interactions.values()]'), worked_ms }
}
