import { faultsOf, withAliases } from '#engine/checks/faults.ts'
import type { World } from '#engine/graph/world.ts'
import type { Formula, Line } from '#engine/model/formula.ts'
import type { LessonRecipe, RecipeChange } from '#engine/model/lesson-recipe.ts'

const mustBeIn = (lines: readonly Line[], id: string): void => {
  if (!lines.some(({ ingredient }) => ingredient === id)) throw new RangeError(`recipe: holds no ${id}`)
}

const replaced = (line: Line, { by, share_percent }: NonNullable<RecipeChange['replace']>): Line => ({
  ...line,
  ingredient: by,
  ...(share_percent !== undefined && { share_percent }),
})

/**
 * The recipe with a change made; the filling line makes up the rest.
 * @throws RangeError when the change is about an ingredient that is not in the recipe
 */
export function changedRecipe(formula: Formula, change: RecipeChange = {}): Formula {
  const { ph = formula.ph, hottest_c = formula.hottest_c, remove, add, level, replace } = change
  let { lines } = formula
  for (const id of [remove, level?.ingredient, replace?.ingredient]) if (id !== undefined) mustBeIn(lines, id)
  if (remove !== undefined) lines = lines.filter(({ ingredient }) => ingredient !== remove)
  if (level) lines = lines.map((line) => (line.ingredient === level.ingredient ? { ...line, ...level } : line))
  if (replace) lines = lines.map((line) => (line.ingredient === replace.ingredient ? replaced(line, replace) : line))
  if (add) lines = [...lines, add]
  return { ...formula, ph, hottest_c, lines }
}

/** A recipe of a lesson by the id of a practice recipe, or as written out. @throws RangeError for an id that is none */
export function recipeNamed(world: World, recipe: LessonRecipe): { title?: string; formula: Formula } {
  if (typeof recipe !== 'string') return { formula: recipe }
  const found = world.knowledge.practice.find(({ id }) => id === recipe)
  if (!found) throw new RangeError(`recipe: there is no practice recipe ${recipe}`)
  return found
}

/** The recipe with its changes, one after the other, ready to be checked. @throws RangeError with its first fault */
export function recipeWith(world: World, recipe: LessonRecipe, ...changes: (RecipeChange | undefined)[]): Formula {
  const formula = changes.reduce<Formula>(
    (changed, change) => changedRecipe(changed, change),
    recipeNamed(world, recipe).formula,
  )
  const [fault] = faultsOf(formula, world)
  if (fault) throw new RangeError(`recipe: ${fault.message}`)
  return withAliases(formula, world)
}
