import type { FormulaContext } from '#engine/formula/context.ts'
import { rangeText } from '#engine/units/range.ts'
import { short } from '#engine/units/round.ts'
import type { Check, Hit } from './check.ts'
import { entriesOf, isLimit } from './law-entries.ts'
import type { Entry } from './law-entries.ts'
import { isInForce, judge, openPh } from './law-judge.ts'
import type { Found } from './law-judge.ts'
import { breachText, lawHit, questionsOf } from './law-say.ts'

const ALL_IN_FORCE = '9999-12-31'

/** Broken by sprays only; how a product is dispensed is not stated, so rule:law-condition tells it. */
const onlySpray = ({ asks, lifted }: Found): boolean => !lifted && asks.some(({ kind }) => kind === 'spray')

const remedyOf = ({ row, breach }: Found): string =>
  breach === 'ban' ? 'Take it out' : breach === 'percent' ? `At most ${row.max_percent} %` : 'Mend the pH'

/** A breach as a finding; null where it only says what would hold for a spray (rule:law-condition tells that). */
function breachHit(found: Found, { ph }: FormulaContext): Hit | null {
  const { entry, row, fits, asks } = found
  const text = breachText(found, ph)
  if (entry.limit.kind === 'opinion') {
    const said = `an expert opinion goes to ${text.replace('the limit is ', 'at most ')}`
    return onlySpray(found)
      ? null
      : { ...lawHit({ entry, row, text: said }), severity: fits === 'yes' ? 'warn' : 'note' }
  }
  if (fits === 'yes') return { ...lawHit({ entry, row, text }), severity: 'stop', remedy: remedyOf(found) }
  if (onlySpray(found)) return null
  const questions = questionsOf(asks).join('. ')
  return {
    ...lawHit({ entry, row, text: `${text}; whether that bears on this product is not known` }),
    severity: 'unknown',
    remedy: questions,
  }
}

/** What a blend of unknown shares may hold beyond the limit. */
function openBlendHit(entry: Entry, context: FormulaContext): Hit[] {
  if (entry.open.blends.length === 0) return []
  const judged_percent = entry.counted_percent + entry.open.max_percent
  const found = judge(entry, { context, day: context.placedOn, judged_percent })
  if (!found) return []
  const asks = entry.open.blends.map(({ inci }) => ({ kind: 'blend' as const, text: inci }))
  return [
    {
      ...lawHit({
        entry,
        row: found.row,
        text: `the shares of its parts are not known, up to ${breachText(found, context.ph)}`,
      }),
      severity: 'unknown',
      remedy: questionsOf([...asks, ...found.asks]).join('. '),
    },
  ]
}

/** Goods placed before a row came into force stood under an earlier wording, which is not on record. */
function earlierHit(entry: Entry, context: FormulaContext): Hit[] {
  const { placedOn: day } = context
  const { limit } = entry
  if (day === undefined || day >= limit.date) return []
  const found = judge(entry, { context, day: limit.date })
  if (!found || isInForce(found.row, limit, day) || found.fits !== 'yes' || limit.kind === 'opinion') return []
  const text = `${breachText(found, context.ph)} since ${found.row.applies_from}; what held before is not on record`
  return [
    { ...lawHit({ entry, row: found.row, text }), severity: 'unknown', remedy: 'Look up the wording of that day' },
  ]
}

/** Two records of one entry may say the same. */
const unique = (hits: readonly Hit[]): Hit[] => [...new Map(hits.map((hit) => [hit.message, hit])).values()]

/** rule:limit-by-law. Bans and percentages of the market, summed over all forms that an entry counts together. */
export const limitByLaw: Check = (context) =>
  unique(
    entriesOf(context).flatMap((entry) => {
      if (entry.members.length === 0) return []
      const found = judge(entry, { context, day: context.placedOn })
      if (found?.breach === 'ph') return []
      const hit = found && breachHit(found, context)
      if (hit) return [hit]
      return found ? [] : [...openBlendHit(entry, context), ...earlierHit(entry, context)]
    }),
  )

const sellThrough = ({ row }: Found): string =>
  row.older_stock_until === undefined ? '' : `; goods placed before may be sold off until ${row.older_stock_until}`

