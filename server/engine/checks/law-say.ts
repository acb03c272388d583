import type { Limit, LimitRow } from '#engine/model/records.ts'
import { rangeText } from '#engine/units/range.ts'
import { short } from '#engine/units/round.ts'
import type { Hit } from './check.ts'
import type { Entry } from './law-entries.ts'
import type { Ask } from './law-fit.ts'
import type { Found } from './law-judge.ts'
import { because, nameOf } from './say.ts'

/** "EU Annex III, entry 15a as last changed by (EU) 2020/1683, export of 2026-09-09". */
export function entryText({ market, act, entry, exported, date }: Limit, row?: LimitRow): string {
  const changed = row?.legal_act === undefined ? '' : ` in the wording of ${row.legal_act}`
  const state = exported === undefined ? `compiled on ${date}` : `export of ${exported}`
  return `${market.toUpperCase()} ${act}, entry ${entry}${changed}, ${state}`
}

const areasText = (areas: readonly string[]): string =>
  areas.map((area) => (area === 'under-3' ? 'children under 3' : area)).join(', ')

/** Where a row holds: "leave-on, lip", "rinse-off, except hair"; empty for every product. */
export function whereText({ scope }: LimitRow): string {
  return [
    scope.product,
    scope.areas && areasText(scope.areas),
    scope.form?.join(', '),
    scope.only,
    scope.not_form && `not as ${scope.not_form.join(', ')}`,
    !scope.areas && scope.not_areas && `except ${areasText(scope.not_areas)}`,
  ]
    .filter(Boolean)
    .join(', ')
}

/** Words of some entries speak of a product already. */
const productsText = (where: string): string => (/products?$/.test(where) ? where : `${where} products`)

const MOST_USES = 6

/** A ban with exceptions reads better as what is allowed. */
function banText({ rows }: Limit, where: string): string {
  const uses = rows
    .filter(
      (row) => !row.prohibited && (row.max_percent !== undefined || row.ph !== undefined) && whereText(row) !== '',
    )
    .map((row) => `${whereText(row)}${row.max_percent === undefined ? '' : ` (at most ${row.max_percent} %)`}`)
  if (where !== '') return `not allowed in ${productsText(where)}`
  if (uses.length === 0) return 'prohibited in cosmetic products'
  return `allowed only in ${uses.slice(0, MOST_USES).join('; ')}${uses.length > MOST_USES ? ' …' : ''}`
}

/** What the row demands and what is in the formula instead. */
export function breachText({ entry, row, breach, judged_percent }: Found, ph: number | null): string {
  const where = whereText(row)
  const there = where === '' ? '' : ` in ${productsText(where)}`
  if (breach === 'ban') return banText(entry.limit, where)
  if (breach === 'ph') {
    return `the law ties it to pH ${row.ph ? rangeText(row.ph) : '?'}${there}; this formula is at pH ${ph === null ? '?' : short(ph)}`
  }
  const basis = entry.limit.basis === undefined ? '' : ` ${entry.limit.basis}`
  const bound = row.strict === 'percent' ? 'it has to stay below' : 'the limit is'
  return `${short(judged_percent)} %${basis}; ${bound} ${row.max_percent} %${there}`
}

const PURPOSE: Record<string, string> = {
  'uv-filter': 'Is it in as a UV filter?',
  fragrance: 'Is it in for its scent?',
  preservative: 'Is it in for another purpose than preserving, and does the product make that plain?',
}

const QUESTION: Record<Ask['kind'], (texts: string[]) => string> = {
  areas: () => 'Say where the product is used (face, eye, lip, hair, under 3 years …)',
  use: (texts) => `Is the product meant as: ${texts.join(' or ')}? The entry has a row of its own for that`,
  professional: () => 'Is it for professional use only, or for the public?',
  spray: () => 'Is it sold as a spray?',
  purpose: (texts) => texts.map((text) => PURPOSE[text] ?? '').join(' '),
  strength: (texts) => `State the strength of ${texts.join(', ')} as the bottle says`,
  blend: (texts) => `Ask the supplier for the shares in ${texts.join(', ')}`,
}

/** What a person would have to say, in one sentence for each kind of question. */
export const questionsOf = (asks: readonly Ask[]): string[] =>
  (Object.keys(QUESTION) as Ask['kind'][]).flatMap((kind) => {
    const texts = [...new Set(asks.filter((ask) => ask.kind === kind).map(({ text }) => text))].sort()
    return texts.length > 0 ? [QUESTION[kind](texts)] : []
  })

/** Ids that a finding about an entry speaks of: what is counted, open blends, scents that bring it. */
const aboutOf = ({ members, open, brought }: Entry, withBrought: boolean): string[] =>
  [
    ...new Set([
      ...members.map(({ subject }) => subject.id),
      ...open.blends.map(({ id }) => id),
      ...(withBrought || members.length === 0 ? brought.from.map(({ subject }) => subject.id) : []),
    ]),
  ].sort()

const namesOf = ({ members, brought }: Entry, withBrought: boolean): string => {
  const scents = withBrought || members.length === 0 ? brought.from.map(({ subject }) => nameOf(subject)) : []
  return [...new Set([...members.map(({ subject }) => nameOf(subject)), ...scents])].join(' + ')
}

export interface Said {
  entry: Entry
  row: LimitRow
  text: string
  /** the scents that bring it are spoken of too */
  withBrought?: boolean
}

/** A finding on an entry of law: who, what, which entry, which state, and that it is no legal advice. */
export function lawHit({ entry, row, text, withBrought = false }: Said): Omit<Hit, 'severity'> {
  const where = entryText(entry.limit, row)
  const counted = `counted: ${short(entry.counted_percent)} %`
  return {
    about: aboutOf(entry, withBrought),
    message: `${namesOf(entry, withBrought)}: ${text}. ${where}; no legal advice`,
    because: [because([where, row.locator].filter(Boolean).join(', ')), because(counted)],
    sources: row.source.split(/\s*;\s*/),
  }
}
