import { Link } from 'wouter'
import { readable } from '#web/client/use-labels.ts'
import type { SourceUse } from '#web/client/use-sources.ts'
import { claimAnchor, claimText } from '#web/format/claim.ts'
import { termWords } from '#web/format/term.ts'
import { sources as T } from '#web/text/sources.ts'
import { text } from '#web/text/text.ts'
import { Said } from './spoken.tsx'
import { dayText } from '#web/format/day.ts'

function Says({ use: { claim, text: words, on } }: { use: SourceUse }) {
  if (on !== 'fact') return <Said>{words}</Said>
  if (!claim) return <>{termWords(words)}</>
  return (
    <>
      {termWords(words)}: <b>{claimText(claim)}</b>
      {claim.conditions !== undefined && (
        <small>
          {' '}
          <Said>{claim.conditions}</Said>
        </small>
      )}
    </>
  )
}

const hrefOf = ({ ingredient, claim }: SourceUse): string | null =>
  ingredient === null ? null : `/ingredient/${ingredient}${claim ? `#${claimAnchor(claim.id)}` : ''}`

function Item({ use }: { use: SourceUse }) {
  const href = hrefOf(use)
  const label = use.ingredient === null ? use.label : readable(use.label)
  return (
    <li>
      {href ? <Link href={href}>{label}</Link> : <strong>{label}</strong>} – <Says use={use} />{' '}
      <small>
        {[
          T.on[use.on],
          text.ingredient.kinds[use.kind],
          use.locator,
          text.ingredient.accesses[use.access],
          dayText(use.date),
          use.claim ? `${use.claim.evidence.label} (${use.claim.evidence.code})` : '',
        ]
          .filter((part) => part !== '')
          .join(' · ')}
      </small>
    </li>
  )
}

/** What rests on a source, each statement with its place there and how it was seen. */
export function SourceUses({ uses }: { uses: readonly SourceUse[] }) {
  return (
    <ul className="uses" aria-label={T.list}>
      {uses.map((use, at) => (
        <Item key={`${use.claim?.id ?? use.text}${at}`} use={use} />
      ))}
    </ul>
  )
}
