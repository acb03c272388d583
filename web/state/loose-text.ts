const KEY = 'understudy-loose-text'
type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

/** Text of fields for a recipe that is on no bench yet, by the place of its field. */
export type LooseText = Readonly<Record<string, string>>

/** Keeps what is typed over a load of the page. @returns false when the browser refuses */
export function keepLooseText(store: Store, typed: LooseText): boolean {
  const some = Object.entries(typed).filter(([, text]) => text.trim() !== '')
  try {
    if (some.length > 0) store.setItem(KEY, JSON.stringify(Object.fromEntries(some)))
    else store.removeItem(KEY)
    return true
  } catch {
    return some.length === 0
  }
}

function kept(store: Store): Record<string, unknown> {
  try {
    const value: unknown = JSON.parse(store.getItem(KEY) ?? '{}')
    return typeof value === 'object' && value !== null ? { ...value } : {}
  } catch {
    return {}
  }
}

/** What was typed in this place before the page was loaded. */
export function looseTextAt(store: Store, place: string): string {
  const text = kept(store)[place]
  return typeof text === 'string' ? text : ''
}

/** The field has it again: from here on it is the field's. */
export function dropLooseText(store: Store, place: string): void {
  const rest = Object.entries(kept(store)).filter(([one]) => one !== place)
  keepLooseText(store, Object.fromEntries(rest.map(([one, text]) => [one, String(text)])))
}
