import type { SwapsReply } from '#web/client/use-swaps.ts'
import { text } from '#web/text/text.ts'
import { Combobox } from './combobox.tsx'
import { Findings } from './findings.tsx'
import type { Other } from './use-other.ts'
import { WouldWork } from './would-work.tsx'
import { Said } from './spoken.tsx'

/** "Why not this one?" for whatever a person types or picks. */
export function WhyNotForm({ other }: { other: Other }) {
  return (
    <div className="why-not">
      <Combobox
        label={text.swaps.whyNot}
        typed={other.typed}
        onType={other.onType}
        onPick={other.onPick}
        onText={other.onText}
      />
      <p role="status" className="remark">
        {other.remark}
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
          <p>
            <Said>{words}</Said>
          </p>
          {swap && (
            <p>
              <Said>{swap.why}</Said>
            </p>
          )}
          {refusal && <Findings findings={refusal.conflict.filter(({ message }) => message !== words)} fold={false} />}
          {refusal?.wouldWork && <WouldWork ways={refusal.wouldWork} />}
        </div>
      ))}
    </div>
  )
}
