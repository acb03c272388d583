import { useState } from 'react'
import { Link, useSearchParams } from 'wouter'
import { ChartTable } from '#web/charts/chart-table.tsx'
import { ProfileBars } from '#web/charts/profile-bars.tsx'
import { useCalculate } from '#web/client/use-calculate.ts'
import { useRecordIds } from '#web/client/use-calculated-ids.ts'
import type { IngredientReply } from '#web/client/use-ingredient.ts'
import { useIngredient } from '#web/client/use-ingredient.ts'
import { readable } from '#web/client/use-labels.ts'
import { useTitle } from '#web/client/use-title.ts'
import { figureText } from '#web/format/figure.ts'
import { upTo } from '#web/format/number.ts'
import { CalcCell } from '#web/parts/calc-cell.tsx'
import type { Remark } from '#web/parts/calc-cell.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { text } from '#web/text/text.ts'
import { calculations } from '#web/text/calculations.ts'
import '#web/styles/calculations.css'
import '#web/styles/charts.css'

const T = calculations.oils
const EXAMPLE = { from: 'olive oil', to: 'sunflower oil' }
const LEAST_DRAWN_PERCENT = 0.5

type Claim = IngredientReply['claims'][number]
interface Oil {
  name: string
  claim: Claim | undefined
  shares: Record<string, number>
}

function oilOf(record: IngredientReply): Oil {
  const claim = record.claims.find(({ property, used }) => property === 'fatty_acids' && used)
  return { name: readable(record.inci), claim, shares: claim?.shares ?? {} }
}

const acidText = (acid: string): string => (T.names[acid] === undefined ? acid : `${T.names[acid]} ${acid}`)

const inWords = (percent: number | null): string => (percent === null ? T.notListed : `${figureText(percent, 3)} %`)

function Profiles({ a, b }: { a: Oil; b: Oil }) {
  const of = (oil: Oil, acid: string) => oil.shares[acid] ?? null
  const most = (acid: string) => Math.max(of(a, acid) ?? 0, of(b, acid) ?? 0)
  const acids = [...new Set([...Object.keys(a.shares), ...Object.keys(b.shares)])].sort((x, y) => most(y) - most(x))
  const drawn = acids.filter((acid) => most(acid) >= LEAST_DRAWN_PERCENT)
  const rest = acids.filter((acid) => !drawn.includes(acid))
  const restOf = (oil: Oil) => rest.reduce((sum, acid) => sum + (of(oil, acid) ?? 0), 0)
  const title = T.chart(a.name, b.name)
  const words = drawn
    .slice(0, 4)
    .map((acid) => `${acidText(acid)}: ${T.both(inWords(of(a, acid)), inWords(of(b, acid)))}`)
    .join('; ')
  return (
    <>
      <ProfileBars
        alt={`${title}. ${words}.`}
        names={[a.name, b.name]}
        rows={drawn.map((acid) => ({ label: acidText(acid), values: [of(a, acid), of(b, acid)] as const }))}
      />
      {rest.length > 0 && <p className="remark">{T.rest(upTo(Math.max(restOf(a), restOf(b)), 1))}</p>}
      <ChartTable
        caption={title}
        heads={[T.acid, `A ${a.name}`, `B ${b.name}`]}
        rows={acids.map((acid) => [acidText(acid), inWords(of(a, acid)), inWords(of(b, acid))])}
      />
      <ul className="calc-sources">
        {[a, b].map(
          ({ name, claim }) =>
            claim && (
              <li key={name}>{T.source(name, claim.source, claim.locator, text.ingredient.accesses[claim.access])}</li>
            ),
        )}
      </ul>
    </>
  )
}

function Distance({ from, to }: { from: string; to: string }) {
  const answer = useCalculate('profile-distance', { from, to })
  if (answer.state !== 'ready') return null
  const { cosine = 0, aitchison = 0 } = answer.data.values
  return (
    <>
      <h3>{T.distance}</h3>
      <p>
        {T.cosine(figureText(cosine, 3))} {T.aitchison(figureText(aitchison, 3))}{' '}
        <Link href={`/calculation/profile-distance?${new URLSearchParams({ from, to })}`}>{T.steps}</Link>
      </p>
    </>
  )
}

function Both({ from, to }: { from: string; to: string }) {
  const [one, other] = [useIngredient(from), useIngredient(to)]
  if (one.state === 'failed') return <Failed failure={one} />
  if (other.state === 'failed') return <Failed failure={other} />
  if (one.state !== 'ready' || other.state !== 'ready') return <Loading>{T.loading}</Loading>
  const [a, b] = [oilOf(one.data), oilOf(other.data)]
  const bare = [a, b].filter(({ claim }) => claim === undefined)
  return (
    <section className="card" aria-labelledby="oils-title">
      <h2 id="oils-title">{T.chart(a.name, b.name)}</h2>
      {bare.map(({ name }) => (
        <p key={name}>{T.none(name)}</p>
      ))}
      {bare.length === 0 && (
        <>
          <Profiles a={a} b={b} />
          <Distance from={from} to={to} />
        </>
      )}
    </section>
  )
}

const FIELD = { kind: 'oil', optional: false, choices: [], longest: 200 } as const

/** The fatty acids of two oils side by side; both stand in the address. */
export function CompareOilsPage() {
  useTitle(T.title)
  const [params, setParams] = useSearchParams()
  const [typed, setTyped] = useState({
    from: params.get('from') ?? EXAMPLE.from,
    to: params.get('to') ?? EXAMPLE.to,
  })
  const { idOf, waits, remarks, meantBy } = useRecordIds([typed.from, typed.to])
  const set = (change: Partial<typeof typed>) => {
    const next = { ...typed, ...change }
    setTyped(next)
    setParams(next, { replace: true })
  }
  const isEmpty = typed.from.trim() === '' || typed.to.trim() === ''
  const remarkAt = (name: string): Remark | undefined => remarks.get(name.trim())
  return (
    <div className="page">
      <p>
        <Link href="/calculations">{calculations.back}</Link>
      </p>
      <h1>{T.title}</h1>
      <p className="lead">{T.lead}</p>
      <div className="card calc-fields">
        <CalcCell
          field={{ ...FIELD, key: 'from' }}
          name="profile-distance"
          value={typed.from}
          remark={remarkAt(typed.from)}
          meant={meantBy(typed.from)}
          onChange={(from) => set({ from })}
        />
        <CalcCell
          field={{ ...FIELD, key: 'to' }}
          name="profile-distance"
          value={typed.to}
          remark={remarkAt(typed.to)}
          meant={meantBy(typed.to)}
          onChange={(to) => set({ to })}
        />
        <button type="button" onClick={() => set({ from: typed.to, to: typed.from })}>
          {T.swap}
        </button>
      </div>
      {!isEmpty && remarks.size === 0 && waits && <Loading>{T.loading}</Loading>}
      {!isEmpty && remarks.size === 0 && !waits && <Both from={idOf(typed.from)} to={idOf(typed.to)} />}
    </div>
  )
}
