import type { Lesson, LessonFile } from '#engine/model/lesson.ts'
import { isObject } from './expand-claims.ts'
import type { RawFile } from './raw.ts'

/** What a lesson is about says its folder. */
export const aboutOf = (path: string): Lesson['about']['kind'] => (path.startsWith('lessons/roles/') ? 'role' : 'idea')

const isLesson = (data: unknown): data is LessonFile =>
  isObject(data) && isObject(data['live']) && ['parts', 'states', 'sources'].every((key) => Array.isArray(data[key]))

/** Lessons by id, ideas and roles alike. Their shape is tested against the schema of lessons, with the real data. */
export function expandLessons(files: readonly RawFile[]): Map<string, Lesson> {
  const lessons = files.flatMap(({ path, data }) =>
    isLesson(data) ? [{ ...data, about: { kind: aboutOf(path), id: data.id } }] : [],
  )
  return new Map(lessons.sort((a, b) => (a.id < b.id ? -1 : 1)).map((lesson) => [lesson.id, lesson]))
}