/** rule:limit-coming. Limits in the books that do not bind yet: what the entry will say once all its rows are in force. */
export const limitComing: Check = (context) =>
  entriesOf(context).flatMap((entry): Hit[] => {
    const { limit } = entry
    if (
      entry.members.length === 0 ||
      !limit.rows.some((row) => isLimit(row) && !isInForce(row, limit, context.placedOn))
    ) {
      return []
    }
    const found = judge(entry, { context, day: ALL_IN_FORCE })
    if (!found || isInForce(found.row, limit, context.placedOn) || onlySpray(found)) return []
    // A wording that is in force today was not coming on an earlier day that is asked for: rule:limit-by-law tells it.
    if (found.row.applies_from !== undefined && found.row.applies_from <= limit.date && context.placedOn) return []
    const text = `${breachText(found, context.ph)} for goods placed on the market from ${found.row.applies_from}${sellThrough(found)}`
    const remedy = questionsOf(found.asks).join('. ')
    return [
      {
        ...lawHit({ entry, row: found.row, text }),
        severity: found.fits === 'yes' ? 'warn' : 'unknown',
        ...(remedy !== '' && { remedy }),
      },
    ]
  })

/** rule:limit-by-content. What natural scents typically bring of restricted substances; typical, so it warns and never stops. */
export const limitByContent: Check = (context) =>
  entriesOf(context).flatMap((entry): Hit[] => {
    const { brought, counted_percent, limit } = entry
    if (brought.from.length === 0 || limit.kind === 'opinion') return []
    const judged_percent = counted_percent + brought.max_percent
    const found = judge(entry, { context, day: ALL_IN_FORCE, judged_percent })
    if (!found || found.breach === 'ph' || onlySpray(found)) return []
    if (judge(entry, { context, day: ALL_IN_FORCE })?.row === found.row && counted_percent > 0) return []
    const low_percent = counted_percent + brought.min_percent
    const from = isInForce(found.row, limit, context.placedOn)
      ? ''
      : ` for goods placed on the market from ${found.row.applies_from}`
    const text =
      found.breach === 'ban'
        ? `typical lots bring ${short(low_percent)} to ${short(judged_percent)} % of a prohibited substance; only a trace that good practice cannot avoid is tolerated`
        : `typical lots bring ${short(low_percent)} to ${breachText(found, context.ph)}${from}`
    return [
      {
        ...lawHit({ entry, row: found.row, text: `${limit.title.toLowerCase()}: ${text}`, withBrought: true }),
        severity: found.fits === 'yes' ? (found.breach === 'ban' ? 'note' : 'warn') : 'unknown',
        remedy: ['Ask the supplier for the analysis of the lot, or lower it', ...questionsOf(found.asks)].join('. '),
      },
    ]
  })

/** By which factor the dose has to fall to meet every percentage that is exceeded; 0 where something is prohibited, 1 where nothing is. */
export function lawfulFactor(context: FormulaContext): number {
  const found = entriesOf(context)
    .filter(({ limit, members }) => limit.kind === 'law' && members.length > 0)
    .flatMap((entry) => judge(entry, { context, day: context.placedOn }) ?? [])
    .filter(
      ({ fits, breach, asks }) => breach !== 'ph' && (fits === 'yes' || asks.some(({ kind }) => kind === 'purpose')),
    )
  return Math.min(
    1,
    ...found.map(({ row, breach, judged_percent }) => (breach === 'ban' ? 0 : (row.max_percent ?? 0) / judged_percent)),
  )
}

/** rule:law-ph. A pH window that the law ties to an ingredient. */
export const lawPh: Check = (context) =>
  entriesOf(context).flatMap((entry): Hit[] => {
    if (entry.limit.kind === 'opinion' || entry.members.length === 0) return []
    const found = judge(entry, { context, day: context.placedOn })
    if (found?.breach === 'ph') return [breachHit(found, context)].filter((hit) => hit !== null)
    const row = found ? null : openPh(entry, { context, day: context.placedOn })
    if (!row?.ph) return []
    const text = `the law ties it to pH ${rangeText(row.ph)}; the pH is not known`
    return [{ ...lawHit({ entry, row, text }), severity: 'unknown', remedy: 'Measure the pH of the finished batch' }]
  })
