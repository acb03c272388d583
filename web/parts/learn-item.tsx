import { useState } from 'react'
import type { FormEvent } from 'react'
import { CallError } from '#web/client/call.ts'
import { useLearnAnswer } from '#web/client/use-learn.ts'
import type { LearnItem } from '#web/client/use-learn.ts'
import { learn as T } from '#web/text/learn.ts'
import { text } from '#web/text/text.ts'
import { LearnFeedback } from './learn-feedback.tsx'
import { LearnRecipe } from './learn-recipe.tsx'
import { Said } from './spoken.tsx'

interface Props {
  item: LearnItem
  place: string
  onAnswered: (isRight: boolean) => void
  /** the graph does not make this item any more */
  onGone: () => void
  onNext: () => void
}

const isGone = (error: Error | null): boolean => error instanceof CallError && error.code === 'unknown-item'

/** What stands below a question whose answer could not be judged. */
function Unjudged({ error, onNext }: { error: Error; onNext: () => void }) {
  return (
    <div role="alert" className="state failed">
      <p>{isGone(error) ? T.changed : text.app.failed(error.message.replace(/\.$/, ''))}</p>
      {isGone(error) && (
        <button type="button" onClick={onNext}>
          {T.next}
        </button>
      )}
    </div>
  )
}

/** One question: choose, answer, read why. */
export function LearnItemCard({ item, place, onAnswered, onGone, onNext }: Props) {
  const [choice, setChoice] = useState<string | null>(null)
  const answer = useLearnAnswer()
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (choice === null || answer.isPending || answer.data) return
    answer.mutate(
      { item, choice },
      { onSuccess: ({ right }) => onAnswered(right), onError: (error) => isGone(error) && onGone() },
    )
  }
  return (
    <article className="card learn-item">
      <p className="remark">
        {place}, {T.difficulty[item.difficulty]}
      </p>
      <h2>
        <Said>{item.question}</Said>
      </h2>
      {item.recipe && <LearnRecipe recipe={item.recipe} />}
      <form onSubmit={submit}>
        <fieldset disabled={answer.data !== undefined}>
          <legend>{T.choices}</legend>
          {item.choices.map(({ id, text: words }) => (
            <label key={id} className="tick learn-choice" data-key={answer.data?.key === id ? 'yes' : undefined}>
              <input
                type="radio"
                name={`choice-${item.id}`}
                value={id}
                checked={choice === id}
                onChange={() => setChoice(id)}
              />
              <Said>{words}</Said>
            </label>
          ))}
        </fieldset>
        {!answer.data && (
          <button type="submit" className="main" disabled={choice === null || answer.isPending}>
            {answer.isPending ? T.judging : T.answer}
          </button>
        )}
      </form>
      {answer.isError && <Unjudged error={answer.error} onNext={onNext} />}
      {answer.data && <LearnFeedback item={item} answer={answer.data} onNext={onNext} />}
    </article>
  )
}
