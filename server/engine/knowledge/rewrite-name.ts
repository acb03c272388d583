import type { WordData } from './word-data.ts'

const CATIONS =
  'sodium|disodium|trisodium|tetrasodium|potassium|calcium|magnesium|zinc|ammonium|aluminum|lithium|copper|iron'

/** "Citric" to "citrate", "ascorbic" to "ascorbate", "hydrochloric" to "chloride". */
function saltOf(acid: string): string {
  if (acid === 'hydrochloric') return 'chloride'
  if (acid === 'sulfuric') return 'sulfate'
  if (acid === 'phosphoric') return 'phosphate'
  return acid.replace(/(?:ic|inic)$/, (end) => (end === 'inic' ? 'inate' : 'ate'))
}

/** Ways of naming a salt that the inventory does not use. */
function saltNames(name: string): string[] {
  const out: string[] = []
  const salt =
    new RegExp(`^(?:l |d |dl )?([a-z]+ic) acid (?:mono)?(${CATIONS}) salt$`).exec(name) ??
    new RegExp(`^([a-z]+ic) acid (${CATIONS})$`).exec(name)
  if (salt) out.push(`${salt[2]} ${saltOf(salt[1] ?? '')}`)
  const saltOfAcid = new RegExp(`^(${CATIONS}) salt of (?:l |d |dl )?((?:[a-z0-9]+ )*)([a-z]+ic) acid$`).exec(name)
  if (saltOfAcid) out.push(`${saltOfAcid[1]} ${saltOfAcid[2]}${saltOf(saltOfAcid[3] ?? '')}`)
  const saltOfOther = new RegExp(`^(${CATIONS}) salt of (.+)$`).exec(name)
  if (saltOfOther) out.push(`${saltOfOther[1]} ${saltOfOther[2]}`)
  const otherSalt = new RegExp(`^(.+) (${CATIONS}) salt$`).exec(name)
  if (otherSalt) out.push(`${otherSalt[2]} ${otherSalt[1]}`)
  if (name.includes('hydrochloride')) out.push(name.replace(/ ?(?:mono)?hydrochloride/, ' hcl'))
  return out
}

const STEREO = /^(?:l|d|dl|d l|r|s|trans|cis|rac)(?: alpha)? (?=[a-z]{4})/

const NUMBER_WORDS: Record<string, string> = {
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  twelve: '12',
  twenty: '20',
  forty: '40',
  sixty: '60',
  eighty: '80',
  hundred: '100',
}

const LETTER_WORDS: Record<string, string> = {
  bee: 'b',
  see: 'c',
  sea: 'c',
  dee: 'd',
  ee: 'e',
  kay: 'k',
  eh: 'a',
  ay: 'a',
}

/** "vitamin bee three", "polysorbate twenty", "polysorbate 8o". */
function spokenNumbers(name: string): string {
  return name
    .replace(/\b(vitamin|vit) (bee|see|sea|dee|ee|kay|eh|ay)\b/, (_all, word: string, letter: string) => {
      return `${word} ${LETTER_WORDS[letter] ?? letter}`
    })
    .replace(/\b[a-z]+\b/g, (word) => NUMBER_WORDS[word] ?? word)
    .replace(/\b(vitamin|vit) ([a-z]) (\d+)\b/, '$1 $2$3')
    .replace(/\b(\d+)o(?=\d*\b)/g, '$10')
    .replace(/\bo(?=\d+\b)/g, '0')
}

/** The name the inventory uses for a plant that is named by its second botanical name. */
export function otherGenus(name: string, genus: WordData['genus']): string {
  for (const [second, first] of genus) {
    if (name === second || name.startsWith(`${second} `)) return `${first}${name.slice(second.length)}`
  }
  return name
}

const withoutSupply = (name: string, supply: ReadonlySet<string>): string =>
  name
    .split(' ')
    .filter((word) => !supply.has(word))
    .join(' ')

/** Ways to write the same name that change nothing of what it means, the plainest first. */
export function rewrites(normal: string, words: WordData): string[] {
  const out = new Set([normal])
  const apply = (change: (name: string) => string | string[]) => {
    for (const name of [...out]) for (const made of [change(name)].flat()) if (made.trim() !== '') out.add(made.trim())
  }
  apply((name) => spokenNumbers(name))
  apply((name) => otherGenus(name, words.genus))
  apply((name) => withoutSupply(name, words.supply))
  apply(saltNames)
  apply((name) => name.replace(STEREO, '').replace(/ (?:l|d|dl)$/, ''))
  return [...out].slice(0, 12)
}
