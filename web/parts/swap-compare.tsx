import { lazy, Suspense, useState } from 'react'
import { useCheck } from '#web/client/use-check.ts'
import type { CheckReply } from '#web/client/use-check.ts'
import { today } from '#web/format/day.ts'
import { loadInputs } from '#web/state/batch-inputs.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { compare as T } from '#web/text/compare.ts'
import { Failed, Loading } from './states.tsx'

// The table comes when somebody asks for it: the bench itself does not need it.
const Comparison = lazy(() => import('./comparison.tsx').then((part) => ({ default: part.Comparison })))

interface Props {
  /** the recipe as it is, with its check */
  now: { formula: Formula; check: CheckReply }
  then: Formula
  name: string
  labelOf: (id: string) => string
}

function Body({ now, then, name, labelOf }: Props) {
  const check = useCheck(then)
  const [prices] = useState(() => loadInputs(window.localStorage, today()))
  if (check.state === 'failed') return <Failed failure={check} />
  if (check.state !== 'ready') return <Loading>{T.loading}</Loading>
  return (
    <Suspense fallback={<Loading>{T.loading}</Loading>}>
      <Comparison
        one={{ name: T.asItIs, ...now }}
        other={{ name: T.withIt(name), formula: then, check: check.data }}
        labelOf={labelOf}
        prices={prices}
      />
    </Suspense>
  )
}

/** The recipe as it is beside the one with a stand-in, before anything is taken. */
export function SwapCompare(props: Props) {
  const [isOpen, setOpen] = useState(false)
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{T.open}</summary>
      {isOpen && <Body {...props} />}
    </details>
  )
}
