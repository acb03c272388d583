const rows = (): HTMLElement[] => [...document.querySelectorAll<HTMLElement>('.recipe [data-line]')]

/** Place in the recipe at a height of the window [px from its top]: that of the line there, of an end beyond the ends. */
export function dropPlace(y_px: number): number | null {
  const all = rows()
  if (all.length === 0) return null
  const below = all.findIndex((row) => y_px < row.getBoundingClientRect().bottom)
  return below < 0 ? all.length - 1 : below
}

/** Shows which line is being dragged and where it would go; nothing for null. */
export function markDrop(key: string | null, place: number | null): void {
  const all = rows()
  const from = all.findIndex(({ dataset }) => dataset['line'] === key)
  for (const [at, row] of all.entries()) {
    row.toggleAttribute('data-dragged', key !== null && at === from)
    const isTarget = key !== null && at === place && at !== from
    row.classList.toggle('drop-above', isTarget && at < from)
    row.classList.toggle('drop-below', isTarget && at > from)
  }
}
