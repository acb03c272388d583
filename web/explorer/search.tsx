import { useId, useState } from 'react'
import type { FormEvent } from 'react'
import { useDebounced } from '#web/client/use-debounced.ts'
import { useIngredients } from '#web/client/use-ingredients.ts'
import { readable } from '#web/client/use-labels.ts'
import { useResolve } from '#web/client/use-resolve.ts'
import { useRoles } from '#web/client/use-roles.ts'
import { explorer } from '#web/text/explorer.ts'

const T = explorer.search
const WHILE_TYPING_MS = 250
const AT_MOST = 8

interface Hit {
  id: string
  name: string
  more: string
}

/** Roles and ingredients whose names fit; what a person most likely meant comes first. */
function useHits(typed: string): { hits: Hit[]; isLoading: boolean } {
  const words = typed.trim()
  const isAsked = words.length > 1
  const found = useIngredients({ text: isAsked ? words : 'aqua', role: '', class: '', after: '' })
  const meant = useResolve(isAsked ? [words] : [])
  const roles = useRoles()
  if (!isAsked) return { hits: [], isLoading: false }
  const isMeant = meant.state === 'ready' ? meant.data.get(words)?.ingredient : undefined
  const jobs = (roles.state === 'ready' ? roles.data.roles : [])
    .filter(({ label }) => label.toLowerCase().includes(words.toLowerCase()))
    .map(({ id, label }) => ({ id: `role:${id}`, name: label, more: T.role }))
  const things = (found.state === 'ready' && !found.old ? found.data.ingredients : [])
    .map(({ id, inci, names }) => ({ id, name: readable(inci), more: names.slice(0, 3).join(', ') }))
    .sort((a, b) => Number(b.id === isMeant) - Number(a.id === isMeant))
  const isLoading = found.state === 'loading' || (found.state === 'ready' && found.old)
  return { hits: [...jobs.slice(0, 4), ...things].slice(0, AT_MOST), isLoading }
}

/** Search by name; each match puts itself into the middle. */
export function Search({ onFind }: { onFind: (id: string) => void }) {
  const id = useId()
  const [typed, setTyped] = useState('')
  const settled = useDebounced(typed, WHILE_TYPING_MS)
  const { hits, isLoading } = useHits(settled)
  const isSettled = settled === typed && !isLoading
  const find = (hit: Hit | undefined) => {
    if (!hit) return
    setTyped('')
    onFind(hit.id)
  }
  const onSubmit = (event: FormEvent) => {
    event.preventDefault()
    if (isSettled) find(hits[0])
  }
  return (
    <form className="explorer-search" role="search" onSubmit={onSubmit}>
      <div className="field">
        <label htmlFor={id}>{T.label}</label>
        <input
          id={id}
          type="search"
          autoComplete="off"
          placeholder={T.hint}
          value={typed}
          maxLength={200}
          onChange={(event) => setTyped(event.target.value)}
        />
      </div>
      <p role="status" className="remark">
        {settled.trim().length < 2 ? '' : isSettled ? T.found(hits.length) : T.loading}
      </p>
      {hits.length > 0 && settled !== '' && (
        <ul className="explorer-hits" aria-label={T.results}>
          {hits.map((hit) => (
            <li key={hit.id}>
              <button type="button" onClick={() => find(hit)}>
                {hit.name} {hit.more !== '' && <small>{hit.more}</small>}
              </button>
            </li>
          ))}
        </ul>
      )}
    </form>
  )
}
