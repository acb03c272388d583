import { useEffect, useId, useState } from 'react'
import { Link, useSearchParams } from 'wouter'
import { useDebounced } from '#web/client/use-debounced.ts'
import { useSources } from '#web/client/use-sources.ts'
import type { SourceFilter, SourceShort, SourcesReply } from '#web/client/use-sources.ts'
import { useTitle } from '#web/client/use-title.ts'
import { Failed, Loading } from '#web/parts/states.tsx'
import { sources as T } from '#web/text/sources.ts'

const WHILE_TYPING_MS = 250

function Item({ source: { id, title, kind, year, statements } }: { source: SourceShort }) {
  return (
    <li>
      <Link href={`/source/${encodeURIComponent(id)}`}>{title}</Link>
      <small>{[T.kinds[kind], year, T.statements(statements), id].filter((part) => part !== null).join(' · ')}</small>
    </li>
  )
}

function Results({
  reply,
  isFirst,
  onPage,
}: {
  reply: SourcesReply
  isFirst: boolean
  onPage: (after: string) => void
}) {
  return (
    <>
      <p role="status">{reply.total === 0 ? T.nothing : T.found(reply.total)}</p>
      <ul className="records">
        {reply.sources.map((source) => (
          <Item key={source.id} source={source} />
        ))}
      </ul>
      <div className="row">
        {!isFirst && (
          <button type="button" onClick={() => onPage('')}>
            {T.first}
          </button>
        )}
        {reply.next !== null && (
          <button type="button" onClick={() => onPage(reply.next ?? '')}>
            {T.next}
          </button>
        )}
      </div>
    </>
  )
}

interface FormProps {
  typed: string
  kind: string
  onType: (typed: string) => void
  onKind: (kind: string) => void
}

function FilterFields({ typed, kind, onType, onKind }: FormProps) {
  const id = useId()
  return (
    <form className="card filter" role="search" onSubmit={(event) => event.preventDefault()}>
      <div className="field">
        <label htmlFor={`${id}-text`}>{T.filter}</label>
        <input id={`${id}-text`} type="search" value={typed} onChange={(event) => onType(event.target.value)} />
      </div>
      <div className="field">
        <label htmlFor={`${id}-kind`}>{T.kind}</label>
        <select id={`${id}-kind`} value={kind} onChange={(event) => onKind(event.target.value)}>
          <option value="">{T.anyKind}</option>
          {Object.entries(T.kinds).map(([one, words]) => (
            <option key={one} value={one}>
              {words}
            </option>
          ))}
        </select>
      </div>
    </form>
  )
}

/** All sources, by words and kind; the filter stands in the address. */
export function SourcesPage() {
  useTitle(T.title)
  const [params, setParams] = useSearchParams()
  const at = (key: string): string => params.get(key) ?? ''
  const [typed, setTyped] = useState(at('text'))
  const settled = useDebounced(typed, WHILE_TYPING_MS)
  const filter: SourceFilter = { text: at('text'), kind: at('kind'), after: at('after') }
  const set = (change: Partial<SourceFilter>) =>
    setParams(
      Object.fromEntries(Object.entries({ ...filter, after: '', ...change }).filter(([, value]) => value !== '')),
      { replace: true },
    )
  useEffect(() => {
    if (settled.trim() !== filter.text) set({ text: settled.trim() })
    // Only a change of what was typed may write into the address.
  }, [settled])
  const found = useSources(filter)
  return (
    <div className="page">
      <h1>{T.title}</h1>
      <p className="lead">{T.lead}</p>
      <FilterFields typed={typed} kind={filter.kind} onType={setTyped} onKind={(kind) => set({ kind })} />
      {found.state === 'failed' && <Failed failure={found} />}
      {(found.state === 'loading' || found.state === 'idle') && <Loading>{T.loading}</Loading>}
      {found.state === 'ready' && (
        <Results reply={found.data} isFirst={filter.after === ''} onPage={(after) => set({ after })} />
      )}
    </div>
  )
}
