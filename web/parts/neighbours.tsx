import { Link } from 'wouter'
import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { readable } from '#web/client/use-labels.ts'
import { severityWords } from '#web/format/code-words.ts'
import { rangeText } from '#web/format/number.ts'
import { isNoSource } from '#web/format/source.ts'
import { text } from '#web/text/text.ts'
import { SourceLinks } from './source-links.tsx'
import { Said } from './spoken.tsx'

type Neighbour = IngredientReply['neighbours'][number]

function hrefOf(node: string): string | null {
  const [kind, id] = node.includes(':') ? node.split(':') : ['ingredient', node]
  if (kind === 'ingredient') return `/ingredient/${id}`
  if (kind === 'role') return `/role/${id}`
  return kind === 'class' ? `/ingredients?class=${id}` : null
}

/** A relation as words, read from this ingredient's side. */
function relationWords(neighbour: Neighbour | undefined): string {
  const relation = neighbour?.relation ?? ''
  const [out, back] = text.ingredient.relations[relation] ?? [relation, relation]
  return neighbour?.direction === 'in' ? back : out
}

function Item({ neighbour }: { neighbour: Neighbour }) {
  const { node, label, says, severity, level_percent, access, source } = neighbour
  const href = hrefOf(node)
  const name = label.replaceAll('(and)', '') === label.replaceAll('(and)', '').toUpperCase() ? readable(label) : label
  const level = level_percent ? rangeText(level_percent) : ''
  return (
    <li>
      <Said>{href ? <Link href={href}>{name}</Link> : name}</Said>
      {severity !== undefined && <em> {severityWords(severity)}</em>}
      {level !== '' && <small> {text.ingredient.level(level)}</small>}
      {says !== undefined && says !== '' && (
        <>
          {' '}
          – <Said>{says}</Said>
        </>
      )}
      {access !== undefined && (
        <small>
          {' '}
          ({text.ingredient.accesses[access]}
          {source !== undefined && !isNoSource(source) && (
            <>
              , <SourceLinks ids={source} />
            </>
          )}
          )
        </small>
      )}
    </li>
  )
}

/** Neighbours in the graph, grouped by relation and direction. */
export function Neighbours({ neighbours }: { neighbours: readonly Neighbour[] }) {
  const groups = new Map<string, Neighbour[]>()
  for (const neighbour of neighbours) {
    const key = `${neighbour.relation} ${neighbour.direction}`
    groups.set(key, [...(groups.get(key) ?? []), neighbour])
  }
  if (groups.size === 0) return <p>{text.ingredient.noNeighbours}</p>
  return (
    <div className="neighbours">
      {[...groups].map(([key, members]) => (
        <details key={key} open={members.length <= 8}>
          <summary>
            {relationWords(members[0])} ({members.length})
          </summary>
          <ul>
            {members.map((neighbour, at) => (
              <Item key={`${neighbour.node}${at}`} neighbour={neighbour} />
            ))}
          </ul>
        </details>
      ))}
    </div>
  )
}
