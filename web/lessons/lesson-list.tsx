import { Link } from 'wouter'
import type { LessonShort } from '#web/client/use-lessons.ts'
import { useLessons } from '#web/client/use-lessons.ts'
import type { RoleShort } from '#web/client/use-roles.ts'
import { useRoles } from '#web/client/use-roles.ts'
import { Failed, Loading } from '#web/parts/states.tsx'
import { lessons as T } from '#web/text/lessons.ts'
import './lessons.css'
import { InEnglish, Said, Spoken } from '#web/parts/spoken.tsx'

function Links({ lessons }: { lessons: readonly LessonShort[] }) {
  return (
    <ul className="lesson-links">
      {lessons.map(({ id, title, minutes }) => (
        <li key={id}>
          <Link href={`/lesson/${id}`}>
            <Said>{title}</Said>
          </Link>{' '}
          <small>{T.minutes(minutes)}</small>
        </li>
      ))}
    </ul>
  )
}

/** A role and all below it, the role itself first. */
const below = (role: RoleShort, all: readonly RoleShort[]): string[] => [
  role.id,
  ...all.filter(({ broader }) => broader === role.id).flatMap((one) => below(one, all)),
]

interface Group {
  id: string
  label: string
  lessons: LessonShort[]
}

/** Lessons about roles under their broadest role; what is not known there comes last. */
function groupsOf(lessons: readonly LessonShort[], roles: readonly RoleShort[]): Group[] {
  const byId = new Map(lessons.map((lesson) => [lesson.id, lesson]))
  return roles
    .filter(({ broader }) => broader === undefined)
    .map((role) => ({
      id: role.id,
      label: role.label,
      lessons: below(role, roles).flatMap((id) => byId.get(id) ?? []),
    }))
    .filter((group) => group.lessons.length > 0)
}

function ByRole({ lessons }: { lessons: readonly LessonShort[] }) {
  const reply = useRoles()
  if (reply.state !== 'ready') return <Links lessons={lessons} />
  const groups = groupsOf(lessons, reply.data.roles)
  const single = groups.filter((group) => group.lessons.length === 1).flatMap((group) => group.lessons)
  return (
    <>
      <Links lessons={single} />
      {groups
        .filter((group) => group.lessons.length > 1)
        .map(({ id, label, lessons: own }) => (
          <details key={id} className="more">
            <summary>
              <Said>{label}</Said> <small>{T.count(own.length)}</small>
            </summary>
            <Links lessons={own} />
          </details>
        ))}
    </>
  )
}

/** All lessons: the great ideas first, then the roles by their tree. */
export function LessonList() {
  const reply = useLessons()
  const of = (kind: 'idea' | 'role') =>
    reply.state === 'ready' ? reply.data.lessons.filter(({ about }) => about.kind === kind) : []
  const [ideas, roles] = [of('idea'), of('role')]
  return (
    <section aria-labelledby="lessons-title">
      <h2 id="lessons-title">{T.title}</h2>
      <p>{T.lead}</p>
      {reply.state === 'failed' && <Failed failure={reply} />}
      {reply.state === 'loading' && <Loading>{T.loading}</Loading>}
      {reply.state === 'ready' && reply.data.lessons.length === 0 && <p>{T.none}</p>}
      {reply.state === 'ready' && reply.data.lessons.length > 0 && (
        <Spoken by="GET /api/learn/lessons">
          <InEnglish by="GET /api/learn/lessons" />
          <div className="lesson-groups">
            <div className="card">
              <h3>{T.ideas}</h3>
              <Links lessons={ideas} />
            </div>
            <div className="card">
              <h3>{T.roles}</h3>
              <ByRole lessons={roles} />
            </div>
          </div>
        </Spoken>
      )}
    </section>
  )
}
