import { useState } from 'react'
import type { Swap } from '#web/client/use-swaps.ts'
import { takeFormula } from '#web/state/to-formula.ts'
import type { IdOf } from '#web/state/to-formula.ts'
import type { Bench } from '#web/state/bench.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { focusSoon, lineSelector } from './focus-soon.ts'

type Formula = NonNullable<Swap['formula']>

/** Key of the first line that the new recipe has and the old one had not. */
const freshLine = (before: Bench, after: Bench): string | undefined =>
  after.lines.find(({ key }) => !before.lines.some((line) => line.key === key))?.key

/** Takes a stand-in over, says so until the recipe changes again, and leads to the new line. */
export function useTaken({ bench, change }: BenchStore, idOf: IdOf) {
  const [taken, setTaken] = useState<{ words: string; bench: Bench } | null>(null)
  const take = (formula: Formula, name: string) => {
    const after = takeFormula(bench, formula, idOf)
    change(() => after)
    setTaken({ words: text.swaps.used(name), bench: after })
    const key = freshLine(bench, after)
    focusSoon(key === undefined ? '#recipe-title' : lineSelector(key, '.line-name a'))
  }
  // The history gives the new bench its own object; what it says is what counts.
  const isStill = taken !== null && taken.bench.lines === bench.lines
  return { take, taken: isStill ? taken.words : null }
}
