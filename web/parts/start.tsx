import type { Demo } from '#web/demo/demo.ts'
import type { Bench } from '#web/state/bench.ts'
import { text } from '#web/text/text.ts'
import { DemoList } from './demo-list.tsx'
import { OwnRecipes } from './own-recipes.tsx'
import { PasteBox } from './paste-box.tsx'

interface Props {
  onRead: (typed: string) => void
  onDemo: (demo: Demo) => void
  /** one of the person's own recipes */
  onOpen: (bench: Bench) => void
}

/** The bench while nothing is on it. */
export function Start({ onRead, onDemo, onOpen }: Props) {
  return (
    <div className="start">
      <h1 tabIndex={-1}>{text.start.title}</h1>
      <p className="lead">{text.start.lead}</p>
      <ol className="steps">
        {text.start.steps.map(([title, more]) => (
          <li key={title}>
            <strong>{title}</strong> {more}
          </li>
        ))}
      </ol>
      <OwnRecipes onOpen={onOpen} />
      <div className="two">
        <div className="card">
          <PasteBox place="start" action={text.paste.read} onRead={onRead} />
        </div>
        <div className="card">
          <DemoList onOpen={onDemo} />
        </div>
      </div>
    </div>
  )
}
