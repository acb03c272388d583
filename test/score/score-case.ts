import { findSwaps, idOf } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { formulaOf, names, wishesOf } from './swap-cases.ts'
import type { SwapCase } from './swap-cases.ts'

/** What one case came to. */
export interface CaseScore {
  id: string
  group: string
  noSafe: boolean
  refusedAll: boolean
  /** place of the first accepted answer, from 1; Infinity when none */
  place: number
  /** answers among the first five that the case calls unsafe or breaking */
  unsafe: string[]
  answers: string[][]
  leaveOutRight: boolean
}

/** Answers of a method for one case, best first; each answer is the ids of its lines. */
export type Method = (world: World, one: SwapCase) => { answers: string[][]; leaveOut?: string }

const FIRST = 5

export function scoreAnswers(one: SwapCase, answers: string[][], leaveOut: string | undefined): CaseScore {
  const place = answers.findIndex((answer) => one.accept.some((entry) => names(answer, entry)))
  const bad = one.avoid.filter(({ severity }) => severity === 'unsafe' || severity === 'breaks')
  return {
    id: one.id,
    group: one.group,
    noSafe: one.no_safe_swap,
    refusedAll: answers.length === 0,
    place: place < 0 ? Infinity : place + 1,
    unsafe: answers
      .slice(0, FIRST)
      .filter((answer) => bad.some((entry) => names(answer, entry)))
      .map((answer) => answer.join(' + ')),
    answers,
    leaveOutRight: leaveOut === one.leave_out,
  }
}

/** The engine itself. @param withAreas false: as a caller who does not say where the product is used */
export const engine =
  (withAreas: boolean, weights: Readonly<Record<string, number>> = {}): Method =>
  (world, one) => {
    const reply = findSwaps(world, {
      formula: formulaOf(one, withAreas),
      missing: [idOf(one.missing)],
      limit: 10,
      wishes: { ...wishesOf(one), weights },
    })
    return {
      answers: reply.swaps.map(({ lines }) => lines.map(({ ingredient }) => ingredient)),
      leaveOut: reply.leaveOut.verdict,
    }
  }
