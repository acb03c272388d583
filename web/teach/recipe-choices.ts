import { benchFromDemo } from '#web/demo/bench-from-demo.ts'
import { DEMOS } from '#web/demo/index.ts'
import { EMPTY, withoutRecipe } from '#web/state/bench.ts'
import type { Bench } from '#web/state/bench.ts'
import { isBlank, loadRecipes } from '#web/state/recipes.ts'
import { loadBench } from '#web/state/storage.ts'
import type { ClassRecipe } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'
import { text } from '#web/text/text.ts'

const T = teach.class

export const recipeTitle = ({ title }: Bench): string => (title === '' ? text.recipe.unnamed : title)

export interface RecipeChoice extends ClassRecipe {
  label: string
}

/** What can be taken into a class: the recipe on the bench, those kept on this device, the examples. */
export function recipeChoices(store: Pick<Storage, 'getItem' | 'setItem'>): RecipeChoice[] {
  const onBench = loadBench(store).present
  const kept = loadRecipes(store).map(({ id, bench }) => ({
    from: `kept:${id}`,
    bench,
    label: id === onBench.recipe ? T.bench(recipeTitle(bench)) : T.kept(recipeTitle(bench)),
  }))
  const isListed = kept.some(({ from }) => from === `kept:${onBench.recipe}`)
  const bench = { from: 'bench', bench: withoutRecipe(onBench), label: T.bench(recipeTitle(onBench)) }
  const demos = DEMOS.map((demo) => ({
    from: `demo:${demo.id}`,
    bench: benchFromDemo(demo, EMPTY),
    label: T.demo(demo.title),
  }))
  return [...(isListed || isBlank(onBench) ? [] : [bench]), ...kept, ...demos]
}

/** The choices with those of the class that are not there any more, as after an import. */
export function withTaken(choices: readonly RecipeChoice[], recipes: readonly ClassRecipe[]): RecipeChoice[] {
  const gone = recipes.filter(({ from }) => !choices.some((one) => one.from === from))
  return [...gone.map((one) => ({ ...one, label: T.taken(recipeTitle(one.bench)) })), ...choices]
}
