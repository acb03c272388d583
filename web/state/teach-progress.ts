import { isProgress } from './review.ts'
import type { KeptItem } from './review.ts'
import type { LastAnswer } from './teach.ts'

const REVIEW = 2 // state of a card in ts-fsrs whose last answer was right

/**
 * Whether the last answer to a question was right. A progress file keeps no list of answers: a wrong one puts the card
 * back to the first step of learning, a right one takes it a step on or into review.
 */
const wasRight = ({ card }: KeptItem): boolean => card.state === REVIEW || card.learning_steps > 0

function lastOf(kept: KeptItem): LastAnswer {
  const { id, question, kind, ref } = kept.item
  return { id, question, kind, role: typeof ref.role === 'string' ? ref.role : null, right: wasRight(kept) }
}

export type ProgressFault = 'json' | 'not-progress' | 'empty'

/** What a progress file says of the last answers, or what is wrong with the file. */
export function readLastAnswers(text: string): { last: LastAnswer[] } | { fault: ProgressFault } {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    return { fault: 'json' }
  }
  if (!isProgress(value)) return { fault: 'not-progress' }
  const last = Object.values(value.items).map(lastOf)
  return last.length === 0 ? { fault: 'empty' } : { last }
}

/** Name of a student from the name of the file; a number follows where it is taken. */
export function nameFromFile(file: string, taken: readonly string[]): string {
  const name = file.replace(/\.json$/i, '').trim() || file
  if (!taken.includes(name)) return name
  const numbers = Array.from({ length: taken.length + 1 }, (_, n) => `${name} ${n + 2}`)
  return numbers.find((one) => !taken.includes(one)) ?? name
}
