import type { Settings } from '#web/state/bench.ts'

/** A recipe of an invented workshop, as a person would have written it down. */
export interface Demo {
  id: string
  title: string
  /** one line on what went wrong and what to try */
  story: string
  recipe: string
  settings: Pick<Settings, 'product' | 'areas'> & Partial<Settings>
}
