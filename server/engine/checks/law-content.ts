import type { FormulaContext } from '#engine/formula/context.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Composition } from '#engine/knowledge/expand-composition.ts'
import { analysisOf, heldBy } from './law-analysis.ts'

/** Share of one substance that raw materials bring [% of the formula], with those that bring it. */
export interface Brought {
  min_percent: number
  max_percent: number
  from: {
    subject: Subject
    min_percent: number
    max_percent: number
    seen: Composition['seen']
    /** found by the supplier in this very material */
    analysed: boolean
  }[]
}

const NOTHING: Brought = { min_percent: 0, max_percent: 0, from: [] }

/** Ends of two ranges added. */
const plus = (a: Brought, b: Brought): Brought => ({
  min_percent: a.min_percent + b.min_percent,
  max_percent: a.max_percent + b.max_percent,
  from: [...a.from, ...b.from],
})

const times = (one: Brought, factor: number): Brought => ({
  min_percent: one.min_percent * factor,
  max_percent: one.max_percent * factor,
  from: one.from.map((source) => ({
    ...source,
    min_percent: source.min_percent * factor,
    max_percent: source.max_percent * factor,
  })),
})

const memo = new WeakMap<FormulaContext, ReadonlyMap<string, Brought>>()

/**
 * Substances that the law names and that the natural scents in a formula bring, by member name.
 *
 *   brought = sum over the scents of share x (what the supplier found, else the typical range of the composition)
 *
 * A typical range is not measured: a sum of such that decides anything is to be confirmed by the supplier's analysis.
 */
export function contentsOf(context: FormulaContext): ReadonlyMap<string, Brought> {
  const known = memo.get(context)
  if (known) return known
  const found = new Map<string, Brought>()
  // A blend is taken apart, but a paper may speak of the whole of it.
  const blends = context.lines.filter(({ subject }) => subject.madeOf.length > 0 && analysisOf(context, subject.id))
  for (const { subject, share_percent } of [...context.substances, ...blends]) {
    const composition = context.world.knowledge.compositions.get(subject.id)
    for (const { substance, analysed, ...held } of heldBy(subject.id, composition, context)) {
      const seen = analysed ? FOUND : (composition?.seen ?? NEVER_SEEN)
      const [min_percent, max_percent] = [held.min_percent, held.max_percent].map((one) => (one * share_percent) / 100)
      const source = { subject, min_percent: min_percent ?? 0, max_percent: max_percent ?? 0, seen, analysed }
      found.set(substance, plus(found.get(substance) ?? NOTHING, { ...source, from: [source] }))
    }
  }
  memo.set(context, found)
  return found
}

const FOUND: Composition['seen'] = {
  ...{ kind: 'measured', source: '', locator: "supplier's analysis, as stated", access: 'secondary', date: '' },
}
const NEVER_SEEN: Composition['seen'] = { kind: 'rule-of-thumb', source: '', locator: '', access: 'memory', date: '' }

/** What the scents bring of all these members together, each times its factor. Scents that count themselves are left out. */
export function broughtOf(context: FormulaContext, members: Readonly<Record<string, number>>): Brought {
  const contents = contentsOf(context)
  if (contents.size === 0) return NOTHING
  return Object.entries(members).reduce((sum, [member, factor]) => {
    const one = contents.get(member)
    if (!one) return sum
    const from = one.from.filter(({ subject }) => members[subject.id] === undefined)
    const own = from.reduce((total, source) => plus(total, { ...source, from: [source] }), NOTHING)
    return plus(sum, times(own, factor))
  }, NOTHING)
}
