import type { ReactNode } from 'react'
import type { Question } from '#web/client/question.ts'
import type { Swap, SwapsReply } from '#web/client/use-swaps.ts'
import { text } from '#web/text/text.ts'
import { Failed, Loading } from './states.tsx'
import type { Before } from './swap-card.tsx'
import { SwapsReplyView } from './swaps-reply.tsx'
import { InEnglish, Spoken } from './spoken.tsx'

interface Props {
  swaps: Question<SwapsReply>
  /** names of the missing lines */
  missing: readonly string[]
  /** false while the recipe cannot be checked */
  canAsk: boolean
  /** the recipe as it is with its check; null while that is not known */
  before: Before | null
  known: ReadonlyMap<string, string>
  onUse: (formula: NonNullable<Swap['formula']>, name: string) => void
  weights: Readonly<Record<string, number>>
  onWeight: (criterion: string, factor: number) => void
  children: ReactNode
}

function Answer({ swaps, before, known, onUse, missing, weights, onWeight }: Omit<Props, 'children' | 'canAsk'>) {
  if (swaps.state === 'failed') return <Failed failure={swaps} />
  if (swaps.state !== 'ready') return <Loading>{text.swaps.loading}</Loading>
  return (
    <>
      {swaps.old && <Loading>{text.swaps.old}</Loading>}
      <div className={swaps.old ? 'dim' : undefined}>
        <InEnglish by="POST /api/swaps" />
        <Spoken by="POST /api/swaps">
          <SwapsReplyView
            key={missing.join()}
            reply={swaps.data}
            isOld={swaps.old}
            before={before}
            known={known}
            weights={weights}
            onWeight={onWeight}
            {...(!swaps.old && { onUse })}
          />
        </Spoken>
      </div>
    </>
  )
}

/** Stand-ins for the lines marked as missing, below the wishes. */
export function SwapsPanel({ children, canAsk, ...answer }: Props) {
  const { missing } = answer
  return (
    <section className="card stand-ins" id="stand-ins" aria-labelledby="swaps-title" tabIndex={-1}>
      <h2 id="swaps-title">{missing.length > 0 ? text.swaps.titleFor(missing.join(', ')) : text.swaps.title}</h2>
      {children}
      {missing.length === 0 && <p className="lead">{text.swaps.mark}</p>}
      {missing.length > 0 && !canAsk && <p role="status">{text.swaps.waits}</p>}
      {missing.length > 0 && canAsk && <Answer {...answer} />}
    </section>
  )
}
