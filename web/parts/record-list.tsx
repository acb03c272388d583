import { Link } from 'wouter'
import type { ShortRecord } from '#web/client/use-ingredients.ts'
import { readable } from '#web/client/use-labels.ts'
import { text } from '#web/text/text.ts'

/** Short records as a list of links. */
export function RecordList({
  records,
  roleLabel,
}: {
  records: readonly ShortRecord[]
  roleLabel: (id: string) => string
}) {
  return (
    <ul className="records">
      {records.map(({ id, inci, names, roles, tier }) => (
        <li key={id}>
          <Link href={`/ingredient/${id}`}>{readable(inci)}</Link>
          {names.length > 0 && <span> {names.slice(0, 3).join(', ')}</span>}
          <small>
            {roles.slice(0, 4).map(roleLabel).join(', ')}
            {tier !== 'full' && ` · ${text.ingredient.tier[tier]}`}
          </small>
        </li>
      ))}
    </ul>
  )
}
