/** A typed name taken apart: what is named, and what the rest says of strength or form. */
export interface CleanName {
  /** without amounts; brackets still in place */
  text: string
  /** what stands outside of brackets */
  outer: string
  /** what stands in brackets, in order */
  inner: string[]
  /** whether a bracket stands inside the name, as in US label names */
  bracketInside: boolean
  /** strength, share and form as typed */
  remarks: string[]
}

const NUMBER = String.raw`\d+(?:[.,]\d+)?`

const PERCENT = new RegExp(
  String.raw`(?:^|[\s(,:;=~-]+)(${NUMBER})\s*(?:%|percent\b|per cent\b|prozent\b|por ciento\b|pour cent\b)` +
    String.raw`\s*((?:active matter|active|solution|aqueous solution|in water|w\/w|w\/v|aq\.?|sol\.?|lösung|solución|strength)(?![a-z]))?`,
  'gi',
)
const PERCENT_SIGN_FIRST = new RegExp(String.raw`%\s*${NUMBER}`, 'g')
const AMOUNT = new RegExp(
  String.raw`[,;:\s(-]+${NUMBER}\s*(?:g|gr|gm|grams?|gramm|kg|mg|ml|cl|l|oz|lbs?|drops?|tropfen|tsp|tbsp|parts?|teile)\b\.?`,
  'gi',
)
const LEADING_AMOUNT = new RegExp(
  String.raw`^\s*${NUMBER}\s*(?:g|gr|grams?|kg|mg|ml|oz|drops?|tsp|tbsp)\b\.?(?:\s+of\b)?`,
  'i',
)
const TOP_UP =
  /[\s,;:(-]*\b(?:q\.?\s?s\.?|ad|to|up to|auf|hasta|bis|jusqu.à|csp|c\.s\.p\.?)\.?\s*(?:(?:to|ad)\s*)?100\b\s*%?/gi
const QUANTITY_SUFFICES = /[\s,;:(-]+(?:q\.\s?s\.?|qs|c\.s\.p\.?|csp)\s*\)?$/i
const TRAILING_SHARE = new RegExp(String.raw`\s*(?:[:=]|\s[-–—])\s*${NUMBER}\s*$`)
const TEMPERATURE = /\(?\s*\d+\s*°\s*[cf]?\s*\)?/gi

const FORM = new RegExp(
  String.raw`\b(anhydrous|monohydrate|dihydrate|trihydrate|tetrahydrate|pentahydrate|hexahydrate|heptahydrate|decahydrate|` +
    String.raw`dodecahydrate|hydrate|solution|in water|aqueous|wasserfrei|monohydrat|lösung|anhydre|monohydraté?|anhidro|monohidrato)\b`,
  'gi',
)

/** Takes amounts, strengths and brackets off a typed name. Says nothing of what it means. */
export function cleanName(typed: string): CleanName {
  const remarks: string[] = []
  let text = ` ${typed
    .normalize('NFC')
    .replace(/[_\u00a0\t\r\n]+/g, ' ')
    .replace(/[‐‑‒–—−]/g, '-')} `
  text = text.replace(TOP_UP, (all) => {
    remarks.push(all.trim().replace(/^[,;:(\s-]+/, ''))
    return ' '
  })
  text = text.replace(TEMPERATURE, (all) => {
    remarks.push(all.trim().replace(/[()]/g, ''))
    return ' '
  })
  text = text.replace(PERCENT, (_all, number: string, kind: string | undefined) => {
    remarks.push(`${number.replace(',', '.')} %${kind ? ` ${kind.toLowerCase()}` : ''}`)
    return _all.includes('(') ? ' (' : ' '
  })
  text = text.replace(PERCENT_SIGN_FIRST, ' ')
  text = text.replace(AMOUNT, (all) => {
    remarks.push(all.trim().replace(/^[,;:(\s-]+/, ''))
    return all.includes('(') ? ' (' : ' '
  })
  text = text
    .replace(LEADING_AMOUNT, ' ')
    .replace(/^\s*q\.?\s?s\.?\s+/i, ' ')
    .replace(QUANTITY_SUFFICES, ' ')
    .replace(TRAILING_SHARE, ' ')
  for (const match of text.matchAll(FORM)) remarks.push(match[0].toLowerCase())
  text = text
    .replace(/\(\s*\)/g, ' ')
    .replace(/\(\s*$/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;:.*•-]+|[\s,;:*-]+$/g, '')
  const inner = [...text.matchAll(/[([]([^()[\]]*)[)\]]/g)].map((match) => (match[1] ?? '').trim())
  const outer = text
    .replace(/[([][^()[\]]*[)\]]/g, ' ')
    .replace(/[()[\]]/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;:-]+|[\s,;:-]+$/g, '')
  const bracketInside = /[)\]]\s*[a-z]/i.test(text)
  return { text, outer, inner: inner.filter((part) => part !== ''), bracketInside, remarks: [...new Set(remarks)] }
}

/** Parts of a blend as typed, by the signs that join them, strongest first. */
const JOINTS = [
  /\s*\(\s*and\s*\)\s*|\s+\+\s+|\s*&\s*|\s+and\s+/i,
  /\s*\(\s*and\s*\)\s*|\s*\+\s*|\s*&\s*|\s+(?:and|with|in|und|mit|et|avec|y|con|plus)\s+/i,
  /\s*\(\s*and\s*\)\s*|\s*[+&]\s*|\s+(?:and|with|und|mit|et|avec|y|con|plus)\s+|\s*\/\s*|\s*[,;]\s+/i,
  /\s*\(\s*and\s*\)\s*|\s*[+&]\s*|\s+(?:and|with|und|mit|et|avec|y|e|con|plus)\s+|\s*\/\s*|\s*[,;]\s*|\s+-\s+/i,
]

/** Ways to read a text as a list of parts; each with at least two. */
export function partsOf(text: string): string[][] {
  const out: string[][] = []
  for (const joint of JOINTS) {
    const parts = text
      .split(joint)
      .map((part) => part.trim())
      .filter((part) => part !== '')
    const same = out.some((other) => other.join('|') === parts.join('|'))
    if (parts.length > 1 && parts.length <= 8 && !same) out.push(parts)
  }
  return out
}
