import { QueryClient } from '@tanstack/react-query'
import { CallError } from './call.ts'

const MOST_RETRIES = 2
const KEPT_MS = 5 * 60_000

/** Asks again only when no answer came back: a refusal stays a refusal. */
export const makeQueryClient = (retry = true): QueryClient =>
  new QueryClient({
    defaultOptions: {
      mutations: { networkMode: 'always' },
      queries: {
        networkMode: 'always', // without a network the page answers by itself
        staleTime: KEPT_MS,
        refetchOnWindowFocus: false,
        retry: (failures, error) =>
          retry && failures < MOST_RETRIES && error instanceof CallError && error.code === 'no-answer',
      },
    },
  })
