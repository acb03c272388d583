export const LANGUAGES = ['en', 'de'] as const
export type Language = (typeof LANGUAGES)[number]

const KEY = 'understudy-language'
type Store = Pick<Storage, 'getItem' | 'setItem'>

const isLanguage = (value: unknown): value is Language => (LANGUAGES as readonly unknown[]).includes(value)

/** The language that a person chose, else the first language of the browser where the page speaks it, else English. */
export function loadLanguage(store: () => Store, browserLanguage: string | undefined): Language {
  try {
    const kept = store().getItem(KEY)
    if (isLanguage(kept)) return kept
  } catch {
    // storage is forbidden: the browser's language decides at every load
  }
  const [first = ''] = (browserLanguage ?? '').toLowerCase().split('-')
  return isLanguage(first) ? first : 'en'
}

/** @returns false when the browser refuses to keep it */
export function saveLanguage(store: () => Store, language: Language): boolean {
  try {
    store().setItem(KEY, language)
    return true
  } catch {
    return false
  }
}
