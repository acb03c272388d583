import type { Swap } from '#web/client/use-swaps.ts'
import { text } from '#web/text/text.ts'
import { Said } from './spoken.tsx'

interface Props {
  companions: Swap['companions']
  labelOf: (id: string) => string
  onUse?: (formula: NonNullable<Swap['formula']>, name: string) => void
}

/** What would cover the jobs that a stand-in leaves open, each tried in the recipe. */
export function Companions({ companions, labelOf, onUse }: Props) {
  if (companions.length === 0) return null
  return (
    <div className="companions">
      <h4>{text.swaps.companions}</h4>
      <ul>
        {companions.map(({ ingredient, text: words, formula }) => (
          <li key={ingredient}>
            <Said>{words}</Said>{' '}
            {onUse && (
              <button
                type="button"
                aria-label={text.swaps.useWithOf(labelOf(ingredient))}
                onClick={() => onUse(formula, labelOf(ingredient))}
              >
                {text.swaps.useWith}
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  )
}
