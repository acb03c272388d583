const MOST_FRAMES = 40

/**
 * Moves the focus to what fits the first selector, else the next one, as soon as something is there: what was in focus is
 * often gone after a change. Gives up when nothing fits, or when the person has moved on meanwhile.
 */
export function focusSoon(...selectors: readonly string[]): void {
  const before = document.activeElement
  const look = (frames: number) => {
    const { activeElement } = document
    if (frames > MOST_FRAMES || (activeElement !== before && activeElement !== document.body)) return
    const target = selectors
      .map((selector) => document.querySelector<HTMLElement>(selector))
      .find((one) => one !== null)
    if (target) target.focus()
    else requestAnimationFrame(() => look(frames + 1))
  }
  requestAnimationFrame(() => look(0))
}

/** The row of a line of the recipe, or something within it. */
export const lineSelector = (key: string, within = ''): string => `[data-line="${key}"] ${within}`.trim()
