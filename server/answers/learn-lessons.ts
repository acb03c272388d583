import { lessonRoute, lessonsRoute } from '#contract/learn-lessons.ts'
import { describeLesson, listLessons } from '#engine/index.ts'
import { answer } from './answer.ts'
import { ApiError } from './api-error.ts'

export const lessonAnswers = [
  answer(lessonsRoute, ({ world }) => ({ lessons: listLessons(world), graphVersion: world.knowledge.version })),
  answer(lessonRoute, ({ world }, { params: { id } }) => {
    const lesson = describeLesson(world, id)
    if (!lesson) throw new ApiError(404, 'unknown-lesson', `id: no lesson has the id ${id}`, { at: '/id' })
    return { ...lesson, graphVersion: world.knowledge.version }
  }),
]
