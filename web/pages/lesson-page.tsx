import { Link } from 'wouter'
import type { LessonReply } from '#web/client/use-lessons.ts'
import { useLesson } from '#web/client/use-lessons.ts'
import { useTitle } from '#web/client/use-title.ts'
import { isNoSource, sourceWords } from '#web/format/source.ts'
import { sourceHref } from '#web/format/source-link.ts'
import { LiveExample } from '#web/lessons/live-example.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { text } from '#web/text/text.ts'
import { lessons as T } from '#web/text/lessons.ts'
import '#web/lessons/lessons.css'
import { InEnglish, Said, Spoken, useSaid } from '#web/parts/spoken.tsx'
import { dayText } from '#web/format/day.ts'

const accesses: Readonly<Record<string, string>> = text.ingredient.accesses

function Source({ source }: { source: LessonReply['sources'][number] }) {
  const { id, title, address, locator, access } = source
  if (isNoSource(id)) return <li>{sourceWords(id)}</li>
  const href = sourceHref(address)
  return (
    <li>
      {href ? <a href={href}>{title}</a> : [title, address].filter(Boolean).join(', ')}
      <small>
        {' '}
        {locator} ({accesses[access] ?? access})
      </small>
    </li>
  )
}

function RestsOn({ lesson }: { lesson: LessonReply }) {
  const { states, sources, seen } = lesson
  return (
    <section className="card" aria-labelledby="lesson-states">
      <h2 id="lesson-states">{T.states}</h2>
      <p>{T.statesLead}</p>
      <ul>
        {states.map(({ says, checkedBy }) => (
          <li key={says}>
            <Said>{says}</Said> <small>({T.checkedBy[checkedBy]})</small>
          </li>
        ))}
      </ul>
      <h3>{T.sources}</h3>
      {sources.length === 0 ? (
        <p>{T.noSources}</p>
      ) : (
        <ul className="learn-sources">
          {sources.map((source) => (
            <Source key={`${source.id} ${source.locator}`} source={source} />
          ))}
        </ul>
      )}
      <p className="remark">{T.seen(accesses[seen.access] ?? seen.access, dayText(seen.date))}</p>
      <p className="remark">{T.notSafe}</p>
    </section>
  )
}

/** Address of the questions that go with a lesson. */
function practiseHref({ practise }: LessonReply): string {
  const { kinds = [], roles = [] } = practise ?? {}
  const query = new URLSearchParams()
  if (kinds[0] !== undefined) query.set('kind', kinds[0])
  if (roles.length > 0) query.set('roles', roles.join(','))
  return `/learn${query.size > 0 ? `?${query}` : ''}#practise`
}

function WaysOn({ lesson }: { lesson: LessonReply }) {
  const { about, next } = lesson
  return (
    <section className="card">
      <p>
        <Link href={practiseHref(lesson)}>{T.practise}</Link>
        {about.kind === 'role' && (
          <>
            {' · '}
            <Link href={`/role/${about.id}`}>{T.role}</Link>
          </>
        )}
      </p>
      {next.length > 0 && (
        <>
          <h2>{T.next}</h2>
          <ul className="lesson-links">
            {next.map(({ id, title }) => (
              <li key={id}>
                <Link href={`/lesson/${id}`}>
                  <Said>{title}</Said>
                </Link>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

function Whole({ lesson }: { lesson: LessonReply }) {
  useTitle(lesson.title)
  const said = useSaid()
  const { title, question, parts, cautions, live, recipe } = lesson
  return (
    <>
      <h1>
        <Said>{title}</Said>
      </h1>
      <p className="lead">
        <strong>{T.question}:</strong> <Said>{question}</Said>
      </p>
      <div className="card">
        <div className="lesson-text" {...said}>
          {parts.map(({ heading, text: words }) => (
            <div key={words}>
              {heading !== undefined && <h2>{heading}</h2>}
              <p>{words}</p>
            </div>
          ))}
        </div>
      </div>
      {cautions.length > 0 && (
        <section className="card lesson-cautions" aria-labelledby="lesson-cautions">
          <h2 id="lesson-cautions">{T.cautions}</h2>
          <ul>
            {cautions.map((one) => (
              <li key={one} {...said}>
                {one}
              </li>
            ))}
          </ul>
        </section>
      )}
      <LiveExample live={live} recipe={recipe} />
      <RestsOn lesson={lesson} />
      <WaysOn lesson={lesson} />
    </>
  )
}

/** One lesson: text, cautions, something to try, what it rests on, where to go on. */
export function LessonPage({ id }: { id: string }) {
  const reply = useLesson(id)
  return (
    <div className="page">
      <p>
        <Link href="/learn">{T.back}</Link>
      </p>
      {reply.state === 'ready' && (
        <Spoken by="GET /api/learn/lessons/:id">
          <InEnglish by="GET /api/learn/lessons/:id" />
          <Whole lesson={reply.data} />
        </Spoken>
      )}
      {reply.state === 'failed' && reply.code === 'unknown-lesson' && <h1>{T.unknown}</h1>}
      {reply.state === 'failed' && <Failed failure={reply} />}
      {(reply.state === 'loading' || reply.state === 'idle') && <Loading>{T.loadingOne}</Loading>}
    </div>
  )
}
