import { Link } from 'wouter'
import { isNoSource, sourceWords } from '#web/format/source.ts'

const partsOf = (ids: string): string[] => ids.split(/\s*;\s*/).filter((id) => id !== '')

/** Sources as links to what they are; practice and memory are said in words. Several stand parted by semicolons. */
export function SourceLinks({ ids }: { ids: string | readonly string[] }) {
  const all = typeof ids === 'string' ? partsOf(ids) : ids.flatMap(partsOf)
  return all.map((id, at) => (
    <span key={id}>
      {at > 0 && '; '}
      {isNoSource(id) ? sourceWords(id) : <Link href={`/source/${encodeURIComponent(id)}`}>{id}</Link>}
    </span>
  ))
}
