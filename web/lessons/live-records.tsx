import { useState } from 'react'
import { Link } from 'wouter'
import { ChartTable } from '#web/charts/chart-table.tsx'
import { ProfileBars } from '#web/charts/profile-bars.tsx'
import { SpectrumGrid } from '#web/charts/spectrum-grid.tsx'
import { call } from '#web/client/call.ts'
import { useQuestion } from '#web/client/question.ts'
import { useIngredient } from '#web/client/use-ingredient.ts'
import { plainLabel, readable } from '#web/client/use-labels.ts'
import type { Live } from '#web/client/use-lessons.ts'
import { useIngredientsOf } from '#web/client/use-preservation-spectra.ts'
import { upTo } from '#web/format/number.ts'
import { RecordList } from '#web/parts/record-list.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { calculations } from '#web/text/calculations.ts'
import { lessons } from '#web/text/lessons.ts'
import '#web/styles/charts.css'
import { Slider } from './slider.tsx'

const T = lessons.live
const LEAST_DRAWN_PERCENT = 0.5

const acidText = (acid: string): string => {
  const name = calculations.oils.names[acid]
  return name === undefined ? acid : `${name} ${acid}`
}

/** Fatty acids of two oils side by side. */
export function CompareOils({ live: { from, to } }: { live: Live<'compare-oils'> }) {
  const [a, b] = [useIngredient(from), useIngredient(to)]
  if (a.state === 'failed') return <Failed failure={a} />
  if (b.state === 'failed') return <Failed failure={b} />
  if (a.state !== 'ready' || b.state !== 'ready') return <Loading>{lessons.loadingOne}</Loading>
  const names = [readable(a.data.inci), readable(b.data.inci)] as const
  const [one, other] = [a, b].map(
    ({ data }) => data.claims.find(({ property, used }) => used && property === 'fatty_acids')?.shares ?? {},
  )
  const most = (acid: string) => Math.max(one?.[acid] ?? 0, other?.[acid] ?? 0)
  const acids = [...new Set([...Object.keys(one ?? {}), ...Object.keys(other ?? {})])]
    .filter((acid) => most(acid) >= LEAST_DRAWN_PERCENT)
    .sort((x, y) => most(y) - most(x))
  const title = T.oils(...names)
  const cell = (value: number | undefined) => (value === undefined ? T.notListed : `${upTo(value, 1)} %`)
  return (
    <>
      <ProfileBars
        alt={title}
        names={names}
        rows={acids.map((acid) => ({
          label: acidText(acid),
          values: [one?.[acid] ?? null, other?.[acid] ?? null] as const,
        }))}
      />
      <ChartTable
        caption={title}
        heads={[T.acid, ...names]}
        rows={acids.map((acid) => [acidText(acid), cell(one?.[acid]), cell(other?.[acid])])}
      />
      <p>
        <Link href={`/compare-oils?${new URLSearchParams({ from, to })}`}>{T.compare}</Link>
      </p>
    </>
  )
}

/** What each of some preservatives works on. */
export function Spectrum({ live: { ingredients } }: { live: Live<'spectrum'> }) {
  const spectra = useIngredientsOf(ingredients)
  return <SpectrumGrid rows={ingredients.map((id) => ({ name: plainLabel(id), words: spectra.get(id) ?? {} }))} />
}

const SOME = '24'

/** Who plays a role where the product has this pH and gets this hot. */
export function WhoPlays({ live }: { live: Live<'who-plays'> }) {
  const [ph, setPh] = useState(live.ph)
  const [hottest_c, setHottest] = useState(live.hottest_c)
  const query = { role: live.role, ph: ph?.toString(), heat_c: hottest_c?.toString(), limit: SOME }
  const reply = useQuestion({
    key: ['who-plays', query],
    ask: (signal) => call('GET /api/ingredients', { query, signal }),
    keep: true,
  })
  return (
    <>
      {ph !== undefined && (
        <Slider label={`${T.playsAt}: ${upTo(ph, 1)}`} value={ph} from={2} to={12} step={0.5} onChange={setPh} />
      )}
      {hottest_c !== undefined && (
        <Slider
          label={`${T.playersHeat}: ${upTo(hottest_c, 1)}`}
          value={hottest_c}
          from={20}
          to={100}
          step={5}
          onChange={setHottest}
        />
      )}
      {reply.state === 'failed' && <Failed failure={reply} />}
      {reply.state === 'loading' && <Loading>{lessons.loadingOne}</Loading>}
      {reply.state === 'ready' && (
        <>
          <p role="status">{T.players(reply.data.total)}</p>
          <RecordList records={reply.data.ingredients} roleLabel={plainLabel} />
        </>
      )}
    </>
  )
}
