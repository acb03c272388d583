import { useState } from 'react'
import { addPicked } from '#web/state/edit.ts'
import type { Picked } from '#web/state/edit.ts'
import { addText } from '#web/state/from-text.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { announce } from './announcer.tsx'
import { Combobox } from './combobox.tsx'
import { focusSoon } from './focus-soon.ts'

/** One more line: picked from the list of names, or a whole line as people write it. */
export function LineAdd({ change }: Pick<BenchStore, 'change'>) {
  const [typed, setTyped] = useState('')
  const pick = (picked: Picked) => {
    setTyped('')
    change((bench) => addPicked(bench, picked))
    announce(text.recipe.added(picked.name))
    focusSoon('.recipe .line:last-of-type .share input')
  }
  const read = () => {
    if (typed.trim() === '') return
    setTyped('')
    change((bench) => addText(bench, typed))
    announce(text.recipe.addedText(typed.trim()))
  }
  return (
    <form
      className="line-add"
      onSubmit={(event) => {
        event.preventDefault()
        read()
      }}
    >
      <Combobox
        label={text.recipe.addOne}
        hint={text.recipe.addHint}
        typed={typed}
        onType={setTyped}
        onPick={pick}
        onText={read}
      />
      <button type="submit">{text.recipe.add}</button>
    </form>
  )
}
