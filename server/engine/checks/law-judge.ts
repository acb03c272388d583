import type { FormulaContext } from '#engine/formula/context.ts'
import type { Limit, LimitRow } from '#engine/model/records.ts'
import { inside } from '#engine/units/range.ts'
import { isLimit, otherUses } from './law-entries.ts'
import type { Entry } from './law-entries.ts'
import { fitOf, width } from './law-fit.ts'
import type { Ask, Fit } from './law-fit.ts'

/** How a row is broken. */
export type Breach = 'ban' | 'percent' | 'ph'

/** What an entry says against a formula: the row that governs it, how it is broken, and what would have to be asked. */
export interface Found {
  entry: Entry
  row: LimitRow
  breach: Breach
  /** mass judged [%]: what is counted for certain, or what may be in it */
  judged_percent: number
  fits: 'yes' | 'unknown'
  asks: Ask[]
  /** broken for certain, but for a row that may lift it */
  lifted?: true
}

/** A row is in force from its day on; without a day of placing on the market the day of the tables counts. */
export const isInForce = (row: LimitRow, limit: Limit, day: string | undefined): boolean =>
  row.applies_from === undefined || (day ?? limit.date) >= row.applies_from

const ROUNDING = 1.0000001 // sums of decimal shares miss by the last bits

function exceeds({ max_percent, strict }: LimitRow, counted_percent: number): boolean {
  if (max_percent === undefined) return false
  return strict === 'percent' ? counted_percent * ROUNDING >= max_percent : counted_percent > max_percent * ROUNDING
}

function missesPh({ ph, strict }: LimitRow, at: number | null): boolean {
  if (!ph || at === null) return false
  return !inside(at, ph) || (strict === 'ph' && (at === ph.min || at === ph.max))
}

/** How this amount at this pH breaks a row; ban first, then percentage, then pH. */
export function breachOf(row: LimitRow, counted_percent: number, ph: number | null): Breach | null {
  if (row.prohibited) return 'ban'
  if (exceeds(row, counted_percent)) return 'percent'
  return missesPh(row, ph) ? 'ph' : null
}

interface Judged {
  row: LimitRow
  fit: Fit
  breach: Breach | null
}

const namesUse = ({ row: { scope } }: Judged): number => Number(scope.only !== undefined)

/** A use that the maker states goes first, then the narrowest; of equally narrow ones the stricter. */
const byStrictness = (a: Judged, b: Judged): number =>
  namesUse(b) - namesUse(a) ||
  width(b.row) - width(a.row) ||
  Number(b.row.prohibited ?? false) - Number(a.row.prohibited ?? false) ||
  (a.row.max_percent ?? Infinity) - (b.row.max_percent ?? Infinity) ||
  Number(b.breach !== null) - Number(a.breach !== null)

/** A use that the entry names goes before what it says of all other products. */
const isNarrower = (row: LimitRow, than: LimitRow): boolean =>
  (row.scope.only !== undefined && than.scope.only === undefined) || width(row) > width(than)

export interface Judging {
  context: FormulaContext
  /** day of placing on the market */
  day: string | undefined
  /** mass to judge instead of what is counted for certain */
  judged_percent?: number
}

/**
 * What an entry says against this formula, or null.
 *
 * The narrowest row that bears on the product for certain governs. A narrower row that may bear on it (an area, a use, a
 * spray that nobody stated) and is kept may lift the breach: then it is unknown. Where the governing row is kept, a row
 * that may bear on it and is broken makes it unknown.
 */
export function judge(entry: Entry, { context, day, judged_percent = entry.counted_percent }: Judging): Found | null {
  const rows = entry.limit.rows
    .filter((row) => isLimit(row) && isInForce(row, entry.limit, day))
    .map((row): Judged => ({
      row,
      fit: fitOf(row, context),
      breach: breachOf(row, judged_percent, context.ph),
    }))
  const certain = rows.filter(({ fit }) => fit.fits === 'yes').sort(byStrictness)[0]
  const possible = rows.filter(({ fit }) => fit.fits === 'unknown')
  const found = (judged: Judged, fits: Found['fits'], asks: Ask[]): Found | null =>
    judged.breach && { entry, row: judged.row, breach: judged.breach, judged_percent, fits, asks }
  if (certain?.breach) {
    const lifting = possible.filter(({ row, breach }) => breach === null && isNarrower(row, certain.row))
    const asks = lifting.flatMap(({ fit }) => fit.asks)
    if (asks.length === 0) return withPurpose(found(nearest(certain, possible), 'yes', []), { context, day })
    const unknown = found(certain, 'unknown', asks)
    return unknown && { ...unknown, lifted: true }
  }
  const [worst] = possible.filter(({ breach }) => breach !== null).sort(byStrictness)
  return worst ? found(worst, 'unknown', worst.fit.asks) : null
}

/** Where every use is out, the one that comes nearest says most: one whose pH alone is wrong, or the most generous. */
function nearest(certain: Judged, possible: readonly Judged[]): Judged {
  const uses = possible.filter(({ row, breach }) => breach !== null && breach !== 'ban' && isNarrower(row, certain.row))
  const byGenerosity = (a: Judged, b: Judged): number => (b.row.max_percent ?? 0) - (a.row.max_percent ?? 0)
  const [byPh] = uses.filter(({ breach }) => breach === 'ph').sort(byGenerosity)
  if (byPh) return byPh
  return (certain.breach === 'ban' ? uses.sort(byGenerosity)[0] : undefined) ?? certain
}

/** Whether the entries for other uses than preserving allow what is in: one has a row for it, and none forbids it. */
function allowedOtherwise(entry: Entry, judging: Judging): boolean {
  if (entry.limit.use !== 'preservative') return false
  const others = [...new Set(entry.members.flatMap(({ subject }) => otherUses(subject, entry.limit)))]
  const countedBy = (other: Limit): number =>
    entry.members.reduce((sum, { subject, pure_percent }) => sum + pure_percent * (other.members[subject.id] ?? 1), 0)
  const speaks = others.some(({ rows }) =>
    rows.some((row) => row.max_percent !== undefined && fitOf(row, judging.context).fits !== 'no'),
  )
  if (!speaks) return false
  return others.every((limit) => judge({ ...entry, limit, counted_percent: countedBy(limit) }, judging)?.fits !== 'yes')
}

/** An entry that binds only for a purpose that nobody stated stops nothing, nor one beside which another use is allowed. */
function withPurpose(found: Found | null, judging: Judging): Found | null {
  if (!found || (found.entry.concern === 'yes' && !allowedOtherwise(found.entry, judging))) return found
  return { ...found, fits: 'unknown', asks: [{ kind: 'purpose', text: found.entry.limit.use }] }
}

/** The row whose pH window would decide, where the pH of a product with water is not known. */
export function openPh(entry: Entry, { context, day }: Judging): LimitRow | null {
  if (context.ph !== null || context.water_percent < LEAST_WATER_PERCENT || entry.members.length === 0) return null
  const rows = entry.limit.rows.filter(
    (row) => row.ph !== undefined && isInForce(row, entry.limit, day) && fitOf(row, context).fits === 'yes',
  )
  return rows[0] ?? null
}

const LEAST_WATER_PERCENT = 3
