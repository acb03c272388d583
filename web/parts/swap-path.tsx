import { Link } from 'wouter'
import type { Swap } from '#web/client/use-swaps.ts'
import { wayHref } from '#web/explorer/address.ts'
import { claimHref } from '#web/format/claim.ts'
import { text } from '#web/text/text.ts'
import { language } from '#web/text/language.ts'

interface Props {
  path: Swap['path']
  labelOf: (id: string) => string
}

const lowerFirst = (words: string): string => words.charAt(0).toLowerCase() + words.slice(1)

/** A relation within a sentence; its id reads as English. */
function relationWords(relation: string): string {
  const plain = relation.replaceAll('-', ' ')
  return language === 'en' ? plain : lowerFirst(text.ingredient.relations[relation]?.[0] ?? plain)
}

/** The way through the graph: from, relation, to. */
export function SwapPath({ path, labelOf }: Props) {
  if (path.length === 0) return null
  return (
    <div>
      <h4>{text.swaps.path}</h4>
      <ol className="path">
        {path.map(({ from, relation, to, claim }, at) => {
          const href = claim === undefined ? null : claimHref(claim, from)
          const words = relationWords(relation)
          return (
            <li key={`${from}${relation}${to}${at}`}>
              <span>{labelOf(from)}</span> <em>{href ? <Link href={href}>{words}</Link> : words}</em>{' '}
              <span>{labelOf(to)}</span>
            </li>
          )
        })}
      </ol>
      <p>
        <Link href={wayHref(path)}>{text.explorer.way}</Link>
      </p>
    </div>
  )
}
