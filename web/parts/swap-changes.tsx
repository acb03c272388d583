import type { Swap } from '#web/client/use-swaps.ts'
import { text } from '#web/text/en.ts'

/** What changes beside the ingredient, by kind. */
export function SwapChanges({ changes }: { changes: Swap['changes'] }) {
  if (changes.length === 0) return null
  return (
    <div>
      <h4>{text.swaps.changes}</h4>
      <dl className="changes">
        {changes.map(({ kind, text: words, from, to, unit }, at) => (
          <div key={`${kind}${at}`}>
            <dt>{text.swaps.kinds[kind]}</dt>
            <dd>
              {words}
              {from !== undefined && to !== undefined && <small> {text.swaps.fromTo(from, to, unit ?? '')}</small>}
            </dd>
          </div>
        ))}
      </dl>
    </div>
  )
}
