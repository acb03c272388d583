import type { Swap, SwapsReply, Wishes } from '#engine/model/swap.ts'
import type { Before } from './assess.ts'
import type { Job } from './job.ts'
import { linesOfStandIn } from './apply.ts'
import { tryOut } from './trial.ts'

interface JointQuestion {
  jobs: readonly Job[]
  singles: readonly SwapsReply[]
  before: Before
  wishes: Wishes
  limit: number
}

/** Best of each that are combined; the product is tried whole. */
const BEST_OF_EACH = 5

function* combinations(lists: readonly (readonly Swap[])[]): Generator<Swap[]> {
  const [first, ...rest] = lists
  if (!first) {
    yield []
    return
  }
  for (const swap of first) for (const tail of combinations(rest)) yield [swap, ...tail]
}

const rankOf = (swaps: readonly Swap[]): number =>
  swaps.reduce((sum, { scores }) => sum + (scores['rank'] ?? 0), 0) / swaps.length

/** Puts the stand-ins of all missing ingredients in at once: what goes alone may not go together. */
function together(parts: readonly Swap[], { before, wishes }: JointQuestion): Swap | null {
  const { world } = before.context
  const out = new Set(parts.flatMap(({ replaces }) => replaces))
  const placed = parts.flatMap(({ lines, replaces }) =>
    lines.flatMap((line) => {
      const stand = world.find(line.ingredient)
      if (!stand || replaces.length === 0) return []
      const already = before.context.lines.reduce(
        (sum, { subject, share_percent }) => sum + (subject.id === stand.id && !out.has(stand.id) ? share_percent : 0),
        0,
      )
      return [{ stand, share_percent: line.share_percent - already }]
    }),
  )
  const trial = tryOut(before, out, placed, wishes)
  if (trial.conflict.length > 0) return null
  const { form: _form, ...formula } = trial.after.formula
  const ids = new Set(placed.map(({ stand }) => stand.id))
  return {
    grade: parts.every(({ grade }) => grade === 'good') && trial.repairs.length === 0 ? 'good' : 'workable',
    replaces: [...out],
    role: parts.map(({ role }) => role).join(' + '),
    lines: linesOfStandIn(trial.after.formula, ids),
    why: parts.map(({ why }) => why).join(' '),
    changes: [
      ...parts.flatMap(({ changes }) => changes.filter(({ kind }) => kind !== 'ph' && kind !== 'heat')),
      ...trial.repairs,
    ],
    formula: before.context.formula.form ? { ...formula, form: before.context.formula.form } : formula,
    findings: trial.findings,
    path: parts.flatMap(({ path }) => path),
    scores: { rank: Math.max(0, rankOf(parts) - trial.cost) },
    unknown: [...new Set(parts.flatMap(({ unknown }) => unknown))].sort(),
    evidence: parts.map(({ evidence }) => evidence).sort((a, b) => ORDER.indexOf(b) - ORDER.indexOf(a))[0] ?? 'memory',
    sources: [...new Set(parts.flatMap(({ sources }) => sources))].sort(),
  }
}

const ORDER = ['measured', 'published', 'practice', 'memory']

/** Stand-ins for several missing ingredients together. */
export function jointSwaps(question: JointQuestion): SwapsReply {
  const { singles, before, limit } = question
  const failed = singles.find(({ outcome }) => outcome !== 'swaps')
  const base = {
    roles: singles.flatMap(({ roles }) => roles),
    refused: unique(singles.flatMap(({ refused }) => refused)),
    leaveOut: worstLeaveOut(singles),
    graphVersion: before.context.world.knowledge.version,
  }
  if (failed) return { ...base, outcome: failed.outcome, why: failed.why, swaps: [] }
  const swaps = [...combinations(singles.map((reply) => reply.swaps.slice(0, BEST_OF_EACH)))]
    .flatMap((parts) => together(parts, question) ?? [])
    .sort((a, b) => (b.scores['rank'] ?? 0) - (a.scores['rank'] ?? 0) || (idsOf(a) < idsOf(b) ? -1 : 1))
    .slice(0, limit)
  const offered = new Set(swaps.flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient)))
  return {
    ...base,
    refused: base.refused.filter(({ lines }) => !lines.some(({ ingredient }) => offered.has(ingredient))),
    outcome: swaps.length > 0 ? 'swaps' : 'no-safe-swap',
    why:
      swaps.length > 0
        ? singles.map(({ why }) => why).join(' ')
        : 'Each has a stand-in alone, but none of the combinations holds together.',
    swaps,
  }
}

const idsOf = ({ lines }: Swap): string => lines.map(({ ingredient }) => ingredient).join(' ')

function unique(refused: SwapsReply['refused']): SwapsReply['refused'] {
  const seen = new Set<string>()
  return refused.filter(({ lines }) => {
    const key = lines.map(({ ingredient }) => ingredient).join(' ')
    return !seen.has(key) && seen.add(key)
  })
}

const VERDICTS = ['fine', 'workable', 'no']

const worstLeaveOut = (singles: readonly SwapsReply[]): SwapsReply['leaveOut'] =>
  singles
    .map(({ leaveOut }) => leaveOut)
    .sort((a, b) => VERDICTS.indexOf(b.verdict) - VERDICTS.indexOf(a.verdict))[0] ?? { verdict: 'no', why: '' }
