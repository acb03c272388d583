import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'

/** The name of the recipe as heading and as a field to change it. */
export function BenchTitle({ store }: { store: BenchStore }) {
  const { bench, change } = store
  return (
    <div className="bench-title">
      <h1 className="hidden">{bench.title === '' ? text.recipe.unnamed : bench.title}</h1>
      <input
        aria-label={text.recipe.name}
        placeholder={text.recipe.unnamed}
        value={bench.title}
        onChange={(event) => change((now) => ({ ...now, title: event.target.value }), 'title')}
      />
    </div>
  )
}
