import type { Phase } from './types.ts'

export interface Heading {
  phase: Phase | null
  /** letter or number, when the heading says no more than that */
  group: string | null
  /** what follows the colon */
  rest: string
}

const WATER = /\b(?:water|aqueous|aqua|wasser|wässrige?|acqua|acuosa|agua|aqueuse|eau)/i
const OIL = /\b(?:oils?|oily|fats?|lipid|wax(?:es)?|öl|fett|aceite|oleosa|grasa|huileuse|huiles?|grasse)/i
const COOL =
  /cool(?:ing)?[\s-]*down|\bcool(?:ing)?\b|abkühl|enfriamiento|refroidissement|post[\s-]?emulsif|\badditives?\b/i
const COMPOUND = /^(?:wasser|öl|fett|abkühl)phase/i
const WORD = String.raw`(?:phase|fase|teil|part|stage)`
const LETTERED = new RegExp(String.raw`^(?:heated\s+)?${WORD}\s*[:.-]?\s*([A-H]\d?|[1-8]|I{1,3}V?)(?![\w])`, 'i')
const NAMED = new RegExp(
  String.raw`^(?:the\s+|heated\s+)?(?:water|aqueous|oil|oily|fat|lipid|wax|cool(?:ing)?[\s-]*down)[\s-]*${WORD}s?\b|^${WORD}\s+(?:aqueuse|huileuse|grasse|acuosa|oleosa|grasa)\b`,
  'i',
)
const BARE = /^(?:cool(?:ing)?[\s-]*down|water|oils?|fats?|wasser|öle?|fett)\s*:$/i

/** Which phase a text speaks of, if it says so. */
export function phaseInWords(text: string): Phase | null {
  if (COOL.test(text)) return 'cool-down'
  if (WATER.test(text) || /^wasserphase/i.test(text)) return 'water'
  return OIL.test(text) || /^(?:öl|fett)phase/i.test(text) ? 'oil' : null
}

/** Reads "Phase A", "Oil phase (75 C):", "Cool down: ..."; null when the line is no heading. */
export function readHeading(line: string): Heading | null {
  const text = line
    .replace(/^#+\s*/, '')
    .replace(/^[-=~]{2,}\s*|\s*[-=~]{2,}$/g, '')
    .trim()
  const cool = /^cool(?:ing)?[\s-]*down\b(?!\s+(?:to|below|under|and|the|until))/i.test(text)
  const lettered = LETTERED.exec(text)
  if (!lettered && !NAMED.test(text) && !COMPOUND.test(text) && !BARE.test(text) && !cool) return null
  const colon = text.indexOf(':')
  const head = colon < 0 ? text : text.slice(0, colon)
  const rest = colon < 0 ? '' : text.slice(colon + 1).trim()
  const afterLetter = lettered ? head.slice(lettered[0].length) : head
  const phase = phaseInWords(afterLetter) ?? phaseInWords(rest === '' || /\d/.test(rest) ? '' : rest)
  return { phase, group: lettered?.[1]?.toUpperCase() ?? null, rest: /[a-z]{3}/i.test(rest) ? rest : '' }
}
