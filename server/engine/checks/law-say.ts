import type { FormulaContext } from '#engine/formula/context.ts'
import type { Limit, LimitRow } from '#engine/model/records.ts'
import type { Say } from '#engine/words/say.ts'
import type { Hit } from './check.ts'
import type { Entry } from './law-entries.ts'
import type { Found } from './law-judge.ts'
import { because, nameOf } from './say.ts'

/** "EU Annex III, entry 15a in the wording of (EU) 2020/1683, export of 2026-09-09". */
export function entryText({ market, act, entry, exported, date }: Limit, row: LimitRow, say: Say): string {
  const where = say`${market.toUpperCase()} ${say.text(act)}, entry ${say.text(entry)}`
  const worded = row.legal_act === undefined ? where : say`${where} in the wording of ${say.text(row.legal_act)}`
  return exported === undefined ? say`${worded}, compiled on ${date}` : say`${worded}, export of ${exported}`
}

const PLACE: Record<string, (say: Say) => string> = {
  'leave-on': (say) => say`leave-on`,
  'rinse-off': (say) => say`rinse-off`,
  'under-3': (say) => say`children under 3`,
}

const placesText = (places: readonly string[], say: Say): string =>
  places.map((place) => PLACE[place]?.(say) ?? say.text(place)).join(', ')

/** Where a row holds: "leave-on, lip", "rinse-off, except hair"; empty for every product. */
export function whereText({ scope }: LimitRow, say: Say): string {
  return [
    scope.product && placesText([scope.product], say),
    scope.areas && placesText(scope.areas, say),
    scope.form && placesText(scope.form, say),
    scope.only && say.text(scope.only),
    scope.not_form && say`not as ${placesText(scope.not_form, say)}`,
    !scope.areas && scope.not_areas && say`except ${placesText(scope.not_areas, say)}`,
  ]
    .filter(Boolean)
    .join(', ')
}

/** Words of some entries speak of a product already. */
const productsText = (where: string, say: Say): string => (/products?$/.test(where) ? where : say`${where} products`)

const MOST_USES = 6

/** A ban with exceptions reads better as what is allowed. */
function banText({ rows }: Limit, where: string, say: Say): string {
  const uses = rows
    .filter(
      (row) => !row.prohibited && (row.max_percent !== undefined || row.ph !== undefined) && whereText(row, say) !== '',
    )
    .map((row) => {
      const use = whereText(row, say)
      return row.max_percent === undefined ? use : say`${use} (at most ${row.max_percent} %)`
    })
  if (where !== '') return say`not allowed in ${productsText(where, say)}`
  if (uses.length === 0) return say`prohibited in cosmetic products`
  const named = uses.slice(0, MOST_USES).join('; ')
  return say`allowed only in ${uses.length > MOST_USES ? `${named} …` : named}`
}

/** What the row demands beside what is in the formula. */
function boundText(amount: string, { row }: Found, say: Say): string {
  const where = whereText(row, say)
  const most = row.max_percent ?? ''
  if (row.strict === 'percent') {
    return where === ''
      ? say`${amount}; it has to stay below ${most} %`
      : say`${amount}; it has to stay below ${most} % in ${productsText(where, say)}`
  }
  return where === ''
    ? say`${amount}; the limit is ${most} %`
    : say`${amount}; the limit is ${most} % in ${productsText(where, say)}`
}

/** "0.4 to 0.5 % as acid": the mass judged, or the range of it, on the basis of the entry. */
function amountText({ entry, judged_percent }: Found, say: Say, low_percent = judged_percent): string {
  const { basis } = entry.limit
  const high = say.short(judged_percent)
  const amount = judged_percent - low_percent < 1e-9 ? high : say`${say.short(low_percent)} to ${high}`
  return basis === undefined ? say`${amount} %` : say`${amount} % ${say.text(basis)}`
}

function lawPhText({ row }: Found, ph: number | null, say: Say): string {
  const where = whereText(row, say)
  const [tied, here] = [row.ph ? say.range(row.ph) : '?', ph === null ? '?' : say.short(ph)]
  return where === ''
    ? say`the law ties it to pH ${tied}; this formula is at pH ${here}`
    : say`the law ties it to pH ${tied} in ${productsText(where, say)}; this formula is at pH ${here}`
}

/**
 * What the row demands and what is in the formula instead.
 *
 * @param low_percent lower end of what may be in it [%], where the mass judged is the upper end of a range
 */
export function breachText(found: Found, { ph, world }: FormulaContext, low_percent?: number): string {
  const { say } = world
  if (found.breach === 'ban') return banText(found.entry.limit, whereText(found.row, say), say)
  if (found.breach === 'ph') return lawPhText(found, ph, say)
  return boundText(amountText(found, say, low_percent), found, say)
}

/** What an expert opinion advises, and what is in the formula instead. */
export function adviceText(found: Found, { ph, world }: FormulaContext): string {
  const { say } = world
  const where = whereText(found.row, say)
  if (found.breach === 'ban') return say`an expert opinion ${banText(found.entry.limit, where, say)}; no law`
  const products = productsText(where, say)
  if (found.breach === 'ph') {
    const [tied, here] = [found.row.ph ? say.range(found.row.ph) : '?', ph === null ? '?' : say.short(ph)]
    return where === ''
      ? say`an expert opinion ties it to pH ${tied}; this formula is at pH ${here}; no law`
      : say`an expert opinion ties it to pH ${tied} in ${products}; this formula is at pH ${here}; no law`
  }
  const amount = amountText(found, say)
  if (found.row.strict === 'percent') return say`an expert opinion goes to ${boundText(amount, found, say)}; no law`
  const most = found.row.max_percent ?? ''
  return where === ''
    ? say`an expert opinion goes to ${amount}; at most ${most} %; no law`
    : say`an expert opinion goes to ${amount}; at most ${most} % in ${products}; no law`
}

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
export function lawHit({ entry, row, text, withBrought = false }: Said, say: Say): Omit<Hit, 'severity'> {
  const where = entryText(entry.limit, row, say)
  const counted = say`counted: ${say.short(entry.counted_percent)} %`
  return {
    about: aboutOf(entry, withBrought),
    message: say`${namesOf(entry, withBrought)}: ${text}. ${where}; no legal advice`,
    because: [because([where, row.locator].filter(Boolean).join(', ')), because(counted)],
    sources: row.source.split(/\s*;\s*/),
  }
}
