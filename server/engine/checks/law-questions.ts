import type { Say } from '#engine/words/say.ts'
import type { Ask } from './law-fit.ts'

const PURPOSE: Record<string, (say: Say) => string> = {
  'uv-filter': (say) => say`Is it in as a UV filter?`,
  fragrance: (say) => say`Is it in for its scent?`,
  preservative: (say) => say`Is it in for another purpose than preserving, and does the product make that plain?`,
}

const QUESTION: Record<Ask['kind'], (texts: string[], say: Say) => string> = {
  areas: (_, say) => say`Say where the product is used (face, eye, lip, hair, under 3 years …)`,
  use: (texts, say) =>
    say`Is the product meant as: ${texts.map(say.text).join(say` or `)}? The entry has a row of its own for that`,
  professional: (_, say) => say`Is it for professional use only, or for the public?`,
  spray: (_, say) => say`Is it sold as a spray?`,
  purpose: (texts, say) => texts.map((text) => PURPOSE[text]?.(say) ?? '').join(' '),
  strength: (texts, say) => say`State the strength of ${texts.join(', ')} as the bottle says`,
  blend: (texts, say) => say`Ask the supplier for the shares in ${texts.join(', ')}`,
}

/** What a person would have to say, in one sentence for each kind of question. */
export const questionsOf = (asks: readonly Ask[], say: Say): string[] =>
  (Object.keys(QUESTION) as Ask['kind'][]).flatMap((kind) => {
    const texts = [...new Set(asks.filter((ask) => ask.kind === kind).map(({ text }) => text))].sort()
    return texts.length > 0 ? [QUESTION[kind](texts, say)] : []
  })
