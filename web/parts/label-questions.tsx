import type { LabelQuestion } from '#web/client/use-label.ts'
import { label as T } from '#web/text/label.ts'
import { Said } from './spoken.tsx'

function Questions({ questions }: { questions: readonly LabelQuestion[] }) {
  return (
    <ul className="label-questions">
      {questions.map(({ text, why, about }) => (
        <li key={`${text}${about.join()}`}>
          <Said>
            {text} <small>{why}</small>
          </Said>
        </li>
      ))}
    </ul>
  )
}

/** What a recipe cannot tell: first what this one raises, then what every label asks. */
export function LabelQuestions({ questions }: { questions: readonly LabelQuestion[] }) {
  const own = questions.filter(({ about }) => about.length > 0)
  const standing = questions.filter(({ about }) => about.length === 0)
  return (
    <section className="card" aria-labelledby="label-questions-title">
      <h2 id="label-questions-title">{T.questions.title}</h2>
      {own.length > 0 && <Questions questions={own} />}
      {standing.length > 0 && (
        <>
          <h3>{T.questions.standing}</h3>
          <Questions questions={standing} />
        </>
      )}
    </section>
  )
}
