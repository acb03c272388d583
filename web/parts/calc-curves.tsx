import { ChartTable } from '#web/charts/chart-table.tsx'
import { LineChart } from '#web/charts/line-chart.tsx'
import type { Series } from '#web/charts/line-chart.tsx'
import { usePreservationCurves } from '#web/client/use-preservation.ts'
import type { Agent, CurvePoint } from '#web/client/use-preservation.ts'
import { upTo } from '#web/format/number.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { working } from '#web/text/working.ts'
import { Failed, Loading } from './states.tsx'

const T = working.curves

/** What is left to work, in per cent of what is in; null where nothing can be said. */
function leftOf(agent: Agent | undefined): number | null {
  if (!agent || agent.free_percent === null) return null
  const taken_percent = agent.takenBy.reduce((sum, { share_percent }) => sum + share_percent, 0)
  return Math.min(100, Math.max(0, 100 - taken_percent))
}

const agentsOf = (points: readonly CurvePoint[]): string[] => [
  ...new Set(points.flatMap(({ agents }) => agents.map(({ ingredient }) => ingredient))),
]

const agentAt = ({ agents }: CurvePoint, id: string): Agent | undefined =>
  agents.find(({ ingredient }) => ingredient === id)

function seriesOf(points: readonly CurvePoint[], labelOf: (id: string) => string): Series[] {
  return agentsOf(points).flatMap((id) => {
    const line = points.flatMap((point) => {
      const left = leftOf(agentAt(point, id))
      return left === null ? [] : [{ x: point.at, y: left }]
    })
    return line.length > 1 ? [{ name: labelOf(id), line }] : []
  })
}

const endsInWords = (series: readonly Series[], axis: string): string =>
  series
    .map(({ name, line }) => {
      const [first, last] = [line[0], line.at(-1)]
      if (!first || !last) return ''
      return T.end(name, upTo(first.y, 1), upTo(last.y, 1), `${axis} ${upTo(first.x, 2)}`, `${axis} ${upTo(last.x, 2)}`)
    })
    .join(' ')

interface CurveProps {
  title: string
  axis: 'pH' | 'oil'
  points: readonly CurvePoint[]
  now: number | null
  labelOf: (id: string) => string
}

function cell(agent: Agent | undefined): string {
  const left = leftOf(agent)
  if (!agent || left === null) return T.unknownCell
  const working_percent = agent.undissociated_percent ?? agent.free_percent
  return T.cell(upTo(left, 1), working.preservation.span(working_percent))
}

function Curve({ title, axis, points, now, labelOf }: CurveProps) {
  const series = seriesOf(points, labelOf)
  const ids = agentsOf(points)
  const ats = points.map(({ at }) => at)
  const label = axis === 'pH' ? T.xPh : T.xOil
  const mark = now === null ? [] : [{ at: now, label: axis === 'pH' ? T.nowPh(now) : T.nowOil(now) }]
  return (
    <>
      <h3>{title}</h3>
      {series.length === 0 ? (
        <p>{T.none}</p>
      ) : (
        <LineChart
          alt={T.alt(title, endsInWords(series, axis === 'pH' ? 'pH' : '% oil'))}
          series={series}
          x={{ label, min: axis === 'pH' ? Math.min(...ats) : 0, max: Math.max(...ats) }}
          y={{ label: T.y, min: 0, max: 100 }}
          uprights={mark}
        />
      )}
      <ChartTable
        caption={title}
        heads={[label, ...ids.map(labelOf)]}
        rows={points.map((point) => [
          `${upTo(point.at, 2)}${point.at === now ? ` (${T.now('').replace(': ', '')})` : ''}`,
          ...ids.map((id) => cell(agentAt(point, id))),
        ])}
      />
    </>
  )
}

interface Props {
  formula: Formula
  oils: readonly string[]
  labelOf: (id: string) => string
}

/** What is left of each preservative at other pH and with more or less oil, with the recipe as it is marked. */
export function CalcCurves({ formula, oils, labelOf }: Props) {
  const curves = usePreservationCurves(formula, oils)
  const oil_percent = formula.lines
    .filter(({ ingredient }) => oils.includes(ingredient))
    .reduce((sum, line) => sum + (line.share_percent ?? 0), 0)
  return (
    <section className="card" aria-labelledby="curves-title">
      <h2 id="curves-title">{T.title}</h2>
      <p>{T.lead}</p>
      {(curves.state === 'loading' || curves.state === 'idle') && <Loading>{T.loading}</Loading>}
      {curves.state === 'failed' && <Failed failure={curves} />}
      {curves.state === 'ready' && (
        <>
          <div className="chart-pair">
            <div>
              <Curve title={T.ph} axis="pH" points={curves.data.byPh} now={formula.ph} labelOf={labelOf} />
            </div>
            <div>
              {curves.data.byOil.length < 2 ? (
                <>
                  <h3>{T.oil}</h3>
                  <p>{T.noOil}</p>
                </>
              ) : (
                <Curve title={T.oil} axis="oil" points={curves.data.byOil} now={oil_percent} labelOf={labelOf} />
              )}
            </div>
          </div>
          <p className="remark">{T.upper}</p>
        </>
      )}
    </section>
  )
}
