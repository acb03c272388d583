import { translateKnowledge } from '#engine/knowledge/translate-knowledge.ts'
import { buildWorld } from '#engine/graph/world.ts'
import type { World } from '#engine/graph/world.ts'
import { english } from '#engine/words/say.ts'
import type { Say } from '#engine/words/say.ts'

/** A language that only puts brackets round what is translated: what stands outside them nobody marked. */
const bracketed = (text: string): string => (text === '' ? '' : `⟦${text}⟧`)

const tag = (strings: TemplateStringsArray, ...values: readonly (string | number)[]): string =>
  strings.reduce((text, part, index) => `${text}${index === 0 ? '' : String(values[index - 1])}${bracketed(part)}`, '')

const words = (text: string): string => text.replace(/[a-z]+(?: [a-z]+)*/g, bracketed)

const say: Say = Object.assign(tag, {
  ...english,
  language: 'de' as const,
  text: bracketed,
  inside: (name: string) => name,
  range: (range: Parameters<Say['range']>[0]) => words(english.range(range)),
  article: (noun: string) => noun,
  list: (list: readonly string[], last: 'and' | 'or') => list.join(bracketed(` ${last} `)),
})

class Bracketing extends Map<string, string> {
  override get(text: string): string {
    return bracketed(text)
  }
}

export const pseudoWorld = ({ knowledge }: World): World =>
  buildWorld(translateKnowledge(knowledge, new Bracketing()), say)

/** A text without what is bracketed. */
export const outsideBrackets = (text: string): string => text.replace(/⟦[^⟦⟧]*⟧/g, ' ')
