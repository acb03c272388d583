import { useEffect, useRef, useState } from 'react'
import type { FormEvent } from 'react'
import type { WhatIfReply } from '#web/client/use-what-if.ts'
import { whatIf as T } from '#web/text/what-if.ts'
import { Said } from '#web/parts/spoken.tsx'

const NOTHING = 'nothing-new'

/** Ticks of the choices; "nothing new" and the others exclude each other. */
function toggled(ticked: readonly string[], id: string): string[] {
  if (ticked.includes(id)) return ticked.filter((one) => one !== id)
  return id === NOTHING ? [id] : [...ticked.filter((one) => one !== NOTHING), id]
}

interface Props {
  reply: WhatIfReply
  onLook: (guess: string[]) => void
}

/** The learner is asked before being told. */
export function Guess({ reply, onLook }: Props) {
  const [ticked, setTicked] = useState<string[]>([])
  const box = useRef<HTMLFieldSetElement>(null)
  useEffect(() => box.current?.querySelector('input')?.focus(), [])
  const submit = (event: FormEvent) => {
    event.preventDefault()
    if (ticked.length > 0) onLook(ticked)
  }
  return (
    <form className="card" onSubmit={submit}>
      <fieldset ref={box} className="choice">
        <legend>{T.guess}</legend>
        <p className="remark">{T.guessHint}</p>
        {reply.choices.map(({ id, text }) => (
          <label key={id} className="tick what-if-choice">
            <input
              type="checkbox"
              checked={ticked.includes(id)}
              onChange={() => setTicked((now) => toggled(now, id))}
            />
            <Said>{text}</Said>
          </label>
        ))}
      </fieldset>
      <button type="submit" className="main" aria-disabled={ticked.length === 0}>
        {T.look}
      </button>
    </form>
  )
}
