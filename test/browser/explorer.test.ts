import { mkdir } from 'node:fs/promises'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Page } from 'playwright-core'
import { expectSound } from './access.ts'
import { openPage, startApp } from './start-app.ts'
import type { Started } from './start-app.ts'

const SLOW_MS = 240_000
const POLL = { timeout: 20_000 }
const WIDTHS = [1280, 390]

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

/** Pictures to look at, where a folder for them is given. */
async function picture(page: Page, name: string, width: number): Promise<void> {
  const folder = process.env['PICTURES']
  if (!folder) return
  await mkdir(folder, { recursive: true })
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme })
    await page.screenshot({ path: `${folder}/explorer-${name}-${width}-${colorScheme}.png`, fullPage: true })
  }
}

const query = (page: Page): URLSearchParams => new URL(page.url()).searchParams
const inQuery = (page: Page, key: string) => expect.poll(() => query(page).get(key), POLL)
const press = async (page: Page, ...keys: string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key)
}
/** Goes by Tab to the first element that fits; fails when it does not come. */
async function tabTo(page: Page, selector: string, most = 60): Promise<void> {
  for (let n = 0; n < most; n++) {
    await page.keyboard.press('Tab')
    if (await page.evaluate((fits) => document.activeElement?.matches(fits) ?? false, selector)) return
  }
  throw new Error(`Tab does not lead to ${selector}`)
}
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? '')

