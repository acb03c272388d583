import { useEffect, useRef, useState } from 'react'
import type { RefObject } from 'react'

/** Width of an element [px], kept up to date; `guess_px` until it is known. */
export function useWidth<E extends Element>(guess_px: number): [RefObject<E | null>, number] {
  const ref = useRef<E>(null)
  const [width_px, setWidth] = useState(guess_px)
  useEffect(() => {
    const element = ref.current
    if (!element || typeof ResizeObserver === 'undefined') return
    const observer = new ResizeObserver(([entry]) => {
      if (entry && entry.contentRect.width > 0) setWidth(Math.round(entry.contentRect.width))
    })
    observer.observe(element)
    return () => observer.disconnect()
  }, [])
  return [ref, width_px]
}
