import { NUMBER, readNumber } from './number.ts'
import type { Trouble, Unit } from './types.ts'

export interface Amount {
  name: string
  amount: number | null
  unit: Unit
  fills: boolean
  fillsTo?: number
  trouble?: Trouble
}

const MASS: Record<string, number> = { kg: 1000, mg: 0.001, oz: 28.3495, lb: 453.592 }
const PERCENT = String.raw`(?:%(?:\s*(?:w\s*/\s*w|m\s*/\s*m|wt\.?))?|per\s?cent|prozent|wt\.?\s?%|pct\.?)`
const GRAMS = String.raw`(?:kg|mg|g|gr|gms?|grams?|gramm|oz|ounces?|lbs?)(?![\w])`
const ONE = String.raw`(${NUMBER})\s*(${PERCENT}|${GRAMS})?`
const KITCHEN =
  /(?:\d+(?:[.,/]\d+)?|½|¼|¾|\ba\b)\s*(?:-\s*\d+\s*)?(?:tsp|tbsp|teaspoons?|tablespoons?|cups?|drops?|ml|l|litres?|liters?|tropfen|el|tl|esslöffel|teelöffel|tassen?|messerspitzen?|msp|prisen?|spritzer|pinch|dash)\b\.?/i
const RANGE = new RegExp(
  String.raw`(?<![\w.,-])(${NUMBER})\s*%?\s*(?:-|–|—|to|bis)\s*(${NUMBER})\s*(?:${PERCENT}|${GRAMS}|$)`,
  'i',
)
const TO_100 = new RegExp(
  String.raw`(?:\(?\b(?:q\.?\s?s\.?(?:\s*(?:to|ad|for|up to))?|to|ad|up\s+to|bis|auf|make\s+up\s+to|fill\s+to)\s*:?\s*(100(?:[.,]0+)?|[1-9]\d{2,5}(?=\s*g))\s*(?:%|g|ml|grams?)?\)?)`,
  'i',
)
const AS_NEEDED =
  /(?:^|[\s(,:.-])(?:q\.\s?s\.?|qs|quantum\s+satis|as\s+needed|as\s+required|to\s+taste|nach\s+bedarf)(?=$|[\s),.;:])/i
const REST = /(?:^|[\s(,:.–—-])(?:balance|remainder|rest|the\s+rest|remaining)(?=$|[\s),.;])/i
const WATERY = /\b(?:aqua|water|wasser|eau|agua|acqua|hydrosol)\b/i
// Names that end in a number of their own: the number is no amount.
const NUMBERED_NAME =
  /(?:^|\s)(?:polysorbate?|poloxamer|c\.?\s?i\.?|e|peg|ppg|nylon|laureth|steareth|ceteareth|oleth|ceteth|polyquaternium|quaternium|vitamin\s+b|f\.?d\.?\s?&\s?c\.?\s?\w+\s+no\.?|no\.?)[\s-]*\d+$/i

/** Takes dots, colons and dashes off the ends of a name, and brackets that hold nothing. */
export const tidyName = (text: string): string =>
  text
    .replace(/\(\s*\)|\[\s*\]/g, ' ')
    .replace(/\.{2,}|…+|_{2,}/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s.,:;=|@–—-]+|[\s,:;=|@(–—-]+$/g, '')
    .replace(/\s+of$/i, '')
    .replace(/(?<=\w{3})\.$/, '')
    .trim()

const unitOf = (word: string | undefined): Unit => {
  if (word === undefined || word === '') return 'none'
  return new RegExp(`^${GRAMS}$`, 'i').test(word) ? 'grams' : 'percent'
}

function scaled(text: string, word: string | undefined): number | null {
  const value = readNumber(text, unitOf(word) === 'grams')
  const key = (word ?? '')
    .toLowerCase()
    .replace(/^ounces?$/, 'oz')
    .replace(/^lbs$/, 'lb')
  return value === null ? null : Number((value * (MASS[key] ?? 1)).toPrecision(10))
}

const nothing = (name: string, trouble: Trouble): Amount => ({
  name,
  amount: null,
  unit: 'none',
  fills: false,
  trouble,
})

function found(name: string, value: number | null, unit: Unit): Amount | null {
  if (value === null || !/\p{L}{2}/u.test(name)) return null
  if (value === 0) return { ...nothing(tidyName(name), 'zero') }
  return { name: tidyName(name), amount: value, unit, fills: false }
}