test(
  'every task of the drawing is done in the outline by keyboard alone',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await page.goto(`${app.address}/explore`)
    await page.getByRole('heading', { level: 1 }).waitFor()
    await tabTo(page, 'input[type=search]') // find
    await page.keyboard.insertText('glycerin')
    await page.getByText(/^\d+ match/).waitFor()
    await press(page, 'Enter')
    await page.getByRole('heading', { name: 'Glycerin in the graph' }).waitFor()
    await tabTo(page, 'input[name=view]') // choose the outline
    await press(page, 'ArrowDown', 'ArrowDown')
    await inQuery(page, 'view').toBe('outline')
    await tabTo(page, 'summary') // look at a pH
    await press(page, 'Enter')
    await tabTo(page, 'input[type=checkbox]')
    await press(page, 'Space')
    await tabTo(page, 'input[type=range]')
    await press(page, 'Home', 'ArrowRight', 'ArrowRight')
    await inQuery(page, 'ph').toBe('0.2')
    await page.getByText(/^Of the ingredients shown/).waitFor()
    await tabTo(page, '.ticks input') // switch a relation off
    await press(page, 'Space')
    await inQuery(page, 'relations').not.toContain('plays')
    await press(page, 'Space')
    await tabTo(page, '[role=treeitem]') // walk, open, fold
    expect(await focused(page)).toMatch(/^Glycerin, Ingredient/)
    await press(page, 'ArrowRight', 'ArrowRight')
    expect(await focused(page)).toBe('Humectant, Role')
    await press(page, 'Enter')
    await inQuery(page, 'open').toBe('role:humectant')
    await page.getByRole('treeitem', { name: /^is done by \(/ }).waitFor()
    expect(await focused(page)).toBe('Humectant, Role')
    await press(page, 'ArrowRight')
    expect(await focused(page)).toMatch(/^is (a special case of|mistaken for|done by)/)
    await press(page, 'ArrowLeft') // folds the relation
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-expanded'))).toBe('false')
    await press(page, 'ArrowLeft')
    expect(await focused(page)).toBe('Humectant, Role')
    await page.keyboard.type('solv')
    expect(await focused(page)).toMatch(/^Solvent, Role/)
    await tabTo(page, '.explorer-detail a') // read the record
    await press(page, 'Enter')
    await page.waitForURL(/\/role\/solvent$/)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'the table opens, shows the rest, follows a way and leads to records by keyboard alone',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    const way = 'glycerin~plays~role:humectant,role:humectant~played-by~sorbitol'
    await page.goto(`${app.address}/explore?${new URLSearchParams({ path: way, view: 'table', heat: '120' })}`)
    await page.locator('.explorer-table').waitFor()
    expect(await page.locator('.explorer-way li').allInnerTexts()).toEqual([
      'Glycerin does the job of Humectant',
      'Humectant is done by Sorbitol',
    ])
    const rows = page.locator('.explorer-table tbody tr')
    expect(await rows.count()).toBe(2)
    expect(await rows.nth(1).innerText()).toMatch(/not known there|does not hold there|holds there/)
    await tabTo(page, '.explorer-do button')
    expect(await focused(page)).toBe('Open Humectant')
    await press(page, 'Enter')
    await expect.poll(() => rows.count(), POLL).toBeGreaterThan(9)
    expect(await focused(page)).toBe('Close Humectant')
    const before = await rows.count()
    await tabTo(page, '.explorer-rest button', 120)
    await press(page, 'Enter')
    await expect.poll(() => rows.count(), POLL).toBeGreaterThan(before)
    await page.reload()
    await expect.poll(() => rows.count(), POLL).toBeGreaterThan(before) // the link carries it all
    await tabTo(page, '.explorer-do a')
    await press(page, 'Enter')
    await page.waitForURL(/\/role\/humectant$/)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'marks of the drawing are walked, opened and closed by keyboard, and a click opens one too',
  async () => {
    const { page, faults } = await openPage(app, 1280)
    await page.goto(`${app.address}/explore?at=glycerin`)
    await page.locator('.sigma-nodes').waitFor({ state: 'attached' })
    await tabTo(page, '[role=application]')
    const chosen = page.locator('.explorer-detail h2')
    await press(page, 'ArrowRight')
    await expect.poll(() => chosen.innerText(), POLL).not.toBe('Glycerin')
    const name = await chosen.innerText()
    await press(page, 'Enter')
    await inQuery(page, 'open').not.toBeNull()
    await page.getByRole('button', { name: `Close ${name}` }).waitFor()
    await press(page, 'Enter')
    await inQuery(page, 'open').toBeNull()
    await press(page, '+', '-', '0')
    await page.locator('.explorer-canvas').scrollIntoViewIfNeeded()
    await page.waitForTimeout(500)
    const box = (await page.locator('.explorer-canvas').boundingBox())!
    const reached = new Set<string>()
    // Marks of the right half stand below one another: somewhere along this line is one.
    for (let part = 0.55; part < 0.95 && reached.size === 0; part += 0.02) {
      await page.mouse.click(box.x + box.width * part, box.y + box.height / 2)
      const now = await chosen.innerText().catch(() => '')
      if (query(page).get('open') !== null) reached.add(now)
    }
    expect(reached.size).toBe(1)
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test.each(WIDTHS)(
  'at %d px every view is sound, in the light and in the dark',
  async (width) => {
    const { page, faults } = await openPage(app, width)
    for (const view of ['drawing', 'table', 'outline']) {
      await page.goto(`${app.address}/explore?at=sodium-benzoate&open=role:preservative&ph=6&heat=75&view=${view}`)
      await page.locator('.explorer-main').waitFor()
      if (view === 'drawing') await page.locator('.sigma-nodes').waitFor({ state: 'attached' })
      await expectSound(page)
      await picture(page, view, width)
    }
    await page.goto(`${app.address}/explore?whole=500`)
    await page.locator('.sigma-nodes').waitFor({ state: 'attached' })
    await expectSound(page)
    await picture(page, 'whole', width)
    for (const view of ['Table', 'Outline']) {
      await page.getByLabel(view, { exact: true }).check()
      await page.getByLabel('Only names with').fill('citr')
      await page.locator('.explorer-main').getByText('Citric acid', { exact: true }).waitFor()
      await expectSound(page)
    }
    expect(faults).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'at twice the size nothing is wider than the window, and what is pressed is large enough for a finger',
  async () => {
    const { page } = await openPage(app, 640) // a window of 1280 px, everything twice as large
    await page.goto(`${app.address}/explore?at=glycerin&ph=5&view=outline`)
    await page.getByRole('treeitem').first().waitFor()
    await expectSound(page)
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('.explorer :is(button, input, select, a, summary, [role=treeitem])')]
        .map(
          (element) =>
            [element.textContent ?? '', (element.closest('label') ?? element).getBoundingClientRect()] as const,
        )
        .filter(([, { width, height }]) => width > 0 && (width < 24 || height < 24))
        .map(([text]) => text),
    )
    expect(small).toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)

test(
  'the drawing comes apart: neither the bench nor table and outline ask for it',
  async () => {
    const { page } = await openPage(app, 1280)
    const asked: string[] = []
    page.on('request', (request) => asked.push(new URL(request.url()).pathname))
    const drawing = () => asked.filter((path) => /drawing-view|sigma/.test(path))
    await page.goto(`${app.address}/`)
    await page.getByRole('button', { name: 'Put on the bench' }).waitFor()
    expect(asked.filter((path) => /explorer/.test(path))).toEqual([])
    await page.goto(`${app.address}/explore?at=glycerin&view=outline`)
    await page.getByRole('treeitem').first().waitFor()
    expect(drawing()).toEqual([])
    await page.getByLabel('Drawing', { exact: true }).check()
    await page.locator('.sigma-nodes').waitFor({ state: 'attached' })
    expect(drawing()).not.toEqual([])
    await page.context().close()
  },
  SLOW_MS,
)
