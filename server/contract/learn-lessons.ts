import { Type } from 'typebox'
import type { Static } from 'typebox'
import { LessonReply as Lesson, LessonShort } from '#engine/model/lesson-reply.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

export const LessonsReply = closed({ lessons: Type.Array(LessonShort), graphVersion: Type.String() })
export const lessonsRoute = {
  method: 'GET',
  url: '/api/learn/lessons',
  schema: { response: { 200: LessonsReply } },
} as const

export const LessonReply = closed({ ...Lesson.properties, graphVersion: Type.String() })
export type LessonReply = Static<typeof LessonReply>
export const lessonRoute = {
  method: 'GET',
  url: '/api/learn/lessons/:id',
  schema: {
    params: closed({ id: Type.String({ minLength: 1, maxLength: 100 }) }),
    response: { 200: LessonReply, '4xx': ErrorReply },
  },
} as const
