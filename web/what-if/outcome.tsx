import { useEffect, useRef } from 'react'
import type { WhatIfReply } from '#web/client/use-what-if.ts'
import { Findings } from '#web/parts/findings.tsx'
import { FormulaTable } from '#web/parts/formula-table.tsx'
import { freshLines } from '#web/state/fresh-lines.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { whatIf as T } from '#web/text/what-if.ts'
import { Said } from '#web/parts/spoken.tsx'

type Told = keyof (typeof T)['told']

function toldOf(id: string, guess: readonly string[], right: readonly string[]): Told {
  if (guess.includes(id)) return right.includes(id) ? 'hit' : 'false'
  return right.includes(id) ? 'missed' : 'quiet'
}

function verdictOf(told: readonly Told[]): string {
  const isRight = !told.includes('missed') && !told.includes('false')
  if (isRight) return T.right
  return told.includes('hit') ? T.partly : T.wrong
}

interface Props {
  before: Formula
  reply: WhatIfReply
  guess: readonly string[]
  labelOf: (id: string) => string
  onAgain: () => void
}

/** What was expected beside what the check says. */
export function Outcome({ before, reply, guess, labelOf, onAgain }: Props) {
  const again = useRef<HTMLButtonElement>(null)
  useEffect(() => again.current?.focus(), [])
  const rows = reply.choices.map((choice) => ({ ...choice, told: toldOf(choice.id, guess, reply.right) }))
  return (
    <section className="card what-if-outcome">
      <div role="status">
        <p>
          <strong>{verdictOf(rows.map(({ told }) => told))}</strong>
        </p>
        <ul>
          {rows
            .filter(({ told }) => told !== 'quiet')
            .map(({ id, text, told }) => (
              <li key={id} data-told={told}>
                <Said>{text}</Said>: {T.told[told]}
              </li>
            ))}
        </ul>
      </div>
      <button type="button" className="main" ref={again} onClick={onAgain}>
        {T.again}
      </button>
      <h2>{T.news}</h2>
      {reply.news.length === 0 ? <p>{T.noNews}</p> : <Findings findings={reply.news} />}
      {reply.gone.length > 0 && (
        <>
          <h2>{T.gone}</h2>
          <Findings findings={reply.gone} />
        </>
      )}
      <h2>{T.after}</h2>
      <FormulaTable formula={reply.after} fresh={freshLines(reply.after, before)} labelOf={labelOf} />
    </section>
  )
}
