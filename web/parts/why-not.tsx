import { useId } from 'react'
import type { SwapsReply } from '#web/client/use-swaps.ts'
import { text } from '#web/text/en.ts'
import { Findings } from './findings.tsx'
import { WouldWork } from './would-work.tsx'

interface FormProps {
  typed: string
  /** what became of the name; nothing while it is empty */
  remark: string
  onType: (typed: string) => void
}

/** "Why not this one?" for whatever a person types. */
export function WhyNotForm({ typed, remark, onType }: FormProps) {
  const id = useId()
  return (
    <div className="field why-not">
      <label htmlFor={id}>{text.swaps.whyNot}</label>
      <input
        id={id}
        value={typed}
        autoComplete="off"
        spellCheck={false}
        aria-describedby={`${id}-remark`}
        onChange={(event) => onType(event.target.value)}
      />
      <p id={`${id}-remark`} role="status" className="remark">
        {remark}
      </p>
    </div>
  )
}

interface AnswerProps {
  about: NonNullable<SwapsReply['about']>
  labelOf: (id: string) => string
}

/** How the one that was asked about would do here, or why it does not. */
export function WhyNotAnswer({ about, labelOf }: AnswerProps) {
  return (
    <div className="why-not-answer" role="status">
      {about.map(({ ingredient, text: words, swap, refusal }) => (
        <div key={ingredient}>
          <h3>{labelOf(ingredient)}</h3>
          <p>{words}</p>
          {swap && <p>{swap.why}</p>}
          {refusal && <Findings findings={refusal.conflict.filter(({ message }) => message !== words)} fold={false} />}
          {refusal?.wouldWork && <WouldWork ways={refusal.wouldWork} />}
        </div>
      ))}
    </div>
  )
}
