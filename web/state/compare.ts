import type { Finding } from '#web/client/use-check.ts'
import type { Formula } from './to-formula.ts'

/** One ingredient in two recipes; null: not in it. */
export interface ComparedLine {
  ingredient: string
  from_percent: number | null
  to_percent: number | null
  change: 'added' | 'removed' | 'dose' | 'same'
}

/** Shares nearer than this are the same dose: what rounding of a re-dosed recipe leaves. */
const SAME_PERCENT = 0.005

/** Share of each ingredient [%], lines of one summed; the line that fills up comes to what the others leave. */
function sharesOf({ lines }: Formula): Map<string, number> {
  const stated = lines.reduce((sum, { share_percent }) => sum + (share_percent ?? 0), 0)
  const shares = new Map<string, number>()
  for (const { ingredient, share_percent, fills } of lines) {
    const own = fills ? Math.max(0, 100 - stated) : (share_percent ?? 0)
    shares.set(ingredient, (shares.get(ingredient) ?? 0) + own)
  }
  return shares
}

function changeOf(from: number | undefined, to: number | undefined): ComparedLine['change'] {
  if (from === undefined) return 'added'
  if (to === undefined) return 'removed'
  return Math.abs(from - to) <= SAME_PERCENT ? 'same' : 'dose'
}

/** The lines of both recipes: those of the second in its order, then what is gone. */
export function compareLines(one: Formula, other: Formula): ComparedLine[] {
  const [from, to] = [sharesOf(one), sharesOf(other)]
  const ids = [...to.keys(), ...[...from.keys()].filter((id) => !to.has(id))]
  return ids.map((ingredient) => ({
    ingredient,
    from_percent: from.get(ingredient) ?? null,
    to_percent: to.get(ingredient) ?? null,
    change: changeOf(from.get(ingredient), to.get(ingredient)),
  }))
}

const keyOf = ({ rule, severity, about, message }: Finding): string =>
  `${rule} ${severity} ${[...about].sort().join()} ${message}`

/** What the check says of the second only, of the first only, and of both. */
export function compareFindings(one: readonly Finding[], other: readonly Finding[]) {
  const [before, after] = [one, other].map((findings) => new Set(findings.map(keyOf)))
  return {
    gained: other.filter((finding) => !before?.has(keyOf(finding))),
    lost: one.filter((finding) => !after?.has(keyOf(finding))),
    kept: other.filter((finding) => before?.has(keyOf(finding))).length,
  }
}

/** Cost of a kilogram as far as prices are known; lines without a price are counted, never taken as free. */
export function costOf(formula: Formula, prices: Readonly<Record<string, number>>) {
  const shares = [...sharesOf(formula)]
  const priced = shares.filter(([id]) => prices[id] !== undefined)
  return {
    cost_per_kg: priced.reduce((sum, [id, share]) => sum + (share / 100) * (prices[id] ?? 0), 0),
    priced: priced.length,
    unpriced: shares.length - priced.length,
  }
}
