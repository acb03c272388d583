import type { Refusal } from '#web/client/use-swaps.ts'
import { text } from '#web/text/text.ts'
import { Findings } from './findings.tsx'
import { WouldWork } from './would-work.tsx'
import { Said } from './spoken.tsx'

interface Props {
  refused: readonly Refusal[]
  labelOf: (id: string) => string
}

/** What looked right and is not, each with its conflict. */
export function RefusedList({ refused, labelOf }: Props) {
  if (refused.length === 0) return null
  return (
    <details className="refused">
      <summary>
        {text.swaps.refused} ({refused.length})
      </summary>
      <p>{text.swaps.refusedMore}</p>
      <ul>
        {refused.map(({ lines, message, conflict, wouldWork }) => {
          const names = lines.map(({ ingredient }) => labelOf(ingredient)).join(' + ')
          return (
            <li key={names}>
              <strong>{names}</strong>
              {conflict.every((finding) => finding.message !== message) && (
                <p>
                  <Said>{message}</Said>
                </p>
              )}
              <Findings findings={conflict} fold={false} />
              {wouldWork && <WouldWork ways={wouldWork} />}
            </li>
          )
        })}
      </ul>
    </details>
  )
}
