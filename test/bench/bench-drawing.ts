/**
 * How smoothly the whole graph can be moved about, no test: `npm run bench:drawing [-- 500 1000 all]`. A browser without a
 * screen draws in software, on as many cores as the machine has left: the figures are those of this machine at this time.
 */
import { availableParallelism, loadavg } from 'node:os'
import type { Page } from 'playwright-core'
import { openPage, startApp } from '../browser/start-app.ts'
import { quantile, round } from './measure.ts'
import { processorTime_ms } from './processor-time.ts'
import { sectionText } from './section.ts'
import type { Row } from './section.ts'

const SECONDS = 4
const ROUNDS = 3
const FULL_FPS = 50
const FULL_AT = '500'
/** Width of the drag and how far the pointer goes from one event to the next [px]. */
const DRAG_PX = { wide: 180, step: 6 }

/** Runs in the page; as text, since what tsx makes of a function needs helpers that the page does not have. */
const NOTE_FRAMES = `
  window.frameTimes = []
  if (!window.noting) requestAnimationFrame(function note(time) {
    window.noting = true
    window.frameTimes.push(time)
    requestAnimationFrame(note)
  })`

interface Dragged {
  /** times between frames [ms] */
  frames: number[]
  /** processor time of all of the browser for one frame [ms] */
  processor_ms: number | null
}

const BROWSER = /chrom/i

/** Drags the drawing to and fro for some seconds. */
async function drag(page: Page): Promise<Dragged> {
  const box = (await page.getByRole('application').boundingBox())!
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + 10, y)
  await page.evaluate(NOTE_FRAMES)
  const before = processorTime_ms(BROWSER)
  const end = Date.now() + SECONDS * 1000
  for (let at = 0; Date.now() < end; at++) {
    const turn = (at * DRAG_PX.step) / DRAG_PX.wide
    await page.mouse.move(x + DRAG_PX.wide * Math.sin(turn), y + (DRAG_PX.wide / 2) * Math.cos(turn))
  }
  const times = await page.evaluate<number[]>('window.frameTimes.slice()')
  const after = processorTime_ms(BROWSER)
  await page.mouse.up()
  const frames = times.slice(1).map((time, at) => time - times[at]!)
  return { frames, processor_ms: before === null || after === null ? null : (after - before) / frames.length }
}

async function measure(page: Page, address: string, size: string): Promise<Row> {
  await page.goto(`${address}/explore?whole=${size}`)
  await page.locator('.sigma-nodes').waitFor({ state: 'attached' })
  await page.waitForTimeout(1500)
  const shown = /^[\d,]+/.exec(await page.locator('.explorer-whole [role=status]').innerText())?.[0]
  const rounds: Dragged[] = []
  for (let n = 0; n < ROUNDS; n++) rounds.push(await drag(page))
  const fps = rounds.map(({ frames }) => (1000 * frames.length) / frames.reduce((sum, time) => sum + time, 0))
  const best = rounds[fps.indexOf(Math.max(...fps))]!
  const cost_ms = rounds.flatMap(({ processor_ms }) => processor_ms ?? [])
  return {
    size,
    shown: shown ?? null,
    'fps, best round': round(Math.max(...fps)),
    'fps, worst round': round(Math.min(...fps)),
    'frame p50, ms': round(quantile(best.frames, 0.5)),
    'frame p95, ms': round(quantile(best.frames, 0.95)),
    'processor a frame, ms': cost_ms.length > 0 ? round(Math.min(...cost_ms)) : null,
  }
}

const asked = process.argv.slice(2)
const app = await startApp()
try {
  const { page } = await openPage(app, 1280)
  const rows: Row[] = []
  for (const size of asked.length > 0 ? asked : ['500', '1000', 'all'])
    rows.push(await measure(page, app.address, size))
  const target = rows.find(({ size }) => size === FULL_AT)
  const fps = Number(target?.['fps, best round'])
  const load = loadavg().map((one) => round(one, 2))
  console.log(
    sectionText({
      title: `Moving the whole graph, drawn in software; ${availableParallelism()} cores, load ${load.join(' ')}`,
      rows,
      targets: target
        ? [{ text: `at least ${FULL_FPS} frames a second at ${FULL_AT} nodes: ${fps}`, reached: fps >= FULL_FPS }]
        : [],
    }),
  )
} finally {
  await app.stop()
}
process.exit(0)
