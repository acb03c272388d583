import { idOf, resolveNames } from '#engine/index.ts'
import type { Formula, World } from '#engine/index.ts'
import { benchFromDemo } from '#web/demo/bench-from-demo.ts'
import { DEMOS } from '#web/demo/index.ts'
import { EMPTY } from '#web/state/bench.ts'
import { toFormula } from '#web/state/to-formula.ts'
import { formulaOfCase, windowCases } from '../engine/preservation/window-case.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { realRaw } from '../helpers.ts'
import { formulaOf, readCases } from '../score/swap-cases.ts'

export interface Recipe {
  name: string
  formula: Formula
  missing: string
}

/** A line that is not the filler, another one each time. */
function someLine({ lines }: Formula, turn: number): string {
  const stated = lines.filter(({ fills }) => !fills)
  return stated[turn % stated.length]?.ingredient ?? lines[0]?.ingredient ?? ''
}

const some = (name: string, formula: Formula, turn: number): Recipe => ({
  name,
  formula,
  missing: someLine(formula, turn),
})

/** Demo recipes as the bench would ask about them, every name read by its first meaning. */
const demos = (world: World): Recipe[] =>
  DEMOS.map((demo, turn) => {
    const asked = toFormula(benchFromDemo(demo, EMPTY), ({ name }) => {
      const [hit] = resolveNames(world, [name])
      return hit?.ingredient ?? hit?.choices[0]?.ingredient ?? null
    })
    if (!('formula' in asked)) throw new Error(`${demo.id}: ${asked.lacking}`)
    return some(demo.id, asked.formula, turn)
  })

const practice = (): Recipe[] =>
  (realRaw().practice ?? []).map(({ path, data }, turn) => some(path, (data as { formula: Formula }).formula, turn))

const cases = (folder: 'swaps' | 'swaps-own'): Recipe[] =>
  readCases(folder).map((one) => ({ name: one.id, formula: formulaOf(one), missing: idOf(one.missing) }))

/** All recipes of the project by where they come from. */
export const recipesOf = (world: World): Record<string, Recipe[]> => ({
  'test/formulas': FORMULAS.map(({ name, formula }, turn) => some(name, formula, turn)),
  'graph-data/practice': practice(),
  'web/demo': demos(world),
  'test/reference/swaps': cases('swaps'),
  'test/reference/swaps-own': cases('swaps-own'),
  'test/reference/preservation': windowCases().map((one, turn) => some(one.id, formulaOfCase(one), turn)),
})
