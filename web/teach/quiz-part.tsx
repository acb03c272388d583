import { useState } from 'react'
import { Failed, Loading } from '#web/parts/states.tsx'
import { announce } from '#web/parts/announcer.tsx'
import { focusSoon } from '#web/parts/focus-soon.ts'
import { freshId } from '#web/state/teach.ts'
import type { Quiz, TeachClass } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'
import { QuizForm } from './quiz-form.tsx'
import type { QuizSettings } from './quiz-form.tsx'
import { QuizKeyPage } from './quiz-key.tsx'
import { QuizSheet } from './quiz-sheet.tsx'
import { SheetSelect } from './sheet-select.tsx'
import type { ClassStore } from './use-classes.ts'
import { useMarkedQuiz } from './use-marked-quiz.ts'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

const T = teach.quiz

interface Props {
  of: TeachClass
  change: ClassStore['changeNow']
}

function Sheet({ of, quiz, change }: Props & { quiz: Quiz }) {
  const { reply, key, changed, takeNow } = useMarkedQuiz(quiz, change)
  if (reply.state === 'failed') return <Failed failure={reply} />
  if (reply.state !== 'ready') return <Loading>{T.loading}</Loading>
  const { items, graphVersion } = reply.data
  if (items.length === 0) return <p role="status">{T.none}</p>
  const isReady = key.done === items.length
  return (
    <>
      <div className="row screen-only">
        <p role="status">{isReady ? T.ready : T.working(key.done, items.length)}</p>
        <button type="button" className="main" disabled={!isReady} onClick={() => window.print()}>
          {teach.print}
        </button>
        {key.failed.includes(true) && (
          <button type="button" onClick={key.retry}>
            {T.again}
          </button>
        )}
      </div>
      {items.length < quiz.count && <p className="screen-only">{T.fewer(items.length, quiz.count)}</p>}
      {changed.length > 0 && (
        <div role="alert" className="state failed screen-only">
          <p>{T.changed(changed.map((at) => at + 1).join(', '))}</p>
          <button type="button" onClick={takeNow}>
            {T.takeNow}
          </button>
        </div>
      )}
      <Spoken by="POST /api/learn/items">
        <InEnglish by="POST /api/learn/items" />
        <QuizSheet of={of} quiz={quiz} items={items} graphVersion={graphVersion} />
        <QuizKeyPage of={of} quiz={quiz} items={items} quizKey={key} graphVersion={graphVersion} />
      </Spoken>
    </>
  )
}

const isSame = (a: QuizSettings, b: QuizSettings): boolean =>
  a.seed === b.seed && a.count === b.count && a.kinds.join() === b.kinds.join() && a.roles.join() === b.roles.join()

/** Sheets of questions for paper: made from a seed, kept with the class, printed with their key. */
export function QuizPart({ of, change }: Props) {
  const [open, setOpen] = useState(of.quizzes.at(-1)?.id ?? null)
  const quiz = of.quizzes.find(({ id }) => id === open) ?? null
  const make = (settings: QuizSettings) => {
    const same = of.quizzes.find((one) => isSame(one, settings))
    if (same) announce(T.same)
    const made = same ?? { ...settings, id: freshId('q', of.quizzes), made: null, students: [] }
    if (!same) change((now) => ({ ...now, quizzes: [...now.quizzes, made] }))
    setOpen(made.id)
    focusSoon('.sheet-select')
  }
  const remove = (id: string) => {
    change((now) => ({ ...now, quizzes: now.quizzes.filter((one) => one.id !== id) }))
    setOpen(null)
    announce(T.removed)
    focusSoon('.sheet-select')
  }
  return (
    <>
      <section className="card screen-only" aria-label={teach.parts.quiz}>
        <p>{T.lead}</p>
        <div className="row">
          <SheetSelect quizzes={of.quizzes} open={quiz?.id ?? ''} onOpen={(id) => setOpen(id || null)} canMake />
          {quiz && quiz.students.length === 0 && (
            <button type="button" className="quiet" onClick={() => remove(quiz.id)}>
              {T.remove}
            </button>
          )}
        </div>
        {!quiz && <QuizForm roles={of.roles} onMake={make} />}
      </section>
      {quiz && <Sheet key={quiz.id} of={of} quiz={quiz} change={change} />}
    </>
  )
}
