import type { Refusal } from '#web/client/use-swaps.ts'
import { text } from '#web/text/text.ts'
import { Said } from './spoken.tsx'

/** With which single change a refused stand-in would hold. */
export function WouldWork({ ways }: { ways: NonNullable<Refusal['wouldWork']> }) {
  return (
    <p className="would-work">
      {text.swaps.wouldWork}: <Said>{ways.map((way) => way.text).join('; ')}</Said>.
    </p>
  )
}
