import type { Limit, LimitRow } from '#engine/model/records.ts'
import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import { inside, rangeText } from '#engine/units/range.ts'
import { short } from '#engine/units/round.ts'
import type { Check, Hit } from './check.ts'
import { because, nameOf } from './say.ts'

interface Counted {
  counted_percent: number
  members: Substance[]
}

/** Mass counted by the law: every form of the substance on the basis of the entry. */
function count(limit: Limit, substances: readonly Substance[]): Counted {
  const members = substances.filter(
    ({ subject }) =>
      limit.members[subject.id] !== undefined || limit.memberClasses.some((one) => subject.classes.has(one)),
  )
  const counted_percent = members.reduce(
    (sum, { subject, pure_percent }) => sum + pure_percent * (limit.members[subject.id] ?? 1),
    0,
  )
  return { counted_percent, members }
}

/** Uses that this tool does not serve. */
const NOT_A_COSMETIC_HERE: ReadonlySet<string> = new Set(['oral'])

type Fit = 'yes' | 'no' | 'unknown'

/** Whether a row concerns this product. A row for an area that nobody stated is unknown, never no. */
function fits({ scope }: LimitRow, { formula, areas, form }: FormulaContext): Fit {
  // `only` names a use that a formula cannot state (toothpaste, hair dye): it is shown on the record, never applied here.
  if (scope.only) return 'no'
  if (scope.product && scope.product !== formula.product) return 'no'
  if (scope.form) return scope.form.includes(form) ? 'yes' : 'no'
  if (scope.areas) {
    if (scope.areas.every((area) => NOT_A_COSMETIC_HERE.has(area))) return 'no'
    if (areas === undefined) return 'unknown'
    if (!scope.areas.some((area) => areas.includes(area))) return 'no'
  }
  if (scope.not_areas) {
    if (areas === undefined) return 'unknown'
    if (scope.not_areas.some((area) => areas.includes(area))) return 'no'
  }
  return 'yes'
}

const breaks = (row: LimitRow, { counted_percent }: Counted): boolean =>
  row.prohibited === true || (row.max_percent !== undefined && counted_percent > row.max_percent * 1.0000001)

const width = ({ scope }: LimitRow): number => Object.keys(scope).length

/** Rows that fit, the narrowest first; of equally narrow ones the stricter. */
const strictest = (rows: readonly LimitRow[]): LimitRow[] =>
  [...rows].sort(
    (a, b) =>
      width(b) - width(a) ||
      Number(b.prohibited ?? false) - Number(a.prohibited ?? false) ||
      (a.max_percent ?? Infinity) - (b.max_percent ?? Infinity),
  )

const isLimit = (row: LimitRow): boolean => row.prohibited === true || row.max_percent !== undefined

/**
 * A substance with an entry of its own for other uses is bound by the preservative entry only where it preserves;
 * one that has no other entry is bound by it in every use.
 */
function preservesHere({ subject }: Substance, limit: Limit, context: FormulaContext): boolean {
  if (!subject.allRoles.has('preservative') && !subject.allRoles.has('preservative-booster')) return false
  const otherEntry = subject.limits.some(
    (other) =>
      other !== limit &&
      other.market === limit.market &&
      other.kind === 'law' &&
      other.use !== 'preservative' &&
      other.rows.some(isLimit),
  )
  if (!otherEntry) return true
  const itsRole = context.rolesOf(subject)[0]?.role
  const otherPreservative = context.lines.some(
    (line) => line.subject.id !== subject.id && context.rolesOf(line.subject)[0]?.role === 'preservative',
  )
  return itsRole === 'preservative' || !otherPreservative
}

/** Does the entry speak of this use? A preservative entry binds the substance wherever it preserves, that is, everywhere here. */
function concerns(limit: Limit, members: readonly Substance[], context: FormulaContext): boolean {
  if (limit.use === 'hair-dye') return false
  if (limit.use === 'uv-filter') return members.some(({ subject }) => subject.allRoles.has('uv-filter'))
  if (limit.use === 'not-preservative') return true
  if (limit.use === 'fragrance') return members.some(({ subject }) => subject.allRoles.has('scent'))
  if (limit.use === 'preservative') return members.some((member) => preservesHere(member, limit, context))
  return true
}

/** A row is in force from its day on; without a day of placing on the market the day of the export counts. */
const notYet = (row: LimitRow, limit: Limit, placedOn: string | undefined): boolean =>
  row.applies_from !== undefined && (placedOn ?? limit.date) < row.applies_from

interface Found {
  limit: Limit
  counted: Counted
  row: LimitRow
  fit: Fit
}

/** Four rules read the entries, so they are looked up once for each context. */
const memo = new WeakMap<FormulaContext, { limit: Limit; counted: Counted }[]>()

function limitsHere(context: FormulaContext): { limit: Limit; counted: Counted }[] {
  const known = memo.get(context)
  if (known) return known
  const found = lookUpLimits(context)
  memo.set(context, found)
  return found
}

function lookUpLimits(context: FormulaContext): { limit: Limit; counted: Counted }[] {
  const limits = new Set(context.substances.flatMap(({ subject }) => subject.limits))
  return [...limits]
    .filter((limit) => limit.market === context.formula.market)
    .map((limit) => ({ limit, counted: count(limit, context.substances) }))
    .filter(({ limit, counted }) => concerns(limit, counted.members, context))
    .sort((a, b) => (a.limit.id < b.limit.id ? -1 : 1))
}

const about = ({ counted }: Found): string[] => counted.members.map(({ subject }) => subject.id).sort()
const entryOf = ({ limit }: Found): string =>
  `${limit.market.toUpperCase()} ${limit.act}, entry ${limit.entry} (state of ${limit.date})`

