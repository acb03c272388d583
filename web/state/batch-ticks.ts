import { useState } from 'react'

const KEY = 'understudy-batch-ticks'

interface Kept {
  sheet: string
  ticked: string[]
}

function save(kept: Kept): void {
  try {
    window.localStorage.setItem(KEY, JSON.stringify(kept))
  } catch {
    // storage is full or forbidden: the ticks last as long as the page
  }
}

function load(sheet: string): string[] {
  try {
    const kept = JSON.parse(window.localStorage.getItem(KEY) ?? 'null') as Kept | null
    return kept?.sheet === sheet && Array.isArray(kept.ticked)
      ? kept.ticked.filter((one) => typeof one === 'string')
      : []
  } catch {
    return []
  }
}

export interface TickStore {
  isTicked: (id: string) => boolean
  toggle: (id: string) => void
  clear: () => void
  any: boolean
}

/**
 * What is weighed and done already, kept in this browser: a phone that goes to sleep between two lines forgets nothing.
 *
 * @param sheet  what makes this sheet this one; on another sheet nothing is ticked
 */
export function useTicks(sheet: string): TickStore {
  const [kept, setKept] = useState<Kept>(() => ({ sheet, ticked: load(sheet) }))
  const ticked = kept.sheet === sheet ? kept.ticked : load(sheet)
  const take = (next: string[]) => {
    save({ sheet, ticked: next })
    setKept({ sheet, ticked: next })
  }
  return {
    isTicked: (id) => ticked.includes(id),
    toggle: (id) => take(ticked.includes(id) ? ticked.filter((one) => one !== id) : [...ticked, id]),
    clear: () => take([]),
    any: ticked.length > 0,
  }
}
