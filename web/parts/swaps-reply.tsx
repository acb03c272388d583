import { useState } from 'react'
import { useLabels } from '#web/client/use-labels.ts'
import type { Swap, SwapsReply } from '#web/client/use-swaps.ts'
import { idsIn } from '#web/state/swaps-body.ts'
import { text } from '#web/text/text.ts'
import { GiveUp } from './give-up.tsx'
import { RefusedList } from './refused-list.tsx'
import { SwapCard } from './swap-card.tsx'
import type { Before } from './swap-card.tsx'
import { keyOf, useOrderRemark } from './use-order-remark.ts'
import { WhyNotAnswer } from './why-not.tsx'
import { Said } from './spoken.tsx'

interface Props {
  reply: SwapsReply
  /** true while the reply belongs to the question before */
  isOld?: boolean
  /** the recipe as it is with its check; null where there is none */
  before: Before | null
  known: ReadonlyMap<string, string>
  onUse?: (formula: NonNullable<Swap['formula']>, name: string) => void
  weights?: Readonly<Record<string, number>>
  onWeight?: (criterion: string, factor: number) => void
}

const AT_FIRST = 4

function Outcome({ reply }: { reply: SwapsReply }) {
  const { outcome, why, swaps } = reply
  return (
    <div className="outcome" data-outcome={outcome} role="status">
      <p>
        <strong>{outcome === 'swaps' ? text.swaps.found(swaps.length) : text.swaps.outcome[outcome]}</strong>
      </p>
      {text.swaps.outcomeMore[outcome] !== '' && <p>{text.swaps.outcomeMore[outcome]}</p>}
      {why !== '' && (
        <p>
          <Said>{why}</Said>
        </p>
      )}
    </div>
  )
}

/** The whole answer: outcome, stand-ins in order, refused ones, and whether the line can be left out. */
export function SwapsReplyView({ reply, isOld = false, before, known, onUse, weights, onWeight }: Props) {
  const [shown, setShown] = useState(AT_FIRST)
  const labelOf = useLabels(idsIn(reply), known)
  const { swaps, refused, leaveOut } = reply
  const moved = useOrderRemark({ swaps, isOld, weights, labelOf })
  const toCheck = [...new Set(swaps.flatMap((swap) => swap.toCheck ?? []))]
  return (
    <div className="swaps">
      {reply.about && <WhyNotAnswer about={reply.about} labelOf={labelOf} />}
      <Outcome reply={reply} />
      <p role="status" className={moved === '' ? 'hidden' : 'moved'}>
        {moved}
      </p>
      {reply.giveUp && <GiveUp ways={reply.giveUp} labelOf={labelOf} />}
      {toCheck.length > 0 && (
        <>
          <p>{text.swaps.toCheck}:</p>
          <ul>
            {toCheck.map((one) => (
              <li key={one}>
                <Said>{one}</Said>
              </li>
            ))}
          </ul>
        </>
      )}
      <div className="swap-list">
        {swaps.slice(0, shown).map((swap) => (
          <SwapCard
            key={keyOf(swap)}
            swap={swap}
            before={before}
            isOneOfSeveral={reply.roles.length > 1}
            labelOf={labelOf}
            {...(onUse && { onUse })}
            {...(weights && { weights })}
            {...(onWeight && { onWeight })}
          />
        ))}
      </div>
      {swaps.length > shown && (
        <button type="button" onClick={() => setShown(swaps.length)}>
          {text.swaps.more(swaps.length - shown)}
        </button>
      )}
      <div className="leave-out" data-verdict={leaveOut.verdict}>
        <h3>{text.swaps.leaveOut}</h3>
        <p>
          <strong>{text.swaps.leaveOutWords[leaveOut.verdict]}.</strong> <Said>{leaveOut.why}</Said>
        </p>
      </div>
      <RefusedList refused={refused} labelOf={labelOf} />
    </div>
  )
}
