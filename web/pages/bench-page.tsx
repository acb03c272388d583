import { useTitle } from '#web/client/use-title.ts'
import { Start } from '#web/parts/start.tsx'
import { WorkBench } from '#web/parts/work-bench.tsx'
import { Tools } from '#web/parts/tools.tsx'
import { benchFromDemo } from '#web/demo/bench-from-demo.ts'
import { benchFromText } from '#web/state/from-text.ts'
import { useRecipeLink } from '#web/state/use-recipe-link.ts'
import { useBench } from '#web/state/use-bench.ts'

/** The bench: empty with a way to start, or with a recipe on it. */
export function BenchPage() {
  const store = useBench()
  const { bench, change } = store
  useRecipeLink(bench, change)
  useTitle(bench.title)
  if (bench.lines.length > 0 || bench.notes !== '') return <WorkBench store={store} />
  return (
    <>
      {store.canUndo && <Tools store={store} />}
      <Start
        onRead={(typed) => change((now) => benchFromText(typed, now))}
        onDemo={(demo) => change((now) => benchFromDemo(demo, now))}
      />
    </>
  )
}
