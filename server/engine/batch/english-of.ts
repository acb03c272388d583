import type { World } from '#engine/graph/world.ts'
import type { Catalogue } from '#engine/words/catalogue.ts'

const memo = new WeakMap<Catalogue, ReadonlyMap<string, string>>()

/** The first of several English texts that are said alike counts. */
const turned = (catalogue: Catalogue): ReadonlyMap<string, string> =>
  new Map([...catalogue].reverse().map(([english, other]) => [other, english]))

/**
 * The English text of what a record says. A world of another language holds its records translated; what the work reads
 * out of their words (a heat, a way of wetting) is read from the English.
 */
export function englishOf(text: string, { knowledge, say }: Pick<World, 'knowledge' | 'say'>): string {
  const catalogue = say.language === 'en' ? undefined : knowledge.languages.get(say.language)
  if (!catalogue) return text
  const english = memo.get(catalogue) ?? turned(catalogue)
  memo.set(catalogue, english)
  return english.get(text) ?? text
}
