import { useEffect, useState } from 'react'
import { useTitle } from '#web/client/use-title.ts'
import { announce } from '#web/parts/announcer.tsx'
import { focusSoon } from '#web/parts/focus-soon.ts'
import { Notice } from '#web/parts/notice.tsx'
import { Start } from '#web/parts/start.tsx'
import { WorkBench } from '#web/parts/work-bench.tsx'
import { Tools } from '#web/parts/tools.tsx'
import { benchFromDemo } from '#web/demo/bench-from-demo.ts'
import type { Bench } from '#web/state/bench.ts'
import { benchFromText } from '#web/state/from-text.ts'
import { isBlank } from '#web/state/recipes.ts'
import { useRecipeLink } from '#web/state/use-recipe-link.ts'
import { useBench } from '#web/state/use-bench.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { recipes } from '#web/text/recipes.ts'
import { text } from '#web/text/text.ts'

/** Says an undo or redo, and finds a place for the focus where the change took it away. */
function useStepped({ stepped, bench }: BenchStore): void {
  useEffect(() => {
    if (stepped === null) return
    announce(text.tools[stepped.kind](bench.lines.length))
    if (document.activeElement === document.body) focusSoon('#recipe-title, .start h1')
  }, [stepped])
}

/** A recipe that came with a link stands beside one's own, and the way back is offered. */
function FromLink({ before, store }: { before: Bench; store: BenchStore }) {
  const name = before.title === '' ? text.recipe.unnamed : before.title
  return (
    <Notice words={recipes.fromLink}>
      <button type="button" onClick={store.undo}>
        {recipes.backToOwn(name)}
      </button>
    </Notice>
  )
}

/** The bench: empty with a way to start, or with a recipe on it. */
export function BenchPage() {
  const store = useBench()
  const { bench, change } = store
  const [linkedOver, setLinkedOver] = useState<Bench | null>(null)
  useRecipeLink(bench, change, '/', setLinkedOver)
  useTitle(bench.title)
  useStepped(store)
  const put = (make: (now: Bench) => Bench) => {
    const next = make(bench)
    change(() => next)
    announce(text.recipe.onBench(next.lines.length))
    focusSoon('#recipe-title')
  }
  const read = (typed: string) => put((now) => benchFromText(typed, now))
  const isLinked = linkedOver !== null && !isBlank(linkedOver) && store.before === linkedOver
  if (!isBlank(bench)) {
    return (
      <>
        {isLinked && <FromLink before={linkedOver} store={store} />}
        <WorkBench store={store} onRead={read} />
      </>
    )
  }
  return (
    <>
      {store.canUndo && <Tools store={store} />}
      <Start onRead={read} onDemo={(demo) => put((now) => benchFromDemo(demo, now))} onOpen={(own) => put(() => own)} />
    </>
  )
}
