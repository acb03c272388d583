import { keepPreviousData, useQuery } from '@tanstack/react-query'
import { CallError } from './call.ts'

/** One question to the server and where it stands. `old` is true while the data shown belong to the question before. */
export type Question<T> =
  | { state: 'idle' }
  | { state: 'loading' }
  | { state: 'failed'; code: string; message: string; retry: () => void }
  | { state: 'ready'; data: T; old: boolean }

export interface Ask<T> {
  key: readonly unknown[]
  ask: (signal: AbortSignal) => Promise<T>
  /** false: nothing to ask yet */
  when?: boolean
  /** show the last answer while the next is on its way */
  keep?: boolean
}

/** Asks when the key changes and drops the answer to the key before. */
export function useQuestion<T>({ key, ask, when = true, keep = false }: Ask<T>): Question<T> {
  const query = useQuery({
    queryKey: key,
    queryFn: ({ signal }) => ask(signal),
    enabled: when,
    ...(keep && { placeholderData: keepPreviousData }),
  })
  if (!when) return { state: 'idle' }
  if (query.isError) {
    const code = query.error instanceof CallError ? query.error.code : 'no-answer'
    return { state: 'failed', code, message: query.error.message, retry: () => void query.refetch() }
  }
  if (query.data === undefined) return { state: 'loading' }
  return { state: 'ready', data: query.data, old: query.isPlaceholderData }
}
