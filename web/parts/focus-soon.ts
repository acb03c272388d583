const MOST_FRAMES = 40

/**
 * Moves the focus to the first element that fits, as soon as it is there: what was in focus is often gone after a change.
 * Gives up when nothing fits, or when the person has moved on meanwhile.
 */
export function focusSoon(selector: string): void {
  const before = document.activeElement
  const look = (frames: number) => {
    const { activeElement } = document
    if (frames > MOST_FRAMES || (activeElement !== before && activeElement !== document.body)) return
    const target = document.querySelector<HTMLElement>(selector)
    if (target) target.focus()
    else requestAnimationFrame(() => look(frames + 1))
  }
  requestAnimationFrame(() => look(0))
}

/** The row of a line of the recipe, or something within it. */
export const lineSelector = (key: string, within = ''): string => `[data-line="${key}"] ${within}`.trim()
