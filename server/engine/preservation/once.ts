import type { FormulaContext } from '#engine/formula/context.ts'

/** What was worked out of one context, by the question that asked. One weak map for all: each more costs the collector. */
const answers = new WeakMap<FormulaContext, Map<symbol, unknown>>()

/** A question of a context that is worked out once, however many rules ask it. */
export function onceFor<T>(work: (context: FormulaContext) => T): (context: FormulaContext) => T {
  const question = Symbol()
  return (context) => {
    let known = answers.get(context)
    if (!known) answers.set(context, (known = new Map<symbol, unknown>()))
    if (known.has(question)) return known.get(question) as T
    const answer = work(context)
    known.set(question, answer)
    return answer
  }
}
