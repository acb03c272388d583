import type { Swap } from '#web/client/use-swaps.ts'
import { upTo } from '#web/format/number.ts'
import { text } from '#web/text/text.ts'
import { Said } from './spoken.tsx'

const isChange = (from: number | undefined, to: number | undefined): boolean =>
  from !== undefined && to !== undefined && upTo(from, 3) !== upTo(to, 3)

type Change = Swap['changes'][number]

/** That the names on the label change goes without saying; more than that one sentence does not. */
export const isPlain = ({ kind, text: words }: Change): boolean => kind === 'label' && !words.includes('. ')

/** What changes beside the ingredient, by kind. */
export function SwapChanges({ changes, title }: { changes: Swap['changes']; title?: string }) {
  if (changes.length === 0) return null
  return (
    <div>
      {title !== undefined && <h4>{title}</h4>}
      <dl className="changes">
        {changes.map(({ kind, text: words, from, to, unit }, at) => (
          <div key={`${kind}${at}`}>
            <dt>{text.swaps.kinds[kind]}</dt>
            <dd>
              <Said>{words}</Said>
              {isChange(from, to) && <small> {text.swaps.fromTo(from ?? 0, to ?? 0, unit ?? '')}</small>}
            </dd>
          </div>
        ))}
      </dl>
    </div>
  )
}
