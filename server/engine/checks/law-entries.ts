import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import type { Limit, LimitRow } from '#engine/model/records.ts'
import { broughtOf, contentsOf } from './law-content.ts'
import { countOf } from './law-count.ts'
import type { Counted } from './law-count.ts'
import type { Brought } from './law-content.ts'

/** An entry that bears on a formula, with what it counts there. */
export interface Entry extends Counted {
  limit: Limit
  /** what natural scents typically bring of it */
  brought: Brought
  /** whether the entry speaks of this use; unknown where the purpose has to be asked */
  concern: 'yes' | 'unknown'
}

export const isLimit = (row: LimitRow): boolean =>
  row.prohibited === true || row.max_percent !== undefined || row.ph !== undefined

/** Entries of the same substance for other uses than preserving. */
export const otherUses = ({ limits }: Subject, limit: Limit): Limit[] =>
  limits.filter((other) => other.market === limit.market && other.kind === 'law' && other.use === 'not-preservative')

/**
 * A substance with an entry of its own for other uses is bound by the preservative entry where it preserves: where that is
 * its role here, or perhaps where nothing else preserves. One that has no other entry is bound by it in every use, if it is
 * known to preserve at all.
 */
function preservesHere({ subject }: Substance, limit: Limit, context: FormulaContext): 'yes' | 'no' | 'unknown' {
  const hasOther = otherUses(subject, limit).length > 0
  if (!subject.allRoles.has('preservative') && !subject.allRoles.has('preservative-booster')) {
    return hasOther ? 'no' : 'unknown'
  }
  if (!hasOther || context.rolesOf(subject)[0]?.role === 'preservative') return 'yes'
  const otherPreservative = context.lines.some(
    (line) => line.subject.id !== subject.id && context.rolesOf(line.subject)[0]?.role === 'preservative',
  )
  return otherPreservative ? 'no' : 'unknown'
}

const best = (answers: readonly ('yes' | 'no' | 'unknown')[]): 'yes' | 'no' | 'unknown' =>
  answers.includes('yes') ? 'yes' : answers.includes('unknown') ? 'unknown' : 'no'

const playsHere = (role: string, { subject }: Substance, context: FormulaContext): 'yes' | 'no' | 'unknown' => {
  if (!subject.allRoles.has(role)) return 'no'
  return context.rolesOf(subject)[0]?.role === role ? 'yes' : 'unknown'
}

/** Does the entry speak of this use? */
function concernOf(limit: Limit, members: readonly Substance[], context: FormulaContext): 'yes' | 'no' | 'unknown' {
  if (limit.use === 'hair-dye') return 'no'
  if (limit.use === 'uv-filter') return best(members.map((member) => playsHere('uv-filter', member, context)))
  if (limit.use === 'fragrance') return members.some(({ subject }) => subject.allRoles.has('scent')) ? 'yes' : 'unknown'
  if (limit.use === 'preservative') return best(members.map((member) => preservesHere(member, limit, context)))
  if (limit.use === 'not-preservative') {
    const preserves = members.every(({ subject }) => context.rolesOf(subject)[0]?.role === 'preservative')
    return preserves ? 'no' : 'yes'
  }
  return 'yes'
}

/** Entries by member name, for constituents that have no record of their own. */
const indexes = new WeakMap<Knowledge, ReadonlyMap<string, readonly Limit[]>>()

function limitsByMember(knowledge: Knowledge): ReadonlyMap<string, readonly Limit[]> {
  const known = indexes.get(knowledge)
  if (known) return known
  const index = new Map<string, Limit[]>()
  for (const limit of knowledge.limits) {
    for (const member of Object.keys(limit.members)) {
      const list = index.get(member)
      if (list) list.push(limit)
      else index.set(member, [limit])
    }
  }
  indexes.set(knowledge, index)
  return index
}

const isRequired = (limit: Limit, context: FormulaContext): boolean =>
  limit.requires.length === 0 || context.substances.some(({ subject }) => limit.requires.includes(subject.id))

function lookUp(context: FormulaContext): Entry[] {
  const byMember = limitsByMember(context.world.knowledge)
  const limits = new Set([
    ...context.substances.flatMap(({ subject }) => subject.limits),
    ...[...contentsOf(context).keys()].flatMap((substance) => byMember.get(substance) ?? []),
  ])
  return [...limits]
    .filter((limit) => limit.market === context.formula.market && isRequired(limit, context))
    .map((limit) => ({ limit, ...countOf(limit, context), brought: broughtOf(context, limit.members) }))
    .flatMap((entry): Entry[] => {
      // A trace in an oil serves no purpose of its own: entries for a use do not speak of it.
      const concern = entry.members.length === 0 ? 'yes' : concernOf(entry.limit, entry.members, context)
      if (entry.members.length === 0 && entry.limit.use !== 'any') return []
      return concern === 'no' ? [] : [{ ...entry, concern }]
    })
    .sort((a, b) => (a.limit.id < b.limit.id ? -1 : 1))
}

/** Several rules read the entries, so they are looked up once for each context. */
const memo = new WeakMap<FormulaContext, Entry[]>()

/** All entries of the market that count something in this formula, by id. */
export function entriesOf(context: FormulaContext): readonly Entry[] {
  const known = memo.get(context)
  if (known) return known
  const found = lookUp(context)
  memo.set(context, found)
  return found
}
