import { useState } from 'react'
import { readable } from '#web/client/use-labels.ts'
import type { BenchLine } from '#web/state/bench.ts'
import type { Standing } from '#web/state/line-view.ts'
import { text } from '#web/text/text.ts'
import { Said, Spoken } from './spoken.tsx'

interface Props {
  line: BenchLine
  standing: Extract<Standing, { state: 'ask' | 'unknown' }>
  onChoose: (id: string, label: string) => void
  onAside: () => void
  onNote: () => void
}

const AT_FIRST = 4

/** The question at a line whose name has several readings or none. Nothing is chosen for the person. */
export function LineAsk({ line, standing, onChoose, onAside, onNote }: Props) {
  const [showAll, setShowAll] = useState(false)
  const { choices, note, state } = standing
  const shown = showAll ? choices : choices.slice(0, AT_FIRST)
  return (
    <Spoken by="POST /api/resolve">
      <div className="ask" role="group" aria-label={text.ask.choose(line.name)}>
        <p>
          {state === 'ask' ? text.ask.ask(line.name) : text.ask.unknown(line.name)}
          {note !== null && (
            <>
              {' '}
              <Said>{note}</Said>
            </>
          )}
          {state === 'unknown' && choices.length > 0 && ` ${text.ask.nearest}`}
        </p>
        <ul>
          {shown.map(({ ingredient, inci, why }) => (
            <li key={ingredient}>
              <button type="button" onClick={() => onChoose(ingredient, readable(inci))}>
                {readable(inci)}{' '}
                {why !== note && (
                  <small>
                    <Said>{why}</Said>
                  </small>
                )}
              </button>
            </li>
          ))}
          {choices.length > shown.length && (
            <li>
              <button type="button" className="quiet" onClick={() => setShowAll(true)}>
                {text.ask.more(choices.length - shown.length)}
              </button>
            </li>
          )}
          {!line.aside && (
            <li>
              <button type="button" className="quiet" onClick={onAside}>
                {text.ask.aside}
              </button>
            </li>
          )}
          <li>
            <button type="button" className="quiet" onClick={onNote}>
              {text.ask.toNotes}
            </button>
          </li>
        </ul>
      </div>
    </Spoken>
  )
}
