import type { LessonReply } from '#web/client/use-lessons.ts'
import { lessons as T } from '#web/text/lessons.ts'
import { Calculate } from './live-calculate.tsx'
import { PhSlider } from './live-ph.tsx'
import { BreakAndMend, LevelSlider } from './live-recipes.tsx'
import { CompareOils, Spectrum, WhoPlays } from './live-records.tsx'
import { Said } from '#web/parts/spoken.tsx'

interface Shown {
  live: LessonReply['live']
  recipe: LessonReply['recipe']
}

function Example({ live, recipe }: Shown) {
  switch (live.kind) {
    case 'break-and-mend':
      return recipe ? <BreakAndMend live={live} recipe={recipe} /> : null
    case 'level-slider':
      return recipe ? <LevelSlider live={live} recipe={recipe} /> : null
    case 'ph-slider':
      return <PhSlider live={live} recipe={recipe} />
    case 'compare-oils':
      return <CompareOils live={live} />
    case 'spectrum':
      return <Spectrum live={live} />
    case 'who-plays':
      return <WhoPlays live={live} />
    case 'calculate':
      return <Calculate live={live} />
  }
}

/** What a lesson lets its reader try. */
export function LiveExample({ live, recipe }: Shown) {
  return (
    <section className="card" aria-labelledby="lesson-live">
      <h2 id="lesson-live">{T.tryIt}</h2>
      <p>
        <Said>{live.says}</Said>
      </p>
      <Example live={live} recipe={recipe} />
    </section>
  )
}
