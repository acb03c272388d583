import { nearestIds } from '#engine/graph/nearest-ids.ts'
import type { World } from '#engine/graph/world.ts'
import type { Formula } from '#engine/model/formula.ts'
import { roundTo } from '#engine/units/round.ts'
import { isNamedByLaw } from './law-analysis.ts'

/** Why a formula that fits the schema cannot be worked with. `at` is a JSON pointer below the formula. */
export interface Fault {
  code: 'unknown-ingredient' | 'two-fillers' | 'share-missing' | 'shares-not-100' | 'no-room-to-fill'
  message: string
  at: string
  nearest?: string[]
}

const TOLERANCE_PERCENT = 0.05
/** Sums of decimal shares miss by this much at most: 99.95 is inside the tolerance, whatever the last bits say. */
const ROUNDING_PERCENT = 1e-9

/** An id that no record, no inventory name and no blend of those has, with the ids that look most like it. */
export function unknownIngredient(world: World, id: string, at: string): Fault {
  const nearest = nearestIds(world, id)
  const { say } = world
  const [place, said] = [at.slice(1), id.length > 80 ? `${id.slice(0, 80)}…` : id]
  return {
    code: 'unknown-ingredient',
    message:
      nearest.length > 0
        ? say`${place}: no ingredient has the id ${said}; nearest: ${nearest.join(', ')}`
        : say`${place}: no ingredient has the id ${said}`,
    at,
    nearest,
  }
}

const unknownIngredients = (formula: Formula, world: World): Fault[] =>
  formula.lines.flatMap(({ ingredient }, index) =>
    world.find(ingredient) ? [] : [unknownIngredient(world, ingredient, `/lines/${index}/ingredient`)],
  )

/** Substances of an analysis are ingredients too, or names that an entry of law counts by. */
const unknownSubstances = ({ analyses = [] }: Formula, world: World): Fault[] =>
  analyses.flatMap(({ ingredient, holds }, index) => [
    ...(world.find(ingredient) ? [] : [unknownIngredient(world, ingredient, `/analyses/${index}/ingredient`)]),
    ...holds.flatMap(({ substance }, place) =>
      world.find(substance) || isNamedByLaw(world, substance)
        ? []
        : [unknownIngredient(world, substance, `/analyses/${index}/holds/${place}/substance`)],
    ),
  ])

/** Smallest first, so that the order of lines does not change the last bits. */
const total_percent = (formula: Formula): number =>
  formula.lines
    .map(({ share_percent }) => share_percent ?? 0)
    .sort((a, b) => a - b)
    .reduce((sum, share_percent) => sum + share_percent, 0)

function fillerFaults(formula: Formula, { say }: World): Fault[] {
  const fillers = formula.lines.flatMap(({ fills }, index) => (fills ? [index] : []))
  const [first, second] = fillers
  if (first === undefined || second === undefined) return []
  const message = say`lines/${second}: fills up to 100 %, and so does lines/${first}; only one line can`
  return [{ code: 'two-fillers', message, at: `/lines/${second}/fills` }]
}

const missingShares = (formula: Formula, { say }: World): Fault[] =>
  formula.lines.flatMap(({ share_percent, fills }, index) =>
    share_percent === undefined && !fills
      ? [
          {
            code: 'share-missing' as const,
            message: say`lines/${index}/share_percent: is missing; state it or let the line fill up (fills: true)`,
            at: `/lines/${index}/share_percent`,
          },
        ]
      : [],
  )

function sumFaults(formula: Formula, { say }: World): Fault[] {
  const sum_percent = total_percent(formula)
  const said = roundTo(sum_percent, 4)
  const filler = formula.lines.findIndex(({ fills, share_percent }) => fills && share_percent === undefined)
  if (filler >= 0) {
    if (sum_percent < 100 - ROUNDING_PERCENT) return []
    const message = say`lines/${filler}: the other lines add up to ${said} % and leave nothing to fill`
    return [{ code: 'no-room-to-fill', message, at: `/lines/${filler}` }]
  }
  if (Math.abs(sum_percent - 100) <= TOLERANCE_PERCENT + ROUNDING_PERCENT) return []
  return [{ code: 'shares-not-100', message: say`lines: shares add up to ${said} %, expected 100`, at: '/lines' }]
}

/** All that is impossible about a formula, the gravest first. A sum is only judged when every share is stated. */
export function faultsOf(formula: Formula, world: World): Fault[] {
  const unclear = [...fillerFaults(formula, world), ...missingShares(formula, world)]
  return [
    ...unknownIngredients(formula, world),
    ...unknownSubstances(formula, world),
    ...unclear,
    ...(unclear.length === 0 ? sumFaults(formula, world) : []),
  ]
}

/** The same formula with every id that of its record, so that an alias is accepted wherever an id is. */
export const withAliases = (formula: Formula, world: World): Formula => ({
  ...formula,
  lines: formula.lines.map((line) => ({ ...line, ingredient: world.find(line.ingredient)?.id ?? line.ingredient })),
})
