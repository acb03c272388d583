import { calculations as T } from '#web/text/calculations.ts'
import { readable } from './use-labels.ts'
import { useDebounced } from './use-debounced.ts'
import { useResolve } from './use-resolve.ts'

const WHILE_TYPING_MS = 350

interface Remark {
  says: string
  nearest: readonly string[]
}

const slug = (name: string): string =>
  name
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')

/**
 * Ids of the records that names mean. A name that means several is to be asked; one that means none goes out as typed,
 * and the server answers with the nearest.
 */
export function useRecordIds(names: readonly string[]) {
  const now = names.map((name) => name.trim()).filter((name) => name !== '')
  const key = now.join('\n')
  const settled = useDebounced(key, WHILE_TYPING_MS)
  const found = useResolve(settled === '' ? [] : settled.split('\n').map((name) => name.replaceAll('-', ' ')))
  const hitOf = (name: string) =>
    found.state === 'ready' ? found.data.get(name.trim().replaceAll('-', ' ')) : undefined
  const remarks = new Map<string, Remark>()
  for (const name of now) {
    const hit = hitOf(name)
    if (hit?.status !== 'ask') continue
    remarks.set(name, { says: T.asks(name), nearest: hit.choices.map(({ ingredient }) => ingredient) })
  }
  /** What a name was read as, so that a slip does not go unseen. */
  const meantBy = (name: string): string | undefined => {
    const hit = hitOf(name)
    return hit?.status === 'found' && hit.inci !== null ? readable(hit.inci) : undefined
  }
  return {
    meantBy,
    idOf: (name: string): string => hitOf(name)?.ingredient ?? slug(name),
    waits: key !== settled || (settled !== '' && (found.state === 'loading' || (found.state === 'ready' && found.old))),
    remarks,
  }
}
