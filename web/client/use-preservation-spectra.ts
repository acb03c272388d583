import { useQueries } from '@tanstack/react-query'
import { call } from './call.ts'

/** What is on record of the germs that each ingredient works on, by id; one that has nothing on record is not in it. */
export function useIngredientsOf(ids: readonly string[]): ReadonlyMap<string, Record<string, string>> {
  const once = [...new Set(ids)]
  const answers = useQueries({
    queries: once.map((id) => ({
      queryKey: ['ingredient', id],
      queryFn: ({ signal }: { signal: AbortSignal }) => call('GET /api/ingredients/:id', { params: { id }, signal }),
    })),
  })
  return new Map(
    once.flatMap((id, at): [string, Record<string, string>][] => {
      const spectrum = answers[at]?.data?.claims.find(({ property, used }) => property === 'spectrum' && used)?.spectrum
      return spectrum ? [[id, spectrum]] : []
    }),
  )
}
