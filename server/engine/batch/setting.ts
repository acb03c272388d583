import type { FormulaContext } from '#engine/formula/context.ts'
import type { Say } from '#engine/words/say.ts'
import type { Heat } from './heat.ts'
import type { Item } from './item.ts'
import type { Process } from './process.ts'

/** What is known before any line has its place. */
export interface Setting {
  context: FormulaContext
  /** that of the world: the language in which all is written */
  say: Say
  process: Process
  items: readonly Item[]
  /** heat of the phase that is melted or dissolved; null: cold work */
  heat: Heat | null
}
