import type { BatchInputs } from '#web/state/batch-inputs.ts'
import { LONGEST } from '#web/state/batch-inputs.ts'
import { sheet as T } from '#web/text/sheet.ts'
import { NumberField } from './number-field.tsx'

interface Props {
  ids: readonly string[]
  labelOf: (id: string) => string
  inputs: BatchInputs
  onInputs: (next: Partial<BatchInputs>) => void
}

const MOST_PRICE = 10_000_000

/** Prices of a kilogram, folded away: none is needed. */
export function PriceFields({ ids, labelOf, inputs, onInputs }: Props) {
  const set = (id: string, price: number | null) => {
    const { [id]: _, ...rest } = inputs.prices
    onInputs({ prices: price === null ? rest : { ...rest, [id]: price } })
  }
  return (
    <details className="card screen-only price-fields">
      <summary>{T.prices.title}</summary>
      <p className="remark">{T.prices.hint}</p>
      <div className="field">
        <label htmlFor="sheet-currency">{T.prices.currency}</label>
        <input
          id="sheet-currency"
          maxLength={LONGEST.currency}
          value={inputs.currency}
          onChange={({ target }) => onInputs({ currency: target.value })}
        />
      </div>
      <div className="price-grid">
        {ids.map((id) => (
          <NumberField
            key={id}
            label={labelOf(id)}
            value={inputs.prices[id] ?? null}
            min={0}
            max={MOST_PRICE}
            onChange={(price) => set(id, price)}
          />
        ))}
      </div>
    </details>
  )
}
