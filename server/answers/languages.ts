import { inLanguage } from '#engine/index.ts'
import type { Language, World } from '#engine/index.ts'
import type { Route } from './answer.ts'

/** Routes whose sentences are all in the catalogue; the others speak English, rather than two languages at once. */
const IN_ALL_LANGUAGES: ReadonlySet<string> = new Set([
  '/api/check',
  '/api/preservation',
  '/api/ph/window',
  '/api/ph/adjust',
  '/api/resolve',
  '/api/swaps',
  '/api/swap-sheet',
  '/api/batch',
  '/api/label',
  '/api/ingredients',
  '/api/ingredients/:id',
  '/api/ingredients/:id/stand-ins',
  '/api/names',
  '/api/graph',
  '/api/graph/whole',
  '/api/sources',
  '/api/sources/:id',
  '/api/roles',
  '/api/roles/:id',
])

export const speaks = ({ url }: Route, language: Language): Language => (IN_ALL_LANGUAGES.has(url) ? language : 'en')

/** The world that answers a route in a language. */
export const worldFor = (world: World, route: Route, language: Language): World =>
  inLanguage(world, speaks(route, language))
