import { translateKnowledge } from '#engine/knowledge/translate-knowledge.ts'
import { german } from '#engine/words/say.ts'
import type { Language } from '#engine/words/say.ts'
import { buildWorld } from './world.ts'
import type { World } from './world.ts'

const made = new WeakMap<World, Map<Language, World>>()

/** The same world speaking another language; built when first asked for. Ids, figures and names are the same. */
export function inLanguage(world: World, language: Language): World {
  const catalogue = world.knowledge.languages.get(language)
  if (language === world.say.language || !catalogue) return world
  const known = made.get(world) ?? new Map<Language, World>()
  made.set(world, known)
  const translated =
    known.get(language) ?? buildWorld(translateKnowledge(world.knowledge, catalogue), german(catalogue))
  known.set(language, translated)
  return translated
}
