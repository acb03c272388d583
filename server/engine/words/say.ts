import type { Range } from '#engine/units/range.ts'
import { rangeText } from '#engine/units/range.ts'
import { short } from '#engine/units/round.ts'
import type { Catalogue } from './catalogue.ts'

export type Language = 'en' | 'de'

/** What a sentence may hold: words, or a figure, which is written as the language writes it. */
type Value = string | number

/**
 * How the engine puts a sentence into words. Sentences stand in English where they belong, marked by this tag; a
 * catalogue gives them in other languages by their English text, with {1}, {2} ... for the values. What the catalogue
 * lacks is said in English.
 */
export interface Say {
  (strings: TemplateStringsArray, ...values: readonly Value[]): string
  readonly language: Language
  /** a sentence of the data, which is no template */
  text(english: string): string
  /** a figure with three significant digits */
  short(value: number): string
  /** a figure that was written with digits of its own choosing */
  figure(digits: string): string
  /** a name inside a sentence: in small letters where the language has them there */
  inside(name: string): string
  /** "3 to 5", "at most 5", "from 3" */
  range(range: Range): string
  /** a noun with its article where the language can do without knowing the noun's gender, else the noun alone */
  article(noun: string): string
  /** "a, b and c" or "a, b or c" */
  list(words: readonly string[], last: 'and' | 'or'): string
}

/** The English text by which catalogues know a template: "at {1} %". */
export const templateOf = (strings: readonly string[]): string =>
  strings.reduce((text, part, index) => `${text}{${index}}${part}`)

const filled = (template: string, values: readonly string[]): string =>
  template.replace(/\{(\d+)\}/g, (_, place: string) => values[Number(place) - 1] ?? '')

function listOf(words: readonly string[], last: string): string {
  const head = words.slice(0, -1)
  return head.length === 0 ? (words[0] ?? '') : `${head.join(', ')} ${last} ${words.at(-1) ?? ''}`
}

/** A noun with its article; what is many (ions) has none. */
const withArticle = (noun: string): string =>
  /[^s]s$/.test(noun) ? noun : `${/^[aeiou]/i.test(noun) ? 'an' : 'a'} ${noun}`

const inEnglish = (strings: TemplateStringsArray, ...values: readonly Value[]): string =>
  strings.reduce((text, part, index) => `${text}${values[index - 1] ?? ''}${part}`)

export const english: Say = Object.assign(inEnglish, {
  language: 'en' as const,
  text: (words: string) => words,
  short,
  figure: (digits: string) => digits,
  inside: (name: string) => name.toLowerCase(),
  range: rangeText,
  article: withArticle,
  list: listOf,
})

/** Figures with a decimal comma; 1000 and more keep their digits together. */
const withComma = (figure: string): string => figure.replace('.', ',')

function germanRange({ min, max }: Range): string {
  if (min === undefined) return `höchstens ${max === undefined ? '?' : withComma(String(max))}`
  if (max === undefined) return `ab ${withComma(String(min))}`
  return min === max ? withComma(String(min)) : `${withComma(String(min))} bis ${withComma(String(max))}`
}

/** German by a catalogue of sentences. */
export function german(catalogue: Catalogue): Say {
  const templates = new WeakMap<TemplateStringsArray, string>()
  const templateFor = (strings: TemplateStringsArray): string => {
    const known = templates.get(strings)
    if (known !== undefined) return known
    const key = templateOf(strings)
    const template = catalogue.get(key) ?? key
    templates.set(strings, template)
    return template
  }
  const tag = (strings: TemplateStringsArray, ...values: readonly Value[]): string =>
    filled(
      templateFor(strings),
      values.map((value) => (typeof value === 'number' ? withComma(String(value)) : value)),
    )
  return Object.assign(tag, {
    language: 'de' as const,
    text: (words: string) => catalogue.get(words) ?? words,
    short: (value: number) => withComma(short(value)),
    figure: withComma,
    inside: (name: string) => name,
    range: germanRange,
    article: (noun: string) => noun,
    list: (words: readonly string[], last: 'and' | 'or') => listOf(words, last === 'and' ? 'und' : 'oder'),
  })
}
