import { Link } from 'wouter'
import type { BenchStore } from '#web/state/use-bench.ts'
import { EMPTY } from '#web/state/bench.ts'
import { label } from '#web/text/label.ts'
import { recipes } from '#web/text/recipes.ts'
import { sheet } from '#web/text/sheet.ts'
import { text } from '#web/text/text.ts'
import { whatIf } from '#web/text/what-if.ts'
import { announce } from './announcer.tsx'
import { focusSoon } from './focus-soon.ts'

const T = text.tools

/** A step back or forth. It keeps the focus when there is nothing left: a button that is switched off would lose it. */
function Step({ can, onStep, none, children }: { can: boolean; onStep: () => void; none: string; children: string }) {
  return (
    <button type="button" aria-disabled={!can} onClick={() => (can ? onStep() : announce(none))}>
      {children}
    </button>
  )
}

/** Other pages about the recipe on the bench. */
function Sheets() {
  return (
    <>
      <Link href="/batch" className="button">
        {text.batch.open}
      </Link>
      <Link href="/label" className="button">
        {label.open}
      </Link>
      <Link href="/swap-sheet" className="button">
        {sheet.open}
      </Link>
      <Link href="/what-if" className="button">
        {whatIf.open}
      </Link>
      <Link href="/working" className="button">
        {text.app.working}
      </Link>
    </>
  )
}

/** Undo, redo, other pages about the recipe, print, a new recipe. */
export function Tools({ store }: { store: BenchStore }) {
  const hasLines = store.bench.lines.length > 0
  const clear = () => {
    store.change((bench) => ({ ...EMPTY, wishes: bench.wishes }))
    announce(recipes.startedNew)
    focusSoon('.start textarea')
  }
  return (
    <div className="tools" role="group" aria-label={T.label}>
      <Step can={store.canUndo} onStep={store.undo} none={T.nothingToUndo}>
        {T.undo}
      </Step>
      <Step can={store.canRedo} onStep={store.redo} none={T.nothingToRedo}>
        {T.redo}
      </Step>
      {hasLines && <Sheets />}
      <Link href="/recipes" className="button">
        {recipes.title}
      </Link>
      {hasLines && (
        <>
          <button type="button" onClick={() => window.print()}>
            {T.print}
          </button>
          <button type="button" title={T.clearTitle} onClick={clear}>
            {T.clear}
          </button>
        </>
      )}
      {!store.kept && <p role="alert">{T.notKept}</p>}
    </div>
  )
}
