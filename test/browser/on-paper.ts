import type { Page } from 'playwright-core'

/** Pages of a printed document: each is an object of its own. */
export const pagesOf = (pdf: Buffer): number => (pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length

/** What is seen on paper beside the sheet itself, and what stands out of the page. */
export const strayOnPaper = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const seen = (element: Element) => element.getClientRects().length > 0
    const stray = [...document.querySelectorAll('nav, button, .tools, .why, .screen-only, input:not([type=checkbox])')]
    const wide = document.documentElement.scrollWidth - window.innerWidth
    return [
      ...stray
        .filter((element) => seen(element) && !element.closest('.recipe, .bench-title'))
        .map(({ className }) => className || 'element'),
      ...(wide > 1 ? [`${wide} px too wide`] : []),
    ]
  })

/** Colour and ground of the page: black on white on paper, whatever the screen has. */
export const coloursOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { color, backgroundColor } = getComputedStyle(document.body)
    return [color, backgroundColor]
  })
