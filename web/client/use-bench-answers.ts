import { useMemo } from 'react'
import type { Bench, BenchLine } from '#web/state/bench.ts'
import { standingOf } from '#web/state/line-view.ts'
import type { Standing } from '#web/state/line-view.ts'
import { shelfNames, shelfOf } from '#web/state/shelf.ts'
import { swapsBody } from '#web/state/swaps-body.ts'
import { toFormula } from '#web/state/to-formula.ts'
import type { Formula, IdOf, Lacking } from '#web/state/to-formula.ts'
import { useCheck } from './use-check.ts'
import { useResolve } from './use-resolve.ts'
import { useSwaps } from './use-swaps.ts'

export interface BenchAnswers {
  standings: ReadonlyMap<string, Standing>
  formula: Formula | null
  idOf: IdOf
  lacking: Lacking | null
  aside_percent: number
  check: ReturnType<typeof useCheck>
  swaps: ReturnType<typeof useSwaps>
  shelf: ReturnType<typeof shelfOf>
  missing: BenchLine[]
}

/** All that the server has to say about the bench: names, check, stand-ins. */
export function useBenchAnswers(bench: Bench, about: string | null = null): BenchAnswers {
  const names = useResolve(bench.lines.filter(({ kind }) => kind === 'ingredient').map(({ name }) => name))
  const onShelf = useResolve(bench.wishes.onlyShelf ? shelfNames(bench.wishes.shelf) : [])
  const standings = useMemo(
    () => new Map(bench.lines.map((line) => [line.key, standingOf(line, names)])),
    [bench.lines, names],
  )
  const idOf: IdOf = (line) => {
    const standing = standings.get(line.key)
    return standing?.state === 'known' ? standing.id : null
  }
  const asked = toFormula(bench, idOf)
  const formula = 'formula' in asked ? asked.formula : null
  const shelf = shelfOf(bench.wishes, onShelf)
  const missing = bench.lines.filter((line) => line.missing && idOf(line) !== null)
  const ids = [...new Set(missing.flatMap((line) => idOf(line) ?? []))].sort()
  return {
    standings,
    formula,
    idOf,
    lacking: 'lacking' in asked ? asked.lacking : null,
    aside_percent: 'formula' in asked ? asked.aside_percent : 0,
    check: useCheck(formula),
    swaps: useSwaps(swapsBody(formula, ids, bench.wishes, shelf, about)),
    shelf,
    missing,
  }
}
