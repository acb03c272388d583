import { text } from '#web/text/text.ts'
import { useDebounced } from './use-debounced.ts'
import { useResolve } from './use-resolve.ts'

const WHILE_TYPING_MS = 500
const MOST_CHOICES = 4

/** The ingredient that a person asks about; null while the name is empty, unclear or unknown, and then why. */
export function useWhyNot(typed: string): { id: string | null; remark: string } {
  const name = useDebounced(typed.trim(), WHILE_TYPING_MS)
  const names = useResolve(name === '' ? [] : [name])
  const hit = names.state === 'ready' ? names.data.get(name.slice(0, 200)) : undefined
  if (name === '' || hit === undefined) return { id: null, remark: '' }
  if (hit.status === 'found' && hit.ingredient !== null) return { id: hit.ingredient, remark: hit.inci ?? '' }
  const choices = hit.choices.slice(0, MOST_CHOICES).map(({ inci }) => inci)
  return {
    id: null,
    remark: choices.length > 0 ? text.swaps.whyNotAsk(name, choices.join(', ')) : text.swaps.whyNotUnknown(name),
  }
}
