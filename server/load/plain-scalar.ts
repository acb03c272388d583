/** Said where a text is not surely understood: the library reads it then. */
export class NotPlain extends Error {}

export function giveUp(): never {
  throw new NotPlain()
}

const NUMBER = /^-?(?:0|[1-9]\d{0,14})(?:\.\d{1,15})?$/
/** What could be another way to write a number or nothing: hexadecimal, a power, infinity, a tilde. */
const LIKE_NUMBER = /^(?:~|[-+.]*(?:0[xo][\da-f]*|[\d._]*(?:e[-+]?\d*)?|inf|nan))$/i
const CONSTANTS: ReadonlyMap<string, unknown> = new Map<string, unknown>([
  ['null', null],
  ['true', true],
  ['false', false],
])
/** A scalar that begins so is not plain, or only sometimes. */
const INDICATOR = /^[-?:,[\]{}#&*!|>'"%@`]/

/** Letters of the longest constant. */
const LONGEST_CONSTANT = 5

/** Whether a text begins with a letter of English, or with a sign that means nothing to YAML. */
function beginsAsText(text: string): boolean {
  const code = text.charCodeAt(0)
  return code > 127 || (code >= 97 && code <= 122) || (code >= 65 && code <= 90)
}

/** Value of an unquoted scalar by the core schema of YAML 1.2: 5 is a number, 2026-11-25 and "no" are text. */
export function plainValue(text: string): unknown {
  if (beginsAsText(text)) {
    if (text.length > LONGEST_CONSTANT || !CONSTANTS.has(text.toLowerCase())) return text
    return CONSTANTS.has(text) ? CONSTANTS.get(text) : giveUp()
  }
  if (NUMBER.test(text)) return Number(text)
  return text === '' || INDICATOR.test(text) || LIKE_NUMBER.test(text) ? giveUp() : text
}

/** Where a quoted scalar that begins here ends, behind its closing quote. Escapes are left to the library. */
export function endOfQuoted(text: string, start: number): number {
  const quote = text.charAt(start)
  let end = text.indexOf(quote, start + 1)
  while (quote === "'" && end >= 0 && text.charAt(end + 1) === "'") end = text.indexOf(quote, end + 2)
  if (end < 0 || (quote === '"' && text.slice(start, end).includes('\\'))) giveUp()
  return end + 1
}

/** What stands in quotes; in single ones a doubled quote is one. */
export function quotedValue(text: string): string {
  const inner = text.slice(1, -1)
  return text.charAt(0) === "'" ? inner.replaceAll("''", "'") : inner
}

const USUAL_KEY = /^[a-z]+(?:[_-][a-z0-9]+)*$/

/** A key that is text and not a number or constant. */
export function plainKey(text: string): string {
  if (USUAL_KEY.test(text) && !(text.length <= LONGEST_CONSTANT && CONSTANTS.has(text))) return text
  const key = plainValue(text)
  return typeof key === 'string' && !key.includes(' #') ? key : giveUp()
}

/** Sets a key that is new; one that is doubled, or that every object has, is left to the library. */
export function put(map: Record<string, unknown>, key: string, value: unknown): void {
  if (key in map) giveUp()
  map[key] = value
}
