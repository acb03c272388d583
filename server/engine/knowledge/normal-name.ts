const LETTERS: Record<string, string> = {
  ß: 'ss',
  œ: 'oe',
  æ: 'ae',
  ø: 'o',
  ł: 'l',
  ı: 'i',
  α: 'alpha',
  β: 'beta',
  γ: 'gamma',
  δ: 'delta',
}

/** British and American spellings of the same word fold to one. */
const spelling = (text: string): string =>
  text
    .replace(/sulph/g, 'sulf')
    .replace(/aluminium/g, 'aluminum')
    .replace(/hydrolys(?=ed|ate)/g, 'hydrolyz')
    .replace(/([a-z])is(?=ed\b)/g, '$1iz')
    .replace(/\bcolour/g, 'color')
    .replace(/\bodour/g, 'odor')
    .replace(/\bfibre/g, 'fiber')

/** Letters of other alphabets as those of English: accents off, ligatures apart. */
const plainLetters = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[ßœæøłıαβγδ]/g, (letter) => LETTERS[letter] ?? letter)

/** Most names hold none of the letters that need a closer look; there are many names. */
const BEYOND_ASCII = /[^\0-\x7f]/
const IS_NORMAL = /^[a-z0-9%+]+(?: [a-z0-9%+]+)*$/
const TWO_SPELLINGS = /sulph|aluminium|hydrolys|ised|colour|odour|fibre/

/** Normal form: lower case, accents off, marks and spaces folded to one space, one spelling for two. */
export function normalName(text: string): string {
  const lower = BEYOND_ASCII.test(text) ? plainLetters(text) : text.toLowerCase()
  const plain = IS_NORMAL.test(lower)
    ? lower
    : lower
        .replace(/['’`´]/g, '')
        .replace(/[^a-z0-9%+]+/g, ' ')
        .trim()
  return TWO_SPELLINGS.test(plain) ? spelling(plain) : plain
}

/** Without spaces and marks: "bees wax" and "beeswax" are one. */
export const squashed = (normal: string): string => normal.replace(/[^a-z0-9]+/g, '')

/** Words that carry no meaning when the order of the others is free. */
const FILL_WORDS = new Set(
  'of the from de du des del della dello di da do das dos la le les el los las l d von aus a an and for to'.split(' '),
)

/** Singular of a plain plural. Latin endings lose their s on both sides of a comparison, which does no harm. */
export function singular(word: string): string {
  if (word.length < 4 || /\d/.test(word) || word.endsWith('ss')) return word
  if (/(x|ss|sh|ch)es$/.test(word)) return word.slice(0, -2)
  if (word.endsWith('ies') && word.length > 5) return `${word.slice(0, -3)}y`
  return word.endsWith('s') ? word.slice(0, -1) : word
}

export const wordsOf = (normal: string): string[] =>
  normal
    .split(/[ %+]+/)
    .filter((word) => word !== '')
    .map(singular)

/** Words in alphabetic order: "starch, corn" and "corn starch" are one. */
export const wordBag = (normal: string): string =>
  wordsOf(normal)
    .filter((word) => !FILL_WORDS.has(word))
    .sort()
    .join(' ')

/** Spelling by sound: what is often mistaken for one another becomes one letter. */
export const soundOf = (text: string): string =>
  text
    .replace(/ph/g, 'f')
    .replace(/th/g, 't')
    .replace(/ck|q|ch/g, 'k')
    .replace(/x/g, 'ks')
    .replace(/[sc]c(?=[eiy])/g, 's')
    .replace(/c(?=[eiy])/g, 's')
    .replace(/c/g, 'k')
    .replace(/z/g, 's')
    .replace(/w/g, 'v')
    .replace(/[jy]/g, 'i')
    .replace(/h/g, '')
    .replace(/ee|ea|ei|ie/g, 'i')
    .replace(/oo|ou/g, 'u')
    .replace(/a[ei]/g, 'e')
    .replace(/oe/g, 'o')
    .replace(/([a-z])\1+/g, '$1')
    .replace(/([a-z]{3})e\b/g, '$1')

/** Consonants in order: what is left when vowels are misheard or dropped. The first letter stays. */
export const bonesOf = (text: string): string =>
  text.charAt(0) +
  text
    .slice(1)
    .replace(/[aeiouy]/g, '')
    .replace(/(.)\1+/g, '$1')
