import { useState } from 'react'
import { useWhyNot } from '#web/client/use-why-not.ts'
import type { Picked } from '#web/state/edit.ts'
import { text } from '#web/text/text.ts'

/** The ingredient a person asks about: picked from the list, or a text that the server reads. */
export function useOther() {
  const [typed, setTyped] = useState('')
  const [picked, setPicked] = useState<Picked | null>(null)
  const [asked, setAsked] = useState('')
  const read = useWhyNot(asked)
  return {
    id: picked?.ingredient ?? read.id,
    remark: picked ? text.swaps.whyNotAbout(picked.name) : read.remark,
    typed,
    onType: (next: string) => {
      setTyped(next)
      if (next.trim() !== '') return
      setPicked(null)
      setAsked('')
    },
    onPick: (one: Picked) => {
      setTyped(one.name)
      setPicked(one)
    },
    onText: (next: string) => {
      setPicked(null)
      setAsked(next)
    },
  }
}

export type Other = ReturnType<typeof useOther>
