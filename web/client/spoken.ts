import type { Api } from '#contract/api.ts'
import { language } from '#web/text/language.ts'

export type Route = keyof Api

/** Routes whose sentences come in every language of the page, as server/answers/languages.ts has them; a test compares. */
const SPOKEN: ReadonlySet<Route> = new Set<Route>([
  'POST /api/check',
  'POST /api/preservation',
  'POST /api/ph/window',
  'POST /api/ph/adjust',
  'POST /api/resolve',
  'POST /api/swaps',
  'POST /api/swap-sheet',
  'POST /api/batch',
  'POST /api/label',
  'GET /api/ingredients',
  'GET /api/ingredients/:id',
  'GET /api/ingredients/:id/stand-ins',
  'GET /api/names',
  'GET /api/graph',
  'GET /api/graph/whole',
  'GET /api/sources',
  'GET /api/sources/:id',
  'GET /api/roles',
  'GET /api/roles/:id',
])

/** Whether the reply of a route comes in the language of this page. */
export const isSpoken = (route: Route): boolean => language === 'en' || SPOKEN.has(route)