function readFiller(text: string): Amount | null {
  const to = TO_100.exec(text)
  if (to && /\p{L}{2}/u.test(text.replace(to[0], ''))) {
    const total = readNumber((to[1] ?? '').trim(), true)
    const name = tidyName(text.replace(to[0], ' ').replace(AS_NEEDED, ' ').replace(/%/g, ' '))
    return { name, amount: null, unit: 'none', fills: true, ...(total !== null && { fillsTo: total }) }
  }
  const needed = AS_NEEDED.exec(text) ?? REST.exec(text)
  if (!needed) return null
  const name = tidyName(
    text
      .replace(needed[0], ' ')
      .replace(/\bto\s+p\s?h\b.*$/i, ' ')
      .replace(/[%]/g, ' '),
  )
  if (!/\p{L}{2}/u.test(name)) return null
  const isRest = REST.test(text) || WATERY.test(name)
  return isRest ? { name, amount: null, unit: 'none', fills: true } : nothing(name, 'as-needed')
}

const LEADING = new RegExp(String.raw`^${ONE}(?=[\s:)|]|$)(?:[\s:)|]|[x×](?=\s))*(?:of\s+)?`, 'i')
const BRACKET = new RegExp(String.raw`[([]\s*${ONE}\s*[)\]]`, 'i')
const TRAILING = new RegExp(String.raw`(?<![\w/.,-])${ONE}[\s.)]*$`, 'i')
const DOTTED = new RegExp(String.raw`(?:\.{2,}|…|(?<!\d)[:=–—@,]|\s-)\s*${ONE}[\s.)]*$`, 'i')
const ANYWHERE = new RegExp(String.raw`(?<![\w/.-])(${NUMBER})\s*(${PERCENT}|${GRAMS})`, 'gi')

function readTrailing(text: string): Amount | null {
  const hit = DOTTED.exec(text) ?? TRAILING.exec(text)
  if (!hit) return null
  if (unitOf(hit[2]) === 'none' && NUMBERED_NAME.test(text.slice(0, hit.index) + hit[0].trim())) return null
  return found(text.slice(0, hit.index), scaled(hit[1] ?? '', hit[2]), unitOf(hit[2]))
}

function readWithUnit(text: string): Amount | null {
  const hits = [...text.matchAll(ANYWHERE)].filter((hit) => !/(?:max\.?|up to|bis)\s*$/i.test(text.slice(0, hit.index)))
  const hit = hits.at(-1)
  if (!hit) return null
  const name = `${text.slice(0, hit.index)} ${text.slice(hit.index + hit[0].length)}`
  return found(name, scaled(hit[1] ?? '', hit[2]), unitOf(hit[2]))
}

/** "2-3 %"; "CI 77891 - 2 %" is none, because its first figure is the larger. */
function readRange(line: string): RegExpExecArray | null {
  const hit = RANGE.exec(line)
  if (!hit) return null
  return (readNumber(hit[1] ?? '') ?? 0) < (readNumber(hit[2] ?? '') ?? 0) ? hit : null
}

/** Splits a line into name and amount. The amount is null when the line has none; `trouble` says why when it has one that cannot be used. */
export function readAmount(line: string): Amount {
  const filler = readFiller(line)
  if (filler) return filler
  const leading = LEADING.exec(line)
  const isSolution = /solution|lösung|\bsol\b/i.test(line) && (line.match(/\d\s*%/g) ?? []).length > 1
  if (leading && !isSolution && unitOf(leading[2]) !== 'none') {
    const read = found(line.slice(leading[0].length), scaled(leading[1] ?? '', leading[2]), unitOf(leading[2]))
    if (read) return read
  }
  if (KITCHEN.test(line) && !/%|\d\s*g\b/i.test(line))
    return nothing(tidyName(line.replace(KITCHEN, ' ')), 'kitchen-unit')
  const range = readRange(line)
  if (range) return nothing(tidyName(line.replace(range[0], ' ')), 'range')
  const bracket = BRACKET.exec(line)
  if (bracket && unitOf(bracket[2]) !== 'none' && !/\d\s*$/.test(line.slice(bracket.index + bracket[0].length))) {
    const read = found(line.replace(bracket[0], ' '), scaled(bracket[1] ?? '', bracket[2]), unitOf(bracket[2]))
    if (read) return read
  }
  const trailing = readTrailing(line)
  if (trailing) return trailing
  const plain = leading ? found(line.slice(leading[0].length), scaled(leading[1] ?? '', leading[2]), 'none') : null
  return plain ?? readWithUnit(line) ?? nothing(tidyName(line), 'no-share')
}
