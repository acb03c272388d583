import type { Bench } from '#web/state/bench.ts'
import { benchFromText } from '#web/state/from-text.ts'
import type { Demo } from './demo.ts'

/** Puts a demo recipe on the bench the same way as pasted text. */
export function benchFromDemo(demo: Demo, before: Bench): Bench {
  const bench = benchFromText(demo.recipe, before)
  return { ...bench, title: demo.title, settings: { ...bench.settings, ...demo.settings } }
}
