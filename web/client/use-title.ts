import { useEffect } from 'react'
import { text } from '#web/text/text.ts'

/** Names the window after the page. */
export function useTitle(page: string): void {
  useEffect(() => {
    document.title = page === '' ? text.app.name : text.title(page)
  }, [page])
}
