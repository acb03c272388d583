import type { Swap } from '#web/client/use-swaps.ts'
import { upTo } from '#web/format/number.ts'
import { text } from '#web/text/en.ts'

const isChange = (from: number | undefined, to: number | undefined): boolean =>
  from !== undefined && to !== undefined && upTo(from, 3) !== upTo(to, 3)

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
              {isChange(from, to) && <small> {text.swaps.fromTo(from ?? 0, to ?? 0, unit ?? '')}</small>}
            </dd>
          </div>
        ))}
      </dl>
    </div>
  )
}
