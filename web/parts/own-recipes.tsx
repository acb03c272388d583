import { useState } from 'react'
import { Link } from 'wouter'
import { whenText } from '#web/format/when.ts'
import type { Bench } from '#web/state/bench.ts'
import { benchOf, loadRecipes } from '#web/state/recipes.ts'
import { recipes as T } from '#web/text/recipes.ts'
import { text } from '#web/text/text.ts'

const AT_FIRST = 4

/** The person's last recipes, to go on with; nothing at the first visit. */
export function OwnRecipes({ onOpen }: { onOpen: (bench: Bench) => void }) {
  const [recipes] = useState(() => loadRecipes(window.localStorage))
  if (recipes.length === 0) return null
  return (
    <section className="card demos" aria-labelledby="own-title">
      <h2 id="own-title">{T.noPlace}</h2>
      <ul>
        {recipes.slice(0, AT_FIRST).map((recipe) => (
          <li key={recipe.id}>
            <button type="button" className="demo" onClick={() => onOpen(benchOf(recipe))}>
              <strong>{recipe.bench.title === '' ? text.recipe.unnamed : recipe.bench.title}</strong>
              <span>
                {T.size(recipe.bench.lines.length, recipe.bench.settings.batch_g)} ·{' '}
                {T.changed(whenText(recipe.changed))}
              </span>
            </button>
          </li>
        ))}
      </ul>
      <p>
        <Link href="/recipes">{T.title}</Link>
      </p>
    </section>
  )
}
