import type { FormulaContext } from '#engine/formula/context.ts'
import type { Severity } from '#engine/model/finding.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { entriesOf, isLimit } from './law-entries.ts'
import type { Entry } from './law-entries.ts'
import { isInForce, judge } from './law-judge.ts'
import type { Found } from './law-judge.ts'
import { questionsOf } from './law-questions.ts'
import { breachText, lawHit } from './law-say.ts'
import { onlySpray } from './law.ts'

const ALL_IN_FORCE = '9999-12-31'

/** A demand with the day from which it holds. */
const fromDay = (demand: string, { row }: Found, say: Say): string =>
  say`${demand} for goods placed on the market from ${row.applies_from ?? ''}`

function comingText(found: Found, context: FormulaContext): string {
  const { say } = context.world
  const text = fromDay(breachText(found, context), found, say)
  const until = found.row.older_stock_until
  return until === undefined ? text : say`${text}; goods placed before may be sold off until ${until}`
}

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
    const { say } = context.world
    const text = comingText(found, context)
    const remedy = questionsOf(found.asks, say).join('. ')
    return [
      {
        ...lawHit({ entry, row: found.row, text }, say),
        severity: found.fits === 'yes' ? 'warn' : 'unknown',
        ...(remedy !== '' && { remedy }),
      },
    ]
  })

/** Where every figure was found by the supplier, and the row was read, the sum is as sure as a stated share. */
const isSure = ({ brought }: Entry, { row }: Found): boolean =>
  row.access !== 'memory' && brought.from.every(({ analysed }) => analysed)

/** A typical or found mass of something prohibited: "0.001 to 0.01 % of a prohibited substance". */
function traceText(low_percent: number, high_percent: number, say: Say): string {
  const high = say.short(high_percent)
  const amount = high_percent - low_percent < 1e-9 ? high : say`${say.short(low_percent)} to ${high}`
  return say`${amount} % of a prohibited substance; only a trace that good practice cannot avoid is tolerated`
}

/** What the scents bring, in words: found by the supplier, or typical. */
function broughtText(found: Found, context: FormulaContext): string {
  const { entry, row, judged_percent } = found
  const { say } = context.world
  const low_percent = entry.counted_percent + entry.brought.min_percent
  const isBan = found.breach === 'ban'
  const what = isBan ? traceText(low_percent, judged_percent, say) : breachText(found, context, low_percent)
  const text = entry.brought.from.every(({ analysed }) => analysed)
    ? say`by the supplier's analysis it comes to ${what}`
    : entry.brought.from.some(({ analysed }) => analysed)
      ? say`the supplier's analysis and typical lots together bring ${what}`
      : say`typical lots bring ${what}`
  return isBan || isInForce(row, entry.limit, context.placedOn) ? text : fromDay(text, found, say)
}

function severityOf(entry: Entry, found: Found, context: FormulaContext): Severity {
  if (found.fits !== 'yes') return 'unknown'
  if (found.breach === 'ban') return 'note'
  return isSure(entry, found) && isInForce(found.row, entry.limit, context.placedOn) ? 'stop' : 'warn'
}

/** rule:limit-by-content. What natural scents bring of restricted substances. Typical figures warn; the supplier's can stop. */
export const limitByContent: Check = (context) =>
  entriesOf(context).flatMap((entry): Hit[] => {
    const { brought, counted_percent, limit } = entry
    if (brought.from.length === 0 || brought.max_percent <= 0 || limit.kind === 'opinion') return []
    const judged_percent = counted_percent + brought.max_percent
    const found = judge(entry, { context, day: ALL_IN_FORCE, judged_percent })
    if (!found || found.breach === 'ph' || onlySpray(found)) return []
    if (judge(entry, { context, day: ALL_IN_FORCE })?.row === found.row && counted_percent > 0) return []
    const { say } = context.world
    const text = say`${say.text(limit.title.toLowerCase())}: ${broughtText(found, context)}`
    const ask = isSure(entry, found) ? say`Lower it` : say`Ask the supplier for the analysis of the lot, or lower it`
    return [
      {
        ...lawHit({ entry, row: found.row, text, withBrought: true }, say),
        severity: severityOf(entry, found, context),
        remedy: [ask, ...questionsOf(found.asks, say)].join('. '),
      },
    ]
  })
