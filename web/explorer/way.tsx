import { explorer } from '#web/text/explorer.ts'
import type { WayStep } from './address.ts'
import { relationWords } from './names.ts'
import { readFrom } from './relations.ts'

const T = explorer.way

interface Props {
  way: readonly WayStep[]
  nameOf: (id: string) => string
  onChoose: (id: string) => void
  onLeave: () => void
}

/** The steps of a swap in words, each of which leads to its place. */
export function Way({ way, nameOf, onChoose, onLeave }: Props) {
  return (
    <section className="card" aria-labelledby="way-title">
      <h2 id="way-title">{T.title}</h2>
      <ol className="explorer-way">
        {way.map(({ from, relation: name, to }, at) => {
          const { relation, direction } = readFrom(name)
          return (
            <li key={`${at}${from}${to}`}>
              {nameOf(from)} <em>{relationWords(relation, direction)}</em>{' '}
              <button type="button" className="quiet" onClick={() => onChoose(to)}>
                {nameOf(to)}
              </button>
            </li>
          )
        })}
      </ol>
      <button type="button" onClick={onLeave}>
        {T.leave}
      </button>
    </section>
  )
}
