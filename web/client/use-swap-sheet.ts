import { useQueries } from '@tanstack/react-query'
import { useEffect, useState } from 'react'
import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useDebounced } from './use-debounced.ts'

type SheetBody = Api['POST /api/swap-sheet']['body']
export type SheetLine = Api['POST /api/swap-sheet']['reply']['lines'][number]

/** One line of the sheet and where its answer stands. */
export interface SheetRow {
  ingredient: string
  state: 'waiting' | 'failed' | 'ready'
  line: SheetLine | null
}

export interface Sheet {
  rows: SheetRow[]
  done: number
}

const WHILE_TYPING_MS = 350

const idsOf = (body: SheetBody | null): string[] => [
  ...new Set(body?.formula.lines.map(({ ingredient }) => ingredient)),
]

/** The sheet, asked for one line after another so that the first are there while the last are worked out. */
export function useSwapSheet(body: SheetBody | null): Sheet {
  const asked = useDebounced(body === null ? '' : JSON.stringify(body), WHILE_TYPING_MS)
  const settled = asked === '' ? null : (JSON.parse(asked) as SheetBody)
  const ids = idsOf(settled)
  const [turn, setTurn] = useState(0)
  const answers = useQueries({
    queries: ids.map((id, at) => ({
      queryKey: ['swap-sheet', asked, id],
      queryFn: ({ signal }: { signal: AbortSignal }) =>
        call('POST /api/swap-sheet', { body: { ...(settled as SheetBody), lines: [id] }, signal }),
      enabled: at <= turn,
    })),
  })
  const done = answers.filter(({ isSuccess, isError }) => isSuccess || isError).length
  useEffect(() => setTurn(done), [done])
  const rows = answers.map(({ data, isError }, at): SheetRow => ({
    ingredient: ids[at] ?? '',
    state: isError ? 'failed' : data ? 'ready' : 'waiting',
    line: data?.lines[0] ?? null,
  }))
  return { rows, done }
}
