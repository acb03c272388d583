import { loadLanguage, saveLanguage } from '#web/state/kept-language.ts'
import type { Language } from '#web/state/kept-language.ts'

const store = (): Storage => localStorage

/** Language of this page, decided once at its load: where words differ, whole modules of them are taken. */
export const language: Language = loadLanguage(store, typeof navigator === 'undefined' ? undefined : navigator.language)

/**
 * Loads the page in another language. The recipe stands in storage and in the address, and both outlive a load.
 *
 * @returns false when the browser does not keep the choice, so that a load would come back as it was
 */
export function speak(next: Language): boolean {
  if (!saveLanguage(store, next)) return false
  window.location.reload()
  return true
}
