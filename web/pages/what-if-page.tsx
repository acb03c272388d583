import { useState } from 'react'
import { Link } from 'wouter'
import { useRecipeAnswers } from '#web/client/use-recipe-answers.ts'
import { useLabels } from '#web/client/use-labels.ts'
import { useTitle } from '#web/client/use-title.ts'
import { useWhatIf } from '#web/client/use-what-if.ts'
import { FormulaTable } from '#web/parts/formula-table.tsx'
import { useBench } from '#web/state/use-bench.ts'
import { useRecipeLink } from '#web/state/use-recipe-link.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { text } from '#web/text/text.ts'
import { whatIf as T } from '#web/text/what-if.ts'
import { ChangeForm } from '#web/what-if/change-form.tsx'
import { Guess } from '#web/what-if/guess.tsx'
import { Outcome } from '#web/what-if/outcome.tsx'
import '#web/styles/learn.css'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

/** Change, guess, look; then from the start. */
function Trial({ formula }: { formula: Formula }) {
  const trial = useWhatIf()
  const [guess, setGuess] = useState<string[] | null>(null)
  const after = trial.data?.after.lines ?? []
  const labelOf = useLabels([...new Set([...formula.lines, ...after].map(({ ingredient }) => ingredient))])
  const again = () => {
    setGuess(null)
    trial.reset()
  }
  return (
    <>
      {!trial.data && (
        <ChangeForm
          formula={formula}
          labelOf={labelOf}
          isBusy={trial.isPending}
          onAsk={(change) => trial.mutate({ formula, change })}
        />
      )}
      {trial.error && (
        <p role="alert" className="state failed">
          {text.app.failed(trial.error.message.replace(/\.$/, ''))}
        </p>
      )}
      {trial.data && guess === null && <Guess reply={trial.data} onLook={setGuess} />}
      {trial.data && guess !== null && (
        <Outcome before={formula} reply={trial.data} guess={guess} labelOf={labelOf} onAgain={again} />
      )}
      {guess === null && (
        <section className="card">
          <h2>{T.recipe}</h2>
          <FormulaTable formula={formula} fresh={[]} labelOf={labelOf} />
        </section>
      )}
    </>
  )
}

/** The recipe on the bench with one thing changed: the learner says first what will happen. */
export function WhatIfPage() {
  const { bench, change } = useBench()
  useRecipeLink(bench, change, '/what-if')
  const { formula, lacking } = useRecipeAnswers(bench)
  const title = bench.title === '' ? T.title : T.of(bench.title)
  useTitle(title)
  return (
    <div className="page">
      <div className="bench-head">
        <h1>{title}</h1>
        <Link href="/" className="button">
          {T.back}
        </Link>
      </div>
      <p className="lead">{T.lead}</p>
      {bench.lines.length === 0 && <p role="status">{T.empty}</p>}
      {bench.lines.length > 0 && lacking !== null && (
        <p role="status">
          {T.lacking} {text.check.lacking[lacking]}
        </p>
      )}
      {formula && (
        <Spoken by="POST /api/learn/what-if">
          <InEnglish by="POST /api/learn/what-if" />
          <Trial formula={formula} />
        </Spoken>
      )}
    </div>
  )
}
