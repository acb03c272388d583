import type { Locator, Page } from 'playwright-core'

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

/** Made ready first, so that finding the place is not counted as work of the page. */
type Input = () => Promise<() => Promise<void>>

const press =
  (page: Page, key: string): Input =>
  async () =>
  () =>
    page.keyboard.press(key)

const click =
  (page: Page, target: Locator): Input =>
  async () => {
    await target.scrollIntoViewIfNeeded()
    const box = await target.boundingBox()
    if (!box) throw new Error('there is nothing to click on')
    return () => page.mouse.click(box.x + box.width / 2, box.y + box.height / 2)
  }

/** What a person does at the bench, line by line: another share, a line missing and not, undo and redo. */
function inputs(page: Page): Input[] {
  const lines = page.locator('.recipe .line')
  const share = (at: number) => [
    click(page, lines.nth(at).locator('.share input')),
    ...['2', '.', '5', 'Tab'].map((key) => press(page, key)),
  ]
  const missing = (at: number) => click(page, lines.nth(at).getByRole('button', { name: /is missing$/ }))
  const marked = [2, 9, 20].flatMap((at) => [missing(at), missing(at)])
  const undone = ['Undo', 'Redo'].map((name) => click(page, page.getByRole('button', { name })))
  return [...[3, 12, 28].flatMap(share), ...marked, ...undone]
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
  for (const ready of inputs(page)) {
    const input = await ready()
    const before_ms = await soFar_ms()
    await input()
    await nextPaint(page)
    worked_ms.push((await soFar_ms()) - before_ms)
    await settle(page)
  }
  return { delays_ms: await page.evaluate('[...interactions.values()]'), worked_ms }
}
