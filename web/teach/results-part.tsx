import { useState } from 'react'
import { Choice } from '#web/parts/choice.tsx'
import type { TeachClass } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'
import { ProgressResults } from './progress-results.tsx'
import { SheetResults } from './sheet-results.tsx'
import { SheetSelect } from './sheet-select.tsx'
import type { ClassStore } from './use-classes.ts'

const T = teach.results

interface Props {
  of: TeachClass
  change: ClassStore['changeNow']
}

function FromSheet({ of, change }: Props) {
  const [open, setOpen] = useState(of.quizzes.at(-1)?.id ?? '')
  const quiz = of.quizzes.find(({ id }) => id === open) ?? of.quizzes[0]
  if (!quiz) return <p role="status">{T.noSheet}</p>
  return (
    <>
      <div className="card screen-only">
        <div className="row">
          <SheetSelect quizzes={of.quizzes} open={quiz.id} onOpen={setOpen} />
        </div>
        <p className="remark">{T.hint}</p>
      </div>
      <SheetResults key={quiz.id} of={of} quiz={quiz} change={change} />
    </>
  )
}

/** How a class did: by letters on a sheet, or by progress files. */
export function ResultsPart(props: Props) {
  const [from, setFrom] = useState<keyof typeof T.froms>('sheet')
  return (
    <>
      <section className="card screen-only" aria-label={teach.parts.results}>
        <p>{T.lead}</p>
        <Choice legend={T.from} name="results-from" value={from} choices={T.froms} onChange={setFrom} />
      </section>
      {from === 'sheet' ? <FromSheet {...props} /> : <ProgressResults {...props} />}
    </>
  )
}
