import { useState } from 'react'
import type { LessonReply, Live } from '#web/client/use-lessons.ts'
import { upTo } from '#web/format/number.ts'
import { Choice } from '#web/parts/choice.tsx'
import { freshLines } from '#web/state/fresh-lines.ts'
import { lessons } from '#web/text/lessons.ts'
import { CheckedRecipe } from './checked-recipe.tsx'
import { Slider } from './slider.tsx'

const T = lessons.live
type Recipe = NonNullable<LessonReply['recipe']>

/** A recipe that is broken by one change and mended by another. */
export function BreakAndMend({ live, recipe }: { live: Live<'break-and-mend'>; recipe: Recipe }) {
  const [state, setState] = useState<'before' | 'broken' | 'mended'>('before')
  const formula = recipe[state] ?? recipe.before
  const choices = {
    before: T.before,
    broken: `${T.broken}: ${live.breaks.says}`,
    mended: `${T.mended}: ${live.mends.says}`,
  }
  return (
    <>
      <Choice legend={T.state} name="lesson-state" value={state} choices={choices} onChange={setState} />
      <CheckedRecipe
        title={recipe.title}
        formula={formula}
        names={recipe.names}
        fresh={freshLines(formula, recipe.before)}
      />
    </>
  )
}

/** One line of a recipe, more or less of it. */
export function LevelSlider({ live, recipe }: { live: Live<'level-slider'>; recipe: Recipe }) {
  const { ingredient, from_percent, to_percent, step_percent } = live
  const now = recipe.before.lines.find((line) => line.ingredient === ingredient)?.share_percent ?? from_percent
  const [share_percent, setShare] = useState(now)
  const lines = recipe.before.lines.map((line) => (line.ingredient === ingredient ? { ...line, share_percent } : line))
  return (
    <>
      <Slider
        label={T.share(recipe.names[ingredient] ?? ingredient, upTo(share_percent, 3))}
        value={share_percent}
        from={from_percent}
        to={to_percent}
        step={step_percent}
        onChange={setShare}
      />
      <CheckedRecipe
        title={recipe.title}
        formula={{ ...recipe.before, lines }}
        names={recipe.names}
        fresh={[ingredient]}
      />
    </>
  )
}
