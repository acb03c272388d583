import type { Source } from '#engine/model/records.ts'

/** What sort of work a source is, as its title and grade tell; `other` where they do not. */
export type SourceKind =
  'law' | 'standard' | 'paper' | 'book' | 'opinion' | 'trade' | 'web' | 'data' | 'practice' | 'memory' | 'other'

/** The first that fits counts: law before the journal that printed it, a copy of a handbook is still the handbook. */
const TELLS: readonly (readonly [SourceKind, RegExp])[] = [
  ['law', /\b(?:regulation \(e[cu]\)|annex [ivx]+\b|\d+ cfr|official journal|directive|federal register|u\.?s\.?c\.)/i],
  ['opinion', /\b(?:sccs|sccp|sccnfp|efsa|cosmetic ingredient review|cir (?:final|report)|safety assessment|jecfa)\b/i],
  ['standard', /\b(?:ph\. ?eur|european pharmacopoeia|pharmacopoeia|usp|nf,|iso \d|astm|codex|standard \d|bp,)/i],
  ['data', /\b(?:dataset|data set|database|digitized|open inventory|collection|index entry|pubchem)\b/i],
  ['book', /\b(?:handbook|textbook|book chapter|chapter|monograph|encyclopa?edia|dictionary|thesis)\b/i],
  ['paper', /\bj\. |\bjournal\b|\babstract\b|\bpreprint\b|\b\d{1,4} ?\((?:1[89]|20)\d\d\)|\breview\b|\bstudy\b/i],
  ['trade', /\b(?:supplier|seller|maker|trade|manufacturer|data sheet|sds|coa|patent)\b/i],
  ['web', /\b(?:blog|forum|hobby|page|site|post|magazine|teaching)\b/i],
]

const BY_GRADE: Readonly<Record<string, SourceKind>> = {
  M: 'memory',
  memory: 'memory',
  official: 'law',
  opinion: 'opinion',
}

const OWN: Readonly<Record<string, SourceKind>> = {
  practice: 'practice',
  PRACTICE: 'practice',
  memory: 'memory',
  inv: 'data',
}

/** Sort of work, told from title, place and grade: no field of the lists states it. */
export function kindOfSource({ id, title, locator, grade }: Source): SourceKind {
  const own = OWN[id] ?? BY_GRADE[grade]
  if (own !== undefined) return own
  const told = TELLS.find(([, words]) => words.test(title)) ?? TELLS.find(([, words]) => words.test(locator))
  return told?.[0] ?? 'other'
}

const YEAR = /\b(?:1[89]\d\d|20[0-3]\d)\b/g

/** Year in which it came out: the list's own date, else the year that the title prints in brackets, else its only one. */
export function yearOfSource({ title, date }: Source): number | null {
  const [dated] = date.match(YEAR) ?? []
  if (dated !== undefined) return Number(dated)
  const [, inBrackets] = title.match(/\(((?:1[89]|20)\d\d)\)/) ?? []
  if (inBrackets !== undefined) return Number(inBrackets)
  const years = [...new Set(title.match(YEAR) ?? [])]
  return years.length === 1 ? Number(years[0]) : null
}

/** "doi.org/10…", "https://…": a host and something behind it. */
const ADDRESS = /(?:https?:\/\/)?(?:[a-z0-9-]+\.)+[a-z]{2,}\/[^\s,;)]+/i

/** Address that the place begins with or names, as a link; null where it names none that can be opened. */
export function linkOfSource({ locator }: Source): string | null {
  const [address] = locator.match(ADDRESS) ?? []
  if (address === undefined) return null
  return /^https?:/i.test(address) ? address : `https://${address}`
}
