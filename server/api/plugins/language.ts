import type { Language } from '#engine/index.ts'

const LANGUAGES: readonly Language[] = ['en', 'de']

/** One part of the header: "de-AT;q=0.7" is German with a weight of 0.7. */
function wishOf(part: string): { language: string; weight: number } {
  const [range = '', ...parameters] = part.split(';').map((piece) => piece.trim().toLowerCase())
  const weight = parameters.find((parameter) => parameter.startsWith('q='))
  return { language: range.split('-')[0] ?? '', weight: weight ? Number(weight.slice(2)) : 1 }
}

/** The language that a caller likes best of those spoken here (RFC 9110, 12.5.4); English where none is named. */
export function languageOf(header: string | undefined): Language {
  const wishes = (header ?? '').split(',').map(wishOf)
  const weightOf = (language: Language): number =>
    Math.max(0, ...wishes.filter((wish) => wish.language === language && wish.weight > 0).map(({ weight }) => weight))
  return LANGUAGES.reduce((best, one) => (weightOf(one) > weightOf(best) ? one : best))
}
