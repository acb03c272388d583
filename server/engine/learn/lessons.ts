import { nameOf } from '#engine/checks/say.ts'
import type { World } from '#engine/graph/world.ts'
import { judgeFact } from '#engine/knowledge/lints/lesson-facts.ts'
import type { Lesson } from '#engine/model/lesson.ts'
import type { LessonReply, LessonShort } from '#engine/model/lesson-reply.ts'
import { liveFaults, recipesOf } from './lesson-live.ts'
import { judgeStatement } from './lesson-statements.ts'

const WORDS_PER_MINUTE = 150
/** to try the live example */
const LIVE_MINUTES = 2

function minutesOf({ parts }: Lesson): number {
  const words = parts.reduce((sum, { text }) => sum + text.split(/\s+/).length, 0)
  return Math.ceil(words / WORDS_PER_MINUTE) + LIVE_MINUTES
}

const shortOf = (lesson: Lesson): LessonShort => ({
  id: lesson.id,
  title: lesson.title,
  about: lesson.about,
  minutes: minutesOf(lesson),
})

/** All lessons, ideas first, then roles, by id. */
export const listLessons = ({ knowledge }: World): LessonShort[] =>
  [...knowledge.lessons.values()]
    .map(shortOf)
    .sort((a, b) => Number(a.about.kind === 'role') - Number(b.about.kind === 'role') || (a.id < b.id ? -1 : 1))

function citedOf({ knowledge }: World, lesson: Lesson): LessonReply['sources'] {
  return lesson.sources.map(({ source, locator, access }) => {
    const known = knowledge.sources.get(source)
    return { id: source, title: known?.title ?? source, address: known?.locator ?? '', locator, access }
  })
}

function recipeOfLive(world: World, { live, title }: Lesson): LessonReply['recipe'] {
  const recipes = recipesOf(world, live)
  if (!recipes) return undefined
  const { formulas } = recipes
  const ids = Object.values(formulas).flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient))
  const names = ids.map((id): [string, string] => {
    const subject = world.find(id)
    return [id, subject ? nameOf(subject) : id]
  })
  return { title: recipes.title ?? title, ...formulas, names: Object.fromEntries(names) }
}

/** One lesson as it is read, with its live example ready to be shown; null when there is no such lesson. */
export function describeLesson(world: World, id: string): LessonReply | null {
  const lesson = world.knowledge.lessons.get(id)
  if (!lesson) return null
  const recipe = recipeOfLive(world, lesson)
  const next = (lesson.next ?? []).flatMap((other) => world.knowledge.lessons.get(other) ?? [])
  return {
    ...shortOf(lesson),
    question: lesson.question,
    parts: lesson.parts,
    seen: lesson.seen,
    cautions: lesson.cautions,
    sources: citedOf(world, lesson),
    states: lesson.states.map((statement) => ({
      says: statement.says,
      checkedBy: judgeFact(world.knowledge, statement) === null ? 'engine' : 'records',
    })),
    live: lesson.live,
    ...(recipe && { recipe }),
    ...(lesson.practise && { practise: lesson.practise }),
    next: next.map(shortOf),
  }
}

/** What of a lesson is not so: every false statement with what the graph says, and a live example that shows nothing. */
export function lessonFaults(world: World, lesson: Lesson): { path: string; message: string }[] {
  const states = lesson.states.flatMap((statement, at) => {
    const { holds, found } = judgeStatement(world, statement)
    return holds ? [] : [{ path: `states/${at}`, message: `"${statement.says}" is not so: ${found}` }]
  })
  return [...states, ...liveFaults(world, lesson.live).map((message) => ({ path: 'live', message }))]
}
