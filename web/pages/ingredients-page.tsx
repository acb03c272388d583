import { useEffect, useId, useState } from 'react'
import { useSearchParams } from 'wouter'
import { useDebounced } from '#web/client/use-debounced.ts'
import { useIngredients } from '#web/client/use-ingredients.ts'
import type { Filter, IngredientsReply } from '#web/client/use-ingredients.ts'
import { plainLabel } from '#web/client/use-labels.ts'
import { useRoles } from '#web/client/use-roles.ts'
import { useTitle } from '#web/client/use-title.ts'
import { FilterForm } from '#web/parts/filter-form.tsx'
import { RecordList } from '#web/parts/record-list.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { text } from '#web/text/text.ts'

const WHILE_TYPING_MS = 250
const T = text.search

interface ResultsProps {
  reply: IngredientsReply
  isFirst: boolean
  roleLabel: (id: string) => string
  onPage: (after: string) => void
}

function Results({ reply, isFirst, roleLabel, onPage }: ResultsProps) {
  return (
    <>
      <p role="status">{reply.total === 0 ? T.none : T.found(reply.total)}</p>
      <RecordList records={reply.ingredients} roleLabel={roleLabel} />
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

/** Search by name, role and kind. The filter stands in the address, so that it can be linked to. */
export function IngredientsPage() {
  useTitle(T.title)
  const titleId = useId()
  const [params, setParams] = useSearchParams()
  const at = (key: string): string => params.get(key) ?? ''
  const [typed, setTyped] = useState(at('text'))
  const settled = useDebounced(typed, WHILE_TYPING_MS)
  const filter: Filter = { text: at('text'), role: at('role'), class: at('class'), after: at('after') }
  const set = (change: Partial<Filter>) =>
    setParams(
      Object.fromEntries(Object.entries({ ...filter, after: '', ...change }).filter(([, value]) => value !== '')),
      { replace: true },
    )
  useEffect(() => {
    if (settled.trim() !== filter.text) set({ text: settled.trim() })
    // Only a change of what was typed may write into the address.
  }, [settled])
  const found = useIngredients(filter)
  const roles = useRoles()
  const roleList = roles.state === 'ready' ? roles.data.roles : []
  const roleLabel = (id: string) => roleList.find((role) => role.id === id)?.label ?? plainLabel(id)
  return (
    <div className="page">
      <h1 id={titleId}>{T.title}</h1>
      <FilterForm filter={filter} typed={typed} onType={setTyped} onChange={set} roles={roleList} />
      <section aria-label={T.results}>
        {found.state === 'failed' && <Failed failure={found} />}
        {(found.state === 'loading' || found.state === 'idle') && <Loading>{T.loading}</Loading>}
        {found.state === 'ready' && (
          <Results
            reply={found.data}
            isFirst={filter.after === ''}
            roleLabel={roleLabel}
            onPage={(after) => set({ after })}
          />
        )}
      </section>
    </div>
  )
}
