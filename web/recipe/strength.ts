import { readNumber, NUMBER } from './number.ts'

const STRENGTH = new RegExp(
  String.raw`[([]?\s*(?<![\w.,-])(${NUMBER})\s*%\s*(?:w\s*/\s*w|active(?:\s+matter)?|aq(?:ueous)?\.?)?\s*[)\]]?`,
  'i',
)
const LIMIT = /[([]\s*(?:max\.?|up\s+to|bis|usual)\b[^)\]]*[)\]]/i

/** Takes "lactic acid 80 %" apart: what is left of the name, and the strength of the bottle [%]. */
export function splitStrength(name: string): { name: string; strength_percent?: number } {
  const bare = name.replace(LIMIT, ' ').replace(/\s+/g, ' ').trim()
  const hit = STRENGTH.exec(bare)
  const value = hit ? readNumber(hit[1] ?? '') : null
  if (!hit || value === null || value <= 0 || value >= 100) return { name: bare || name }
  const rest = bare
    .replace(hit[0], ' ')
    .replace(/\b(?:aqueous\s+)?(?:solution|sol\.|lösung)/i, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,-]+(?:of\s+)?|[\s,(-]+$/g, '')
  return rest.length > 1 ? { name: rest, strength_percent: value } : { name: bare }
}
