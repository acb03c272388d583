import { useCallback, useEffect, useState } from 'react'
import { today } from '#web/format/day.ts'
import { loadInputs, saveInputs } from './batch-inputs.ts'
import type { BatchInputs } from './batch-inputs.ts'

/** Prices and currency as this browser keeps them, the same as on the batch sheet. */
export function usePrices(): { inputs: BatchInputs; set: (next: Partial<BatchInputs>) => void } {
  const [inputs, setInputs] = useState<BatchInputs>(() => loadInputs(window.localStorage, today()))
  useEffect(() => saveInputs(window.localStorage, inputs), [inputs])
  const set = useCallback((next: Partial<BatchInputs>) => setInputs((now) => ({ ...now, ...next })), [])
  return { inputs, set }
}
