import { useSearchParams } from 'wouter'
import { fromQuery, toQuery } from './state.ts'
import type { ExplorerState } from './state.ts'

export type Change = (change: Partial<ExplorerState>, isNewPlace?: boolean) => void

/** The state of the explorer as the address has it. Another place is a step of the browser's history; a filter is not. */
export function useExplorer(): { state: ExplorerState; change: Change } {
  const [params, setParams] = useSearchParams()
  const change: Change = (patch, isNewPlace = false) =>
    setParams((now) => toQuery({ ...fromQuery(now), ...patch }), { replace: !isNewPlace })
  return { state: fromQuery(params), change }
}
