import type { Dispensing, Settings, Use } from '#web/state/bench.ts'
import { NONE, ticksOf, usesOf, withFact } from '#web/state/facts.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { facts as T } from '#web/text/facts.ts'
import { Choice } from './choice.tsx'
import { Ticks } from './ticks.tsx'

type Tick = Use | typeof NONE

const OPEN = 'open'
const DISPENSINGS = { [OPEN]: T.open, ...T.dispensings }
const USERS = { [OPEN]: T.open, ...T.users }
const USES: [Tick, string][] = [[NONE, T.none], ...(Object.entries(T.useNames) as [Use, string][])]

const userOf = ({ professional }: Settings): keyof typeof USERS =>
  professional === undefined ? OPEN : professional ? 'professional' : 'public'

const saidCount = ({ dispensing, professional, uses }: Settings): number =>
  [dispensing, professional, uses].filter((fact) => fact !== undefined).length

/** What the law asks of a product and no recipe shows: how it comes out, for whom, for what. */
export function ProductFacts({ settings, change }: { settings: Settings; change: BenchStore['change'] }) {
  const set = (make: (now: Settings) => Settings) => change((now) => ({ ...now, settings: make(now.settings) }))
  const said = saidCount(settings)
  const dispense = (one: Dispensing | typeof OPEN) =>
    set((now) => withFact(now, 'dispensing', one === OPEN ? undefined : one))
  const useBy = (one: keyof typeof USERS) =>
    set((now) => withFact(now, 'professional', one === OPEN ? undefined : one === 'professional'))
  return (
    <details className="facts">
      <summary>
        {T.title} {said > 0 && <small>{T.said(said)}</small>}
      </summary>
      <p className="remark">{T.hint}</p>
      <Choice
        legend={T.dispensing}
        name="dispensing"
        value={settings.dispensing ?? OPEN}
        choices={DISPENSINGS}
        onChange={dispense}
      />
      <Choice legend={T.user} name="user" value={userOf(settings)} choices={USERS} onChange={useBy} />
      <Ticks
        legend={T.uses}
        chosen={ticksOf(settings.uses)}
        choices={USES}
        onChange={(ticked) => set((now) => withFact(now, 'uses', usesOf(ticked, now.uses)))}
      />
    </details>
  )
}
