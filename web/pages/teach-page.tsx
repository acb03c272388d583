import { useSearchParams } from 'wouter'
import { useTitle } from '#web/client/use-title.ts'
import { ClassPart } from '#web/teach/class-part.tsx'
import { HandOutPart } from '#web/teach/hand-out-part.tsx'
import { QuizPart } from '#web/teach/quiz-part.tsx'
import { ResultsPart } from '#web/teach/results-part.tsx'
import { useClasses } from '#web/teach/use-classes.ts'
import type { ClassStore } from '#web/teach/use-classes.ts'
import { teach as T } from '#web/text/teach.ts'
import '#web/styles/teach.css'

type Part = keyof typeof T.parts
const PARTS = Object.keys(T.parts) as Part[]

/** Which part is open stands in the address, so that a link and the way back lead there. */
function usePart(): [Part, (part: Part) => void] {
  const [params, setParams] = useSearchParams()
  const word = params.get('part')
  return [PARTS.find((part) => part === word) ?? 'class', (part) => setParams({ part })]
}

function PartView({ part, store }: { part: Part; store: ClassStore }) {
  const { now, changeNow } = store
  if (part === 'class') return <ClassPart store={store} />
  if (now === null) return <p role="status">{T.needsClass}</p>
  if (part === 'handout') return <HandOutPart key={now.id} of={now} />
  if (part === 'quiz') return <QuizPart key={now.id} of={now} change={changeNow} />
  return <ResultsPart key={now.id} of={now} change={changeNow} />
}

/** Classes, hand-outs, question sheets on paper, and results; all of it kept in this browser. */
export function TeachPage() {
  useTitle(T.title)
  const store = useClasses()
  const [part, setPart] = usePart()
  return (
    <div className="page sheet teach">
      <h1 className="screen-only">{T.title}</h1>
      <p className="lead screen-only">{T.lead}</p>
      {!store.kept && <p role="alert">{T.notKept}</p>}
      <div className="row teach-parts screen-only" role="group" aria-label={T.partsLabel}>
        {PARTS.map((one) => (
          <button
            key={one}
            type="button"
            className={one === part ? 'main' : undefined}
            aria-pressed={one === part}
            onClick={() => setPart(one)}
          >
            {T.parts[one]}
          </button>
        ))}
      </div>
      <PartView part={part} store={store} />
    </div>
  )
}
