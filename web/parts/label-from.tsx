import { Link } from 'wouter'

/** Lines that bring something, each a link to its record. */
export function LabelFrom({ ids, labelOf }: { ids: readonly string[]; labelOf: (id: string) => string }) {
  return ids.map((id, at) => (
    <span key={id}>
      {at > 0 && ', '}
      <Link href={`/ingredient/${id}`}>{labelOf(id)}</Link>
    </span>
  ))
}
