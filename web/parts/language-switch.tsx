import { announce } from '#web/parts/announcer.tsx'
import { looseText } from '#web/offline/keep.ts'
import { LANGUAGES } from '#web/state/kept-language.ts'
import type { Language } from '#web/state/kept-language.ts'
import { keepLooseText } from '#web/state/loose-text.ts'
import { language, speak } from '#web/text/language.ts'
import { text } from '#web/text/text.ts'

/** Each in its own words: who looks for a language reads no other. */
const NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' }

function change(next: Language): void {
  if (next === language) return
  if (!keepLooseText(window.sessionStorage, looseText()) || !speak(next)) announce(text.app.notSwitched)
}

/** The languages of the page; another one loads the page again. */
export function LanguageSwitch() {
  return (
    <div className="languages" role="group" aria-label={text.app.language}>
      {LANGUAGES.map((one) => (
        <button key={one} type="button" lang={one} aria-pressed={one === language} onClick={() => change(one)}>
          {NAMES[one]}
        </button>
      ))}
    </div>
  )
}
