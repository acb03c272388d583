import { useId, useState } from 'react'
import type { FormEvent } from 'react'
import type { LearnKind } from '#web/client/use-learn.ts'
import { Choice } from '#web/parts/choice.tsx'
import { Ticks } from '#web/parts/ticks.tsx'
import { KINDS_OF_A_ROLE, LARGEST_SEED, MOST_QUESTIONS } from '#web/state/teach.ts'
import type { Quiz } from '#web/state/teach.ts'
import { learn } from '#web/text/learn.ts'
import { teach } from '#web/text/teach.ts'

const T = teach.quiz

export type QuizSettings = Pick<Quiz, 'seed' | 'count' | 'kinds' | 'roles'>

const ALL_KINDS = (Object.keys(learn.kinds) as (LearnKind | 'all')[]).filter((kind) => kind !== 'all')
const drawSeed = (): number => Math.floor(Math.random() * 1_000_000) // short enough to be copied off paper

interface WholeProps {
  label: string
  hint?: string
  value: string
  min: number
  max: number
  onChange: (value: string) => void
}

function Whole({ label, hint, value, min, max, onChange }: WholeProps) {
  const id = useId()
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="number"
        type="number"
        required
        step={1}
        {...{ min, max, value }}
        aria-describedby={hint ? `${id}-hint` : undefined}
        onChange={({ target }) => onChange(target.value)}
      />
      {hint && <small id={`${id}-hint`}>{hint}</small>}
    </div>
  )
}

/** What a new sheet is made of. */
export function QuizForm({ roles, onMake }: { roles: readonly string[]; onMake: (settings: QuizSettings) => void }) {
  const [seed, setSeed] = useState(() => String(drawSeed()))
  const [count, setCount] = useState('8')
  const [about, setAbout] = useState<keyof typeof T.abouts>(roles.length > 0 ? 'roles' : 'all')
  const [kinds, setKinds] = useState<LearnKind[]>([])
  const canAsk = about === 'roles' ? KINDS_OF_A_ROLE : ALL_KINDS
  const lacksRoles = about === 'roles' && roles.length === 0
  const submit = (event: FormEvent) => {
    event.preventDefault() // the browser has checked both numbers by now
    if (lacksRoles) return
    onMake({
      seed: Number(seed),
      count: Number(count),
      kinds: ALL_KINDS.filter((kind) => canAsk.includes(kind) && kinds.includes(kind)),
      roles: about === 'roles' ? [...roles] : [],
    })
  }
  return (
    <form onSubmit={submit}>
      <h2>{T.settings}</h2>
      <div className="row">
        <Whole label={T.count} value={count} min={1} max={MOST_QUESTIONS} onChange={setCount} />
        <Whole label={T.seed} hint={T.seedHint} value={seed} min={0} max={LARGEST_SEED} onChange={setSeed} />
        <button type="button" onClick={() => setSeed(String(drawSeed()))}>
          {T.draw}
        </button>
      </div>
      <Choice legend={T.about} name="quiz-about" value={about} choices={T.abouts} onChange={setAbout} />
      {about === 'roles' && <p className="remark">{lacksRoles ? T.noRoles : T.aboutHint}</p>}
      <Ticks
        legend={T.kinds}
        chosen={kinds}
        choices={canAsk.map((kind) => [kind, learn.kinds[kind]] as const)}
        onChange={setKinds}
      />
      <button type="submit" className="main" disabled={lacksRoles}>
        {T.make}
      </button>
    </form>
  )
}
