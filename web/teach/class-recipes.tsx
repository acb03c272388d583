import { useState } from 'react'
import { Ticks } from '#web/parts/ticks.tsx'
import type { TeachClass } from '#web/state/teach.ts'
import { teach } from '#web/text/teach.ts'
import { recipeChoices, withTaken } from './recipe-choices.ts'
import type { ClassStore } from './use-classes.ts'

const T = teach.class

/** The recipes of a class, ticked from all that this device has; a copy goes into the class. */
export function ClassRecipes({ of, change }: { of: TeachClass; change: ClassStore['changeNow'] }) {
  const [here] = useState(() => recipeChoices(window.localStorage))
  // What was taken in from a file stays in the list after it is unticked, so that a slip loses nothing.
  const [before] = useState(of.recipes)
  const choices = withTaken(here, [
    ...of.recipes,
    ...before.filter(({ from }) => !of.recipes.some((one) => one.from === from)),
  ])
  const choose = (chosen: string[]) =>
    change((now) => ({
      ...now,
      recipes: chosen.flatMap((from) => {
        const own = now.recipes.find((one) => one.from === from) ?? choices.find((one) => one.from === from)
        return own ? [{ from, bench: own.bench }] : []
      }),
    }))
  return (
    <section className="card" aria-labelledby="class-recipes">
      <h2 id="class-recipes">{T.recipes}</h2>
      <p className="remark">{T.recipesHint}</p>
      <Ticks
        legend={T.tickRecipes}
        chosen={of.recipes.map(({ from }) => from)}
        choices={choices.map(({ from, label }) => [from, label] as const)}
        onChange={choose}
      />
    </section>
  )
}
