import { afterAll, beforeAll, expect, test } from 'vitest'
import { describeLesson, listLessons } from '#engine/index.ts'
import { realWorld } from '../helpers.ts'
import { expectSound } from './access.ts'
import { openPage, startApp } from './start-app.ts'
import type { Opened, Started } from './start-app.ts'

const SLOW_MS = 400_000
const PHONE = 390

const world = realWorld()
const lessons = listLessons(world)
const kindOf = (id: string): string => describeLesson(world, id)!.live.kind
/** The first lesson of each kind of live example. */
const oneOfEach = [...new Map(lessons.map(({ id }): [string, string] => [kindOf(id), id]).reverse()).values()]

let app: Started
beforeAll(async () => {
  app = await startApp()
}, SLOW_MS)
afterAll(() => app?.stop())

async function open({ page }: Opened, id: string): Promise<void> {
  await page.goto(`${app.address}/lesson/${id}`)
  await page.locator('#lesson-live').waitFor()
  await page.waitForFunction(() => !document.querySelector('#content .state:not(.failed), #content [aria-busy="true"]'))
}

test(
  'on a phone every lesson shows its example, nothing fails, and nothing is wider than the window',
  async () => {
    const opened = await openPage(app, PHONE)
    const { page, faults } = opened
    const wrong: string[] = []
    const folder = process.env['PICTURES']
    for (const { id, title } of lessons) {
      await open(opened, id)
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      const failed = await page.locator('#content .failed').count()
      const heading = await page.locator('h1').innerText()
      if (wide > 0 || failed > 0 || heading !== title)
        wrong.push(`${id}: ${wide} px too wide, ${failed} failed, ${heading}`)
      if (folder) await page.screenshot({ path: `${folder}/lesson-${id}.png`, fullPage: true })
    }
    expect(lessons.length).toBeGreaterThan(110)
    expect(wrong).toEqual([])
    expect(faults).toEqual([])
  },
  SLOW_MS,
)

test.each([1280, PHONE])(
  'at %d px a lesson of each kind of example is sound',
  async (width) => {
    const opened = await openPage(app, width)
    for (const id of oneOfEach) {
      await open(opened, id)
      await expectSound(opened.page)
    }
    expect(opened.faults).toEqual([])
  },
  SLOW_MS,
)
