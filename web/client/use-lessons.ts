import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type LessonsReply = Api['GET /api/learn/lessons']['reply']
export type LessonShort = LessonsReply['lessons'][number]
export type LessonReply = Api['GET /api/learn/lessons/:id']['reply']
export type Live<K extends LessonReply['live']['kind']> = Extract<LessonReply['live'], { kind: K }>

/** All lessons, without their text. */
export function useLessons(): Question<LessonsReply> {
  return useQuestion({ key: ['lessons'], ask: (signal) => call('GET /api/learn/lessons', { signal }) })
}

/** One lesson, whole. */
export function useLesson(id: string): Question<LessonReply> {
  return useQuestion({
    key: ['lesson', id],
    ask: (signal) => call('GET /api/learn/lessons/:id', { params: { id }, signal }),
  })
}
