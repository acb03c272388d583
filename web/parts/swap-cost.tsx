import { useState } from 'react'
import { costNote } from '#web/format/cost-note.ts'
import { loadInputs } from '#web/state/batch-inputs.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { sheet as T } from '#web/text/sheet.ts'

interface Props {
  now: Formula
  then: Formula
  labelOf: (id: string) => string
}

/** What a swap costs, once this browser keeps a price. */
export function SwapCost({ now, then, labelOf }: Props) {
  const [money] = useState(() => loadInputs(window.localStorage, ''))
  const note = costNote({ before: now, after: then, labelOf, money })
  if (note === '') return null
  return (
    <p className="remark">
      {T.prices.cost}: {note}
    </p>
  )
}
