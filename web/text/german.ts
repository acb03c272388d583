import type * as words from './de.ts'
import { language } from './language.ts'

/** All German words, in a file that no one else loads; null where the page speaks English. */
export let german: typeof words | null = null

/** Fetches the words of the page's language, before any module that shows them is loaded. */
export async function loadWords(): Promise<void> {
  if (language === 'de') german = await import('./de.ts')
}
