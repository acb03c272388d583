import type { FormulaContext, Substance } from '#engine/formula/context.ts'
import { activeMatter } from '#engine/formula/totals.ts'
import { rangeOfProperty } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Limit } from '#engine/model/records.ts'

/** What an entry counts in a formula, and what of it is not known. */
export interface Counted {
  /** mass counted by the law [%]: every form of the substance on the basis of the entry */
  counted_percent: number
  members: Substance[]
  /** blends whose shares nobody stated, and what they may add at most */
  open: { blends: Subject[]; max_percent: number }
  /** solutions of which nobody stated the strength, and what they may hold beyond the typical one at most */
  stronger: { solutions: Subject[]; max_percent: number }
}

const isMember = (limit: Limit, { id, classes }: Subject): boolean =>
  limit.members[id] !== undefined || limit.memberClasses.some((one) => classes.has(one))

const factorOf = (limit: Limit, { id }: Subject): number => limit.members[id] ?? 1

/** A blend that is named but not recorded: its parts are known, their shares are not. */
const isOpenBlend = ({ tier, madeOf }: Subject): boolean => tier === 'inventory' && madeOf.length > 0

/** What is counted for certain, and what blends of unknown shares may hold. */
export function countOf(limit: Limit, context: FormulaContext): Counted {
  const members = context.substances.filter(({ subject }) => isMember(limit, subject))
  let counted_percent = members.reduce(
    (sum, { subject, pure_percent }) => sum + pure_percent * factorOf(limit, subject),
    0,
  )
  const open: Counted['open'] = { blends: [], max_percent: 0 }
  for (const { subject, share_percent } of context.lines.filter((line) => isOpenBlend(line.subject))) {
    const own = subject.parts.filter((part) => isMember(limit, part.subject))
    if (own.length === 0) continue
    counted_percent -= own.reduce((sum, part) => sum + share_percent * part.share * factorOf(limit, part.subject), 0)
    open.blends.push(subject)
    open.max_percent += share_percent * Math.max(...own.map((part) => factorOf(limit, part.subject)))
  }
  const sure_percent = open.blends.length > 0 ? Math.max(0, counted_percent) : counted_percent
  return { counted_percent: sure_percent, members, open, stronger: strongerOf(limit, context) }
}

/** What solutions hold at the upper end of the usual strengths, beyond what is counted. */
function strongerOf(limit: Limit, { lines }: FormulaContext): Counted['stronger'] {
  const found: Counted['stronger'] = { solutions: [], max_percent: 0 }
  for (const line of lines) {
    const max = rangeOfProperty(line.subject, 'active_percent')?.max
    if (line.strength_percent !== undefined || max === undefined || limit.members[line.subject.id] === undefined)
      continue
    const more_percent = (line.share_percent * Math.min(100, max)) / 100 - activeMatter(line)
    if (more_percent <= 0) continue
    found.solutions.push(line.subject)
    found.max_percent += more_percent * factorOf(limit, line.subject)
  }
  return found
}
