import { useId, useState } from 'react'
import { Link, useSearchParams } from 'wouter'
import { readable } from '#web/client/use-labels.ts'
import { useSide } from '#web/client/use-side.ts'
import type { SideAnswer } from '#web/client/use-side.ts'
import { useTitle } from '#web/client/use-title.ts'
import { today } from '#web/format/day.ts'
import { Comparison } from '#web/parts/comparison.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { loadInputs } from '#web/state/batch-inputs.ts'
import type { Bench } from '#web/state/bench.ts'
import { benchOf, loadRecipes } from '#web/state/recipes.ts'
import { useBench } from '#web/state/use-bench.ts'
import { compare as T } from '#web/text/compare.ts'
import { recipes as R } from '#web/text/recipes.ts'
import { text } from '#web/text/text.ts'

interface Option {
  id: string
  name: string
  bench: Bench
}

const BEFORE = 'before'
const nameOf = ({ title }: Bench): string => (title === '' ? text.recipe.unnamed : title)

/** All that can be compared: the recipes of this device, and the one on the bench as it was a step ago. */
function useOptions(): Option[] {
  const { bench, before } = useBench()
  const [kept] = useState(() => loadRecipes(window.localStorage))
  const own = kept.map((recipe) => ({ id: recipe.id, name: nameOf(recipe.bench), bench: benchOf(recipe) }))
  if (before === null || before.lines.length === 0) return own
  return [...own, { id: BEFORE, name: T.stepBack(nameOf(bench)), bench: before }]
}

interface ChooseProps {
  label: string
  value: string
  options: readonly Option[]
  onChange: (id: string) => void
}

function Choose({ label, value, options, onChange }: ChooseProps) {
  const id = useId()
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChange(event.target.value)}>
        <option value="">{T.choose}</option>
        {options.map(({ id: one, name }) => (
          <option key={one} value={one}>
            {name}
          </option>
        ))}
      </select>
    </div>
  )
}

/** Why one of the two cannot be compared yet; nothing when it can. */
function Waiting({ name, side }: { name: string; side: SideAnswer }) {
  if (side.lacking !== null) return <p role="status">{T.waits(name, text.check.lacking[side.lacking])}</p>
  if (side.check.state === 'failed') return <Failed failure={side.check} />
  return side.check.state === 'ready' ? null : <Loading>{T.loading}</Loading>
}

function Both({ one, other }: { one: Option; other: Option }) {
  const [first, second] = [useSide(one.bench), useSide(other.bench)]
  const [prices] = useState(() => loadInputs(window.localStorage, today()))
  if (!first.formula || !second.formula || first.check.state !== 'ready' || second.check.state !== 'ready') {
    return (
      <>
        <Waiting name={one.name} side={first} />
        <Waiting name={other.name} side={second} />
      </>
    )
  }
  const known = new Map(
    [...first.check.data.roles, ...second.check.data.roles].map(({ ingredient, inci }) => [ingredient, inci]),
  )
  return (
    <Comparison
      one={{ name: one.name, formula: first.formula, check: first.check.data }}
      other={{ name: other.name, formula: second.formula, check: second.check.data }}
      labelOf={(id) => readable(known.get(id) ?? id.replaceAll('-', ' '))}
      prices={prices}
    />
  )
}

/** Two recipes side by side; which ones stands in the address. */
export function ComparePage() {
  useTitle(T.title)
  const options = useOptions()
  const [params, setParams] = useSearchParams()
  const at = (key: string) => options.find(({ id }) => id === params.get(key))
  const [one, other] = [at('a'), at('b')]
  const set = (change: Record<string, string>) =>
    setParams({ a: one?.id ?? '', b: other?.id ?? '', ...change }, { replace: true })
  return (
    <div className="page">
      <h1>{T.title}</h1>
      <p className="lead screen-only">{T.lead}</p>
      <p className="screen-only">
        <Link href="/">{R.toBench}</Link> · <Link href="/recipes">{R.title}</Link>
      </p>
      <section className="card">
        {options.length < 2 && <p>{T.needTwo}</p>}
        <div className="choose-two">
          <Choose label={T.one} value={one?.id ?? ''} options={options} onChange={(a) => set({ a })} />
          <Choose label={T.other} value={other?.id ?? ''} options={options} onChange={(b) => set({ b })} />
        </div>
      </section>
      {one && other && (
        <section className="card" aria-labelledby="pair-title">
          <h2 id="pair-title">{T.pair(one.name, other.name)}</h2>
          <Both key={`${one.id} ${other.id}`} one={one} other={other} />
        </section>
      )}
    </div>
  )
}
