/** Draws the PNG icons of the page from web/public/icon.svg: `node .ci/draw-icons.mjs`, after a change of the drawing. */
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { chromium } from 'playwright-core'

const folder = join(dirname(dirname(fileURLToPath(import.meta.url))), 'web/public')
const drawing = readFileSync(join(folder, 'icon.svg'), 'utf8')

/** File, side [px], share of the side that the drawing takes, ground: a maskable icon may be cut to a circle. */
const ICONS = [
  ['icon-192.png', 192, 1, 'transparent'],
  ['icon-512.png', 512, 1, 'transparent'],
  ['icon-maskable-512.png', 512, 0.68, '#fdfefe'],
]

const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] })
for (const [name, side_px, share, ground] of ICONS) {
  const page = await browser.newPage({ viewport: { width: side_px, height: side_px } })
  const inner_px = side_px * share
  const centre = `display:grid;place-items:center;height:100vh;margin:0;background:${ground}`
  const sized = drawing.replace('<svg ', `<svg width="${inner_px}" height="${inner_px}" `)
  await page.setContent(`<body style="${centre}">${sized}</body>`)
  await page.screenshot({ path: join(folder, name), omitBackground: true })
  await page.close()
}
await browser.close()
