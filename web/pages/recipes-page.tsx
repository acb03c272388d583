import { useState } from 'react'
import { Link, useLocation } from 'wouter'
import { useTitle } from '#web/client/use-title.ts'
import { announce } from '#web/parts/announcer.tsx'
import { focusSoon } from '#web/parts/focus-soon.ts'
import { KeptRecipeItem } from '#web/parts/kept-recipe.tsx'
import { Notice } from '#web/parts/notice.tsx'
import { EMPTY } from '#web/state/bench.ts'
import type { Bench } from '#web/state/bench.ts'
import { benchOf, copyOf, loadRecipes, saveRecipes } from '#web/state/recipes.ts'
import type { KeptRecipe } from '#web/state/recipes.ts'
import { openRecipe, useBench } from '#web/state/use-bench.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { compare } from '#web/text/compare.ts'
import { recipes as T } from '#web/text/recipes.ts'
import { text } from '#web/text/text.ts'

const titleOf = ({ bench }: KeptRecipe): string => (bench.title === '' ? text.recipe.unnamed : bench.title)

/** The list as it is kept, with every change kept and said at once. */
function useRecipes(store: BenchStore) {
  const [recipes, setRecipes] = useState(() => loadRecipes(window.localStorage))
  const [isFull, setFull] = useState(false)
  const [removed, setRemoved] = useState<KeptRecipe | null>(null)
  const keep = (next: readonly KeptRecipe[]) => {
    setFull(!saveRecipes(window.localStorage, next))
    setRecipes(loadRecipes(window.localStorage))
  }
  const remove = (recipe: KeptRecipe) => {
    const at = recipes.indexOf(recipe)
    const next = recipes[at + 1] ?? recipes[at - 1]
    if (recipe.id === store.bench.recipe) store.change(({ wishes }) => ({ ...EMPTY, wishes }))
    keep(recipes.filter((one) => one !== recipe))
    setRemoved(recipe)
    focusSoon(next ? `[data-recipe="${next.id}"] button` : '.notice button')
  }
  const putBack = (recipe: KeptRecipe) => {
    keep([recipe, ...recipes])
    setRemoved(null)
    announce(T.isBack(titleOf(recipe)))
    focusSoon(`[data-recipe="${recipe.id}"] button`)
  }
  const copy = (recipe: KeptRecipe) => {
    const made = copyOf(recipes, recipe, T.copyName(titleOf(recipe)), new Date())
    keep([made, ...recipes])
    announce(T.copied(titleOf(made)))
    focusSoon(`[data-recipe="${made.id}"] button`)
  }
  const rename = (recipe: KeptRecipe, title: string) => {
    const bench = { ...recipe.bench, title }
    keep(recipes.map((one) => (one === recipe ? { ...one, bench, changed: new Date().toISOString() } : one)))
    if (recipe.id === store.bench.recipe) store.change((now) => ({ ...now, title }), 'title')
    announce(T.renamed(title))
  }
  return { recipes, isFull, removed, remove, putBack, copy, rename }
}

/** The recipes of this device: open, copy, rename, remove and put back. */
export function RecipesPage() {
  useTitle(T.title)
  const [, navigate] = useLocation()
  const store = useBench()
  const { recipes, isFull, removed, remove, putBack, copy, rename } = useRecipes(store)
  const open = (bench: Bench) => {
    openRecipe(bench)
    navigate('/')
  }
  return (
    <div className="page">
      <h1>{T.title}</h1>
      <p className="lead">{T.lead}</p>
      <div className="row">
        <button type="button" onClick={() => open({ ...EMPTY, wishes: store.bench.wishes })}>
          {T.newRecipe}
        </button>
        <Link href="/compare" className="button">
          {compare.title}
        </Link>
      </div>
      {isFull && <p role="alert">{T.full}</p>}
      {removed && (
        <Notice words={T.removed(titleOf(removed))}>
          <button type="button" onClick={() => putBack(removed)}>
            {T.putBack}
          </button>
        </Notice>
      )}
      <section className="card" aria-label={T.list}>
        {recipes.length === 0 && <p>{T.empty}</p>}
        <ul className="recipe-list">
          {recipes.map((recipe) => (
            <KeptRecipeItem
              key={recipe.id}
              recipe={recipe}
              title={titleOf(recipe)}
              isOpen={recipe.id === store.bench.recipe}
              onOpen={() => open(benchOf(recipe))}
              onCopy={() => copy(recipe)}
              onRename={(title) => rename(recipe, title)}
              onRemove={() => remove(recipe)}
            />
          ))}
        </ul>
      </section>
    </div>
  )
}
