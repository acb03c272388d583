import { Link } from 'wouter'
import { useLessons } from '#web/client/use-lessons.ts'
import { lessons as T } from '#web/text/lessons.ts'
import { Said, Spoken } from '#web/parts/spoken.tsx'

/** Link to the lesson about a role, where there is one. */
export function LessonOfRole({ role }: { role: string }) {
  const reply = useLessons()
  const lesson =
    reply.state === 'ready'
      ? reply.data.lessons.find(({ about }) => about.kind === 'role' && about.id === role)
      : undefined
  if (!lesson) return null
  return (
    <p>
      <Spoken by="GET /api/learn/lessons">
        <Link href={`/lesson/${lesson.id}`}>
          <Said>{T.ofRole(lesson.title)}</Said>
        </Link>
      </Spoken>
    </p>
  )
}
