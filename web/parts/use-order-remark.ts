import { useEffect, useRef, useState } from 'react'
import type { Swap } from '#web/client/use-swaps.ts'
import { text } from '#web/text/text.ts'

const T = text.swaps
const MOST_SAID = 3

/** What tells one stand-in of a reply from the others. */
export const keyOf = ({ lines }: Swap): string => lines.map(({ ingredient }) => ingredient).join('+')

type LabelOf = (id: string) => string

/** Which stand-ins changed their place, the foremost first; places are counted from 1. */
export function orderWords(before: readonly string[], after: readonly string[], labelOf: LabelOf): string {
  const moves = after.flatMap((key, at) => {
    const from = before.indexOf(key)
    if (from === at) return []
    const name = key.split('+').map(labelOf).join(' + ')
    return [from < 0 ? T.cameIn(name, at + 1) : T.movedFrom(name, from + 1, at + 1)]
  })
  return moves.length === 0 ? T.sameOrder : T.reordered(moves.slice(0, MOST_SAID))
}

interface Of {
  swaps: readonly Swap[]
  isOld: boolean
  weights: Readonly<Record<string, number>> | undefined
  labelOf: LabelOf
}

/** A moved card takes its field out of the page for a moment, and the focus with it. */
function refocus(card: string | undefined, criterion: string | undefined): void {
  if (document.activeElement !== document.body || card === undefined) return
  const field = document.querySelector<HTMLElement>(
    `[data-swap="${CSS.escape(card)}"] [data-weight="${CSS.escape(criterion ?? '')}"]`,
  )
  const target = field ?? document.querySelector<HTMLElement>('#stand-ins')
  target?.focus()
}

/** After a weight was moved: what that did to the order, in words. Nothing while nobody moved one. */
export function useOrderRemark({ swaps, isOld, weights, labelOf }: Of): string {
  const asked = JSON.stringify(weights ?? {})
  const seen = useRef({ asked, order: swaps.map(keyOf) })
  const field = useRef<{ card?: string | undefined; criterion?: string | undefined }>({})
  const [remark, setRemark] = useState('')
  const { activeElement } = document
  if (activeElement instanceof HTMLElement && activeElement.dataset['weight'] !== undefined) {
    field.current = {
      card: activeElement.closest<HTMLElement>('[data-swap]')?.dataset['swap'],
      criterion: activeElement.dataset['weight'],
    }
  }
  useEffect(() => {
    if (isOld) return
    const order = swaps.map(keyOf)
    if (seen.current.asked !== asked) {
      setRemark(orderWords(seen.current.order, order, labelOf))
      refocus(field.current.card, field.current.criterion)
    }
    seen.current = { asked, order }
  }, [swaps, isOld, asked])
  return remark
}
