import type { FormulaContext } from '#engine/formula/context.ts'
import type { Say } from '#engine/words/say.ts'
import type { Check, Hit } from './check.ts'
import { entriesOf } from './law-entries.ts'
import type { Entry } from './law-entries.ts'
import type { Ask } from './law-fit.ts'
import { isInForce, judge, openPh } from './law-judge.ts'
import type { Found } from './law-judge.ts'
import { questionsOf } from './law-questions.ts'
import { adviceText, breachText, lawHit } from './law-say.ts'
import { nameOf } from './say.ts'

/** Broken by sprays only; how a product is dispensed is not stated, so rule:law-condition tells it. */
export const onlySpray = ({ asks, lifted }: Found): boolean => !lifted && asks.some(({ kind }) => kind === 'spray')

function remedyOf({ row, breach }: Found, say: Say): string {
  if (breach === 'ban') return say`Take it out`
  return breach === 'percent' ? say`At most ${row.max_percent ?? ''} %` : say`Mend the pH`
}

/** Only what was read or quoted in print can forbid; a row that is merely remembered warns. */
const isRemembered = ({ row }: Found): boolean => row.access === 'memory'

/** A breach as a finding; null where it only says what would hold for a spray (rule:law-condition tells that). */
function breachHit(found: Found, context: FormulaContext): Hit | null {
  const { entry, row, fits, asks } = found
  const { say } = context.world
  const text = breachText(found, context)
  const hit = (said: string) => lawHit({ entry, row, text: said }, say)
  if (fits === 'yes' && isRemembered(found)) {
    return { ...hit(say`${text}, as remembered and not looked up`), severity: 'warn', remedy: say`Look the entry up` }
  }
  if (fits === 'yes') return { ...hit(text), severity: 'stop', remedy: remedyOf(found, say) }
  if (onlySpray(found)) return null
  const remedy = questionsOf(asks, say).join('. ')
  return { ...hit(say`${text}; whether that bears on this product is not known`), severity: 'unknown', remedy }
}

/** rule:limit-by-opinion. What expert opinions advise, amount and pH: no law, so it warns and never stops. */
export const limitByOpinion: Check = (context) =>
  entriesOf(context).flatMap((entry): Hit[] => {
    if (entry.limit.kind !== 'opinion' || entry.members.length === 0) return []
    const found = judge(entry, { context, day: context.placedOn })
    if (!found || onlySpray(found)) return []
    const text = adviceText(found, context)
    return [
      {
        ...lawHit({ entry, row: found.row, text }, context.world.say),
        severity: found.fits === 'yes' ? 'warn' : 'note',
      },
    ]
  })

/** What a blend of unknown shares or a solution of unknown strength may hold beyond the limit. */
function openHit(entry: Entry, context: FormulaContext): Hit[] {
  const { open, stronger, counted_percent } = entry
  const judged_percent = counted_percent + open.max_percent + stronger.max_percent
  if (judged_percent <= counted_percent) return []
  const found = judge(entry, { context, day: context.placedOn, judged_percent })
  if (!found || found.breach !== 'percent') return []
  const { say } = context.world
  const most = breachText(found, context)
  const text =
    open.blends.length > 0
      ? say`the shares of its parts are not known, up to ${most}`
      : say`its strength is not stated, up to ${most}`
  const asks: Ask[] = [
    ...open.blends.map(({ inci }) => ({ kind: 'blend' as const, text: inci })),
    ...stronger.solutions.map((subject) => ({ kind: 'strength' as const, text: nameOf(subject) })),
  ]
  const remedy = questionsOf([...asks, ...found.asks], say).join('. ')
  return [{ ...lawHit({ entry, row: found.row, text }, say), severity: 'unknown', remedy }]
}

/** Goods placed before a row came into force stood under an earlier wording, which is not on record. */
function earlierHit(entry: Entry, context: FormulaContext): Hit[] {
  const { placedOn: day } = context
  const { limit } = entry
  if (day === undefined || day >= limit.date) return []
  const found = judge(entry, { context, day: limit.date })
  if (!found || isInForce(found.row, limit, day) || found.fits !== 'yes') return []
  const { say } = context.world
  const since = found.row.applies_from ?? ''
  const text = say`${breachText(found, context)} since ${since}; what held before is not on record`
  const remedy = say`Look up the wording of that day`
  return [{ ...lawHit({ entry, row: found.row, text }, say), severity: 'unknown', remedy }]
}

/** Two records of one entry may say the same. */
const unique = (hits: readonly Hit[]): Hit[] => [...new Map(hits.map((hit) => [hit.message, hit])).values()]

/** rule:limit-by-law. Bans and percentages of the market, summed over all forms that an entry counts together. */
export const limitByLaw: Check = (context) =>
  unique(
    entriesOf(context).flatMap((entry) => {
      if (entry.members.length === 0 || entry.limit.kind === 'opinion') return []
      const found = judge(entry, { context, day: context.placedOn })
      if (found?.breach === 'ph') return []
      const hit = found && breachHit(found, context)
      if (hit) return [hit]
      return found ? [] : [...openHit(entry, context), ...earlierHit(entry, context)]
    }),
  )

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
    const { say } = context.world
    const text = say`the law ties it to pH ${say.range(row.ph)}; the pH is not known`
    const remedy = say`Measure the pH of the finished batch`
    return [{ ...lawHit({ entry, row, text }, say), severity: 'unknown', remedy }]
  })
