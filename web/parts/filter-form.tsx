import { useId } from 'react'
import type { Filter } from '#web/client/use-ingredients.ts'
import { plainLabel } from '#web/client/use-labels.ts'
import type { RoleShort } from '#web/client/use-roles.ts'
import { text } from '#web/text/text.ts'

interface Props {
  filter: Filter
  typed: string
  onType: (typed: string) => void
  onChange: (change: Partial<Filter>) => void
  roles: readonly RoleShort[]
}

const T = text.search
const KINDS = Object.keys(T.kinds)

/** Name, role and kind to search by. */
export function FilterForm({ filter, typed, onType, onChange, roles }: Props) {
  const id = useId()
  const kinds = filter.class === '' || KINDS.includes(filter.class) ? KINDS : [filter.class, ...KINDS]
  return (
    <form className="card filter" role="search" onSubmit={(event) => event.preventDefault()}>
      <div className="field">
        <label htmlFor={`${id}-text`}>{T.text}</label>
        <input id={`${id}-text`} type="search" value={typed} onChange={(event) => onType(event.target.value)} />
      </div>
      <div className="field">
        <label htmlFor={`${id}-role`}>{T.role}</label>
        <select id={`${id}-role`} value={filter.role} onChange={(event) => onChange({ role: event.target.value })}>
          <option value="">{T.anyRole}</option>
          {roles.map(({ id: role, label }) => (
            <option key={role} value={role}>
              {label}
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor={`${id}-kind`}>{T.kind}</label>
        <select id={`${id}-kind`} value={filter.class} onChange={(event) => onChange({ class: event.target.value })}>
          <option value="">{T.anyKind}</option>
          {kinds.map((kind) => (
            <option key={kind} value={kind} {...(T.kinds[kind] === undefined && { lang: 'en' })}>
              {T.kinds[kind] ?? plainLabel(kind)}
            </option>
          ))}
        </select>
      </div>
    </form>
  )
}
