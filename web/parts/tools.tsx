import { Link } from 'wouter'
import type { BenchStore } from '#web/state/use-bench.ts'
import { EMPTY } from '#web/state/bench.ts'
import { label } from '#web/text/en-label.ts'
import { sheet } from '#web/text/en-sheet.ts'
import { text } from '#web/text/en.ts'

/** Undo, redo, print, clear. */
export function Tools({ store }: { store: BenchStore }) {
  return (
    <div className="tools" role="group" aria-label={text.tools.label}>
      <button type="button" disabled={!store.canUndo} onClick={store.undo}>
        {text.tools.undo}
      </button>
      <button type="button" disabled={!store.canRedo} onClick={store.redo}>
        {text.tools.redo}
      </button>
      {store.bench.lines.length > 0 && (
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
          <Link href="/working" className="button">
            {text.app.working}
          </Link>
        </>
      )}
      <button type="button" onClick={() => window.print()}>
        {text.tools.print}
      </button>
      <button type="button" onClick={() => store.change((bench) => ({ ...EMPTY, wishes: bench.wishes }))}>
        {text.tools.clear}
      </button>
      {!store.kept && <p role="alert">{text.tools.notKept}</p>}
    </div>
  )
}
