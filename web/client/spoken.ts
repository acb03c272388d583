import type { Api } from '#contract/api.ts'
import { language } from '#web/text/language.ts'

export type Route = keyof Api

/** Routes whose sentences come in every language of the page, as server/answers/languages.ts has them; a test compares. */
const SPOKEN: ReadonlySet<Route> = new Set<Route>(['POST /api/check', 'POST /api/preservation'])

/** Whether the reply of a route comes in the language of this page. */
export const isSpoken = (route: Route): boolean => language === 'en' || SPOKEN.has(route)
