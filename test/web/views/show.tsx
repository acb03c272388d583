import { QueryClientProvider } from '@tanstack/react-query'
import { cleanup, configure, render } from '@testing-library/react'
import { afterEach, beforeEach, vi } from 'vitest'
import { App } from '#web/app.tsx'
import { makeQueryClient } from '#web/client/query-client.ts'

// A busy machine answers later; what never comes still fails.
configure({ asyncUtilTimeout: 5000 })

/** Shows the whole page at an address, with no answers kept from before. */
export function show(path = '/') {
  window.history.replaceState(null, '', path)
  return render(
    <QueryClientProvider client={makeQueryClient(false)}>
      <App />
    </QueryClientProvider>,
  )
}

/** Starts each test of a file with an empty browser. */
export function startEmpty(): void {
  beforeEach(() => window.localStorage.clear())
  afterEach(() => {
    cleanup()
    vi.unstubAllGlobals()
  })
}
