import { useEffect } from 'react'
import type { LearnItem } from '#web/client/use-learn.ts'
import { changedSince, printOf, withQuiz } from '#web/state/teach.ts'
import type { Quiz } from '#web/state/teach.ts'
import type { Marked } from '#web/state/teach-marks.ts'
import type { ClassStore } from './use-classes.ts'
import { useQuizItems, useQuizKey } from './use-quiz.ts'
import type { QuizKey } from './use-quiz.ts'

const NO_ITEMS: LearnItem[] = []

function markedOf(items: readonly LearnItem[], key: QuizKey, changed: readonly number[]): Marked[] {
  return items.map(({ question, choices, kind }, at) => {
    const answer = key.answers[at]
    const place = changed.includes(at) || !answer ? -1 : choices.findIndex(({ id }) => id === answer.key)
    return { question, choices: choices.length, key: place < 0 ? null : place, group: answer?.about.role ?? kind }
  })
}

/** The questions of a sheet with their key, and which of them are no longer as they were printed. */
export function useMarkedQuiz(quiz: Quiz | null, change: ClassStore['changeNow']) {
  const reply = useQuizItems(quiz)
  const items = reply.state === 'ready' ? reply.data.items : NO_ITEMS
  const key = useQuizKey(items)
  const id = quiz?.id ?? ''
  const takeNow = () => change((now) => withQuiz(now, id, (one) => ({ ...one, made: items.map(printOf) })))
  const isNew = quiz !== null && quiz.made === null && items.length > 0
  useEffect(() => {
    if (isNew) change((now) => withQuiz(now, id, (one) => ({ ...one, made: items.map(printOf) })))
  }, [isNew, id, items, change])
  const changed = reply.state === 'ready' && quiz ? changedSince(quiz.made, items) : []
  return { reply, items, key, changed, takeNow, questions: markedOf(items, key, changed) }
}