function hitOf(found: Found, severity: Hit['severity'], text: string): Hit {
  const { counted, row } = found
  return {
    ...(severity && { severity }),
    about: about(found),
    message: `${counted.members.map(({ subject }) => nameOf(subject)).join(' + ')}: ${text}. ${entryOf(found)}; no legal advice`,
    because: [because(`${entryOf(found)}, ${row.locator}`), because(`counted: ${short(counted.counted_percent)} %`)],
    sources: row.source.split(/\s*;\s*/),
  }
}

function textOf({ limit, row, counted }: Found): string {
  const where = [row.scope.product, ...(row.scope.areas ?? [])].filter(Boolean).join(', ')
  if (row.prohibited) return where ? `not allowed in ${where} products` : 'prohibited in cosmetic products'
  return `${short(counted.counted_percent)} %${limit.basis ? ` ${limit.basis}` : ''}; the limit is ${row.max_percent} %${where ? ` in ${where} products` : ''}`
}

/** The row of an entry that governs this product, with rows that would bite in an area nobody stated. */
function governing(limit: Limit, counted: Counted, context: FormulaContext, placedOn?: string): Found[] {
  const rows = limit.rows.filter((row) => isLimit(row) && !notYet(row, limit, placedOn))
  const certain = strictest(rows.filter((row) => fits(row, context) === 'yes'))[0]
  const possible = rows.filter((row) => fits(row, context) === 'unknown' && breaks(row, counted))
  const found: Found[] = []
  if (certain && breaks(certain, counted)) found.push({ limit, counted, row: certain, fit: 'yes' })
  // An exception for an unstated area (hair only) may lift a general ban; a ban for an unstated area may add one.
  const lifting = rows.filter((row) => fits(row, context) === 'unknown' && !breaks(row, counted))
  if (certain && breaks(certain, counted) && lifting.some((row) => width(row) > width(certain))) {
    return [{ limit, counted, row: certain, fit: 'unknown' }]
  }
  const [worst] = strictest(possible)
  if (found.length === 0 && worst) found.push({ limit, counted, row: worst, fit: 'unknown' })
  return found
}

/** rule:limit-by-law. Bans and percentages of the market, summed over all forms that an entry counts together. */
export const limitByLaw: Check = (context) =>
  limitsHere(context).flatMap(({ limit, counted }) =>
    governing(limit, counted, context, context.placedOn).map((found) => {
      if (limit.kind === 'opinion')
        return hitOf(found, 'warn', `an expert opinion goes to ${textOf(found).replace('the limit is ', 'at most ')}`)
      if (found.fit === 'unknown') {
        return {
          ...hitOf(found, 'unknown', `${textOf(found)}: the areas of use were not given`),
          remedy: 'Say where the product is used (face, eye, lip, hair, under 3 years …)',
        }
      }
      return {
        ...hitOf(found, 'stop', textOf(found)),
        remedy: found.row.prohibited ? 'Take it out' : `At most ${found.row.max_percent} %`,
      }
    }),
  )

/** rule:limit-coming. Limits in the books that do not bind yet: what the entry will say once all its rows are in force. */
export const limitComing: Check = (context) =>
  limitsHere(context).flatMap(({ limit, counted }) => {
    if (!limit.rows.some((row) => isLimit(row) && notYet(row, limit, context.placedOn))) return []
    return governing(limit, counted, context, ALL_IN_FORCE)
      .filter(({ row }) => notYet(row, limit, context.placedOn))
      .map((found) =>
        hitOf(
          found,
          found.fit === 'unknown' ? 'unknown' : 'warn',
          `${textOf(found)} for goods placed on the market from ${found.row.applies_from}`,
        ),
      )
  })

const ALL_IN_FORCE = '9999-12-31'

/** By which factor the dose has to fall to meet every percentage that is exceeded; 0 where something is prohibited, 1 where nothing is. */
export function lawfulFactor(context: FormulaContext): number {
  const found = limitsHere(context)
    .filter(({ limit }) => limit.kind === 'law')
    .flatMap(({ limit, counted }) => governing(limit, counted, context, context.placedOn))
    .filter(({ fit }) => fit === 'yes')
  return Math.min(1, ...found.map(({ row, counted }) => (row.max_percent ?? 0) / counted.counted_percent))
}

/** rule:law-ph. A pH window that the law ties to an ingredient. */
export const lawPh: Check = (context) =>
  limitsHere(context).flatMap(({ limit, counted }) => {
    const row = strictest(limit.rows.filter((one) => one.ph && fits(one, context) === 'yes'))[0]
    const { ph } = context
    if (!row?.ph || ph === null || limit.kind === 'opinion' || inside(ph, row.ph)) return []
    return [
      hitOf(
        { limit, counted, row, fit: 'yes' },
        'stop',
        `the law ties it to pH ${rangeText(row.ph)}; this formula is at pH ${short(ph)}`,
      ),
    ]
  })

/** rule:law-condition. Conditions and label words that cannot be computed. */
export const lawCondition: Check = (context) =>
  limitsHere(context).flatMap(({ limit, counted }) => {
    if (limit.kind === 'opinion') return []
    const rows = limit.rows.filter((row) => (row.condition ?? row.warning) && fits(row, context) === 'yes')
    return rows
      .slice(0, 1)
      .map((row) =>
        hitOf(
          { limit, counted, row, fit: 'yes' },
          'note',
          [row.condition, row.warning && `label: "${row.warning}"`].filter(Boolean).join('; '),
        ),
      )
  })
