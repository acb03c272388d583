import { createContext, useContext } from 'react'
import type { ReactNode } from 'react'
import { isSpoken } from '#web/client/spoken.ts'
import type { Route } from '#web/client/spoken.ts'
import { text } from '#web/text/text.ts'

const IsForeign = createContext(false)

/** What is below shows the reply of a route, which may speak another language than the page. */
export function Spoken({ by, children }: { by: Route; children: ReactNode }) {
  return <IsForeign value={!isSpoken(by)}>{children}</IsForeign>
}

/** Words of a reply: marked as English where they are and the page is not, so that they are read out rightly. */
export function Said({ children }: { children: ReactNode }) {
  return useContext(IsForeign) ? <span lang="en">{children}</span> : <>{children}</>
}

/** The same for an element with content of its own. */
export const useSaid = (): { lang?: 'en' } => (useContext(IsForeign) ? { lang: 'en' } : {})

/** Says once that this part is in English so far; nothing where it speaks the page's language. */
export function InEnglish({ by }: { by: Route }) {
  return isSpoken(by) ? null : <p className="remark screen-only in-english">{text.app.inEnglish}</p>
}
