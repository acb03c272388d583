import { useEffect } from 'react'
import { Link } from 'wouter'
import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { useIngredient } from '#web/client/use-ingredient.ts'
import { readable } from '#web/client/use-labels.ts'
import { useTitle } from '#web/client/use-title.ts'
import { exploreHref } from '#web/explorer/address.ts'
import { ClaimsTable } from '#web/parts/claims-table.tsx'
import { Disputes } from '#web/parts/disputes.tsx'
import { GeneralStandIns } from '#web/parts/general-stand-ins.tsx'
import { LimitsAndCautions, Names, Roles, Windows } from '#web/parts/ingredient-facts.tsx'
import { Neighbours } from '#web/parts/neighbours.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { sourceAnchor } from '#web/format/source.ts'
import { text } from '#web/text/text.ts'
import { InEnglish, Said, Spoken } from '#web/parts/spoken.tsx'

const T = text.ingredient

/** The browser looks for the anchor before the record has come: look again when it has. */
function useAnchor(): void {
  useEffect(() => {
    const target = document.getElementById(decodeURIComponent(window.location.hash.slice(1)))
    target?.classList.add('pointed-at')
    target?.scrollIntoView({ block: 'center' })
  }, [])
}

function Sources({ sources }: Pick<IngredientReply, 'sources'>) {
  if (sources.length === 0) return null
  return (
    <section className="card">
      <h2>{T.sources}</h2>
      <ul>
        {sources.map(({ id, title, locator }) => (
          <li key={id} id={sourceAnchor(id)}>
            <Link href={`/source/${encodeURIComponent(id)}`}>{id}</Link>:{' '}
            <Said>
              {title}. <small>{locator}</small>
            </Said>
          </li>
        ))}
      </ul>
      <p>
        <Link href="/sources">{T.allSources}</Link>
      </p>
    </section>
  )
}

function Record({ record }: { record: IngredientReply }) {
  const name = readable(record.inci)
  useTitle(name)
  useAnchor()
  return (
    <div className="page record">
      <h1>{name}</h1>
      <p className="remark">
        {T.tier[record.tier]} · <Link href="/">{T.openBench}</Link> ·{' '}
        <Link href={exploreHref(record.id)}>{text.explorer.around}</Link>
      </p>
      <InEnglish by="GET /api/ingredients/:id" />
      <div className="facts">
        <Roles record={record} />
        <Windows record={record} />
        <LimitsAndCautions record={record} />
        <Names record={record} />
      </div>
      <GeneralStandIns record={record} />
      <Disputes record={record} />
      <section className="card">
        <h2>{T.claims}</h2>
        <ClaimsTable claims={record.claims} contested={record.contested} />
      </section>
      <section className="card">
        <h2>{T.neighbours}</h2>
        <Neighbours neighbours={record.neighbours} />
      </section>
      <Sources sources={record.sources} />
    </div>
  )
}

/** One ingredient, whole. */
export function IngredientPage({ id }: { id: string }) {
  const reply = useIngredient(id)
  if (reply.state === 'ready')
    return (
      <Spoken by="GET /api/ingredients/:id">
        <Record record={reply.data} />
      </Spoken>
    )
  if (reply.state === 'failed' && reply.code === 'unknown-ingredient') {
    return (
      <div className="page">
        <h1>{T.unknown}</h1>
        <p role="alert">{reply.message}</p>
        <p>
          <Link href={`/ingredients?text=${encodeURIComponent(id.replaceAll('-', ' '))}`}>{text.search.title}</Link>
        </p>
      </div>
    )
  }
  return (
    <div className="page">{reply.state === 'failed' ? <Failed failure={reply} /> : <Loading>{T.loading}</Loading>}</div>
  )
}
