import { Link, useSearchParams } from 'wouter'
import { useSource } from '#web/client/use-sources.ts'
import type { SourceReply } from '#web/client/use-sources.ts'
import { useTitle } from '#web/client/use-title.ts'
import { SourceUses } from '#web/parts/source-uses.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { sources as T } from '#web/text/sources.ts'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

/** What it is: kind, year, place, grade, terms, note. What is not stated is said to be so. */
function About({ source }: { source: SourceReply }) {
  const { kind, year, locator, link, grade, licence, note } = source
  return (
    <dl>
      <dt>{T.kind}</dt>
      <dd>
        {T.kinds[kind]} <small>({T.kindRemark})</small>
      </dd>
      <dt>{T.year}</dt>
      <dd>{year ?? T.noYear}</dd>
      <dt>{T.place}</dt>
      <dd>
        {link === null ? (
          locator
        ) : (
          <a href={link} rel="noreferrer nofollow">
            {locator}
          </a>
        )}
      </dd>
      <dt>{T.grade}</dt>
      <dd>
        {grade === '' ? T.noGrade : grade} <small>({T.gradeRemark})</small>
      </dd>
      {licence.text !== '' && (
        <>
          <dt>{T.licence}</dt>
          <dd>
            {licence.title !== '' && <b>{licence.title}. </b>}
            {licence.text}
          </dd>
        </>
      )}
      {note !== '' && (
        <>
          <dt>{T.note}</dt>
          <dd>{note}</dd>
        </>
      )}
    </dl>
  )
}

function Source({ source, isFirst, onPage }: { source: SourceReply; isFirst: boolean; onPage: (to: string) => void }) {
  useTitle(source.title)
  return (
    <>
      <h1>{source.title}</h1>
      <p className="remark">
        {source.id} · <Link href="/sources">{T.back}</Link>
      </p>
      <section className="card">
        <About source={source} />
      </section>
      <section className="card" aria-labelledby="rests-title">
        <h2 id="rests-title" tabIndex={-1}>
          {T.rests}
        </h2>
        <p role="status">{source.total === 0 ? T.none : T.restsOn(source.total, source.ingredients)}</p>
        {source.singleOnly && <p className="remark">{T.singleOnly}</p>}
        <SourceUses uses={source.uses} />
        <div className="row">
          {!isFirst && (
            <button type="button" onClick={() => onPage('')}>
              {T.first}
            </button>
          )}
          {source.next !== null && (
            <button type="button" onClick={() => onPage(source.next ?? '')}>
              {T.next}
            </button>
          )}
        </div>
      </section>
    </>
  )
}

/** One source: what it is, on which terms, and every statement that rests on it. */
export function SourcePage({ id }: { id: string }) {
  const [params, setParams] = useSearchParams()
  const after = params.get('after') ?? ''
  const reply = useSource(id, after)
  const toPage = (next: string) => {
    setParams(next === '' ? {} : { after: next })
    document.getElementById('rests-title')?.focus()
  }
  return (
    <div className="page">
      {reply.state === 'ready' && (
        <Spoken by="GET /api/sources/:id">
          <InEnglish by="GET /api/sources/:id" />
          <Source source={reply.data} isFirst={after === ''} onPage={toPage} />
        </Spoken>
      )}
      {reply.state === 'failed' && reply.code === 'unknown-source' && (
        <>
          <h1>{T.unknown}</h1>
          <p>
            <Link href="/sources">{T.back}</Link>
          </p>
        </>
      )}
      {reply.state === 'failed' && reply.code !== 'unknown-source' && <Failed failure={reply} />}
      {(reply.state === 'loading' || reply.state === 'idle') && <Loading>{T.loadingOne}</Loading>}
    </div>
  )
}
