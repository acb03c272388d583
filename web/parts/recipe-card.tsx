import { useId } from 'react'
import type { CheckReply } from '#web/client/use-check.ts'
import type { BenchAnswers } from '#web/client/use-bench-answers.ts'
import { addText } from '#web/state/from-text.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { LineAdd } from './line-add.tsx'
import { PasteBox } from './paste-box.tsx'
import { PrintLine } from './print-line.tsx'
import { RecipeTable } from './recipe-table.tsx'

interface Props {
  store: BenchStore
  standings: BenchAnswers['standings']
  check: CheckReply | null
}

/** The recipe with its lines, a way to add some, and the notes of the text. */
export function RecipeCard({ store, standings, check }: Props) {
  const notesId = useId()
  const { bench, change } = store
  const { basis, total } = bench.said
  return (
    <section className="card recipe-card" aria-labelledby="recipe-title">
      <h2 id="recipe-title" tabIndex={-1}>
        {text.recipe.title}
      </h2>
      <PrintLine settings={bench.settings} />
      {basis !== 'percent' && total !== null && <p className="remark">{text.recipe.basis[basis](total)}</p>}
      <RecipeTable bench={bench} standings={standings} check={check} change={change} />
      <LineAdd change={change} />
      <details className="add">
        <summary>{text.paste.addTitle}</summary>
        <PasteBox
          place="lines"
          action={text.paste.add}
          rows={3}
          onRead={(typed) => change((now) => addText(now, typed))}
        />
      </details>
      <details className="notes" open={bench.notes === '' ? undefined : true}>
        <summary>{text.recipe.notes}</summary>
        <label htmlFor={notesId} className="hidden">
          {text.recipe.notes}
        </label>
        <textarea
          id={notesId}
          rows={Math.min(10, Math.max(2, bench.notes.split('\n').length))}
          value={bench.notes}
          aria-describedby={`${notesId}-hint`}
          onChange={(event) => change((now) => ({ ...now, notes: event.target.value }), 'notes')}
        />
        <small id={`${notesId}-hint`}>{text.recipe.notesHint}</small>
      </details>
    </section>
  )
}
