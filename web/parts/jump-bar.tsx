import type { Question } from '#web/client/question.ts'
import type { SwapsReply } from '#web/client/use-swaps.ts'
import { text } from '#web/text/text.ts'

/** A bar at the foot of the window that leads to the stand-ins while a line is marked. */
export function JumpBar({ swaps, names }: { swaps: Question<SwapsReply>; names: string }) {
  const found = swaps.state === 'ready' ? swaps.data.swaps.length : 0
  const state =
    swaps.state !== 'ready'
      ? text.swaps.jumpState.loading
      : found > 0
        ? text.swaps.jumpState.some(found)
        : text.swaps.outcome[swaps.data.outcome]
  return (
    <a className="jump" href="#stand-ins">
      <span>
        {text.recipe.missing}: <strong>{names}</strong>
      </span>
      <span>
        {state} · {text.swaps.jump} ↓
      </span>
    </a>
  )
}
