import { ChartTable } from '#web/charts/chart-table.tsx'
import { LineChart } from '#web/charts/line-chart.tsx'
import type { Point, Series } from '#web/charts/line-chart.tsx'
import { readable } from '#web/client/use-labels.ts'
import { usePhCurve } from '#web/client/use-ph-adjust.ts'
import type { DosePoint, PhAdjustBody, PhAdjustReply, PhWay } from '#web/client/use-ph-adjust.ts'
import { figureText } from '#web/format/figure.ts'
import { upTo } from '#web/format/number.ts'
import { working } from '#web/text/working.ts'
import { Failed, Loading } from './states.tsx'

const T = working.adjust
/** The drawing reaches this far beyond the likeliest dose; a wide range is cut off at its edge. */
const REACH = 2.2

const middle = ({ min_g, max_g, likely_g }: DosePoint): number => likely_g ?? (min_g + max_g) / 2

interface Drawn {
  body: PhAdjustBody
  reply: PhAdjustReply
  way: PhWay
  points: readonly DosePoint[]
}

/** The pH that the curve has at a dose, between two points of it. */
function phAt(points: readonly Point[], dose_g: number): number | null {
  const above = points.findIndex(({ x }) => x >= dose_g)
  const [before, after] = [points[above - 1], points[above]]
  if (!after) return null
  if (!before || after.x === before.x) return after.y
  return before.y + ((after.y - before.y) * (dose_g - before.x)) / (after.x - before.x)
}

function stepPoints({ body, way }: Drawn, line: readonly Point[]): Point[] {
  let so_far_g = body.measured?.at(-1)?.added_g ?? 0
  return way.steps.flatMap(({ add_g }) => {
    so_far_g += add_g
    const ph = phAt(line, so_far_g)
    return ph === null ? [] : [{ x: so_far_g, y: ph }]
  })
}

function seriesOf(drawn: Drawn): Series[] {
  const { body, reply, way, points } = drawn
  const read = way.way === 'measured' ? body.measured?.at(-1) : undefined
  const begin = read ? { x: read.added_g, y: read.ph } : reply.start && { x: 0, y: reply.start.ph }
  const first = begin ? [begin] : []
  const line = [...first, ...points.map((one) => ({ x: middle(one), y: one.ph }))].sort((a, b) => a.x - b.x)
  const low = points.map((one) => ({ x: one.min_g, y: one.ph }))
  const high = points.map((one) => ({ x: one.max_g, y: one.ph }))
  const steps = stepPoints(drawn, line)
  return [
    { name: T.line, line, area: [...first, ...low, ...high.reverse()] },
    ...(steps.length > 0 ? [{ name: T.stepSeries, line: steps, only: true }] : []),
    ...(body.measured
      ? [{ name: T.readSeries, line: body.measured.map(({ added_g, ph }) => ({ x: added_g, y: ph })), only: true }]
      : []),
  ]
}

function Drawing(drawn: Drawn) {
  const { body, reply, way, points } = drawn
  const series = seriesOf(drawn)
  const phs = [
    ...points.map(({ ph }) => ph),
    ...(body.measured ?? []).map(({ ph }) => ph),
    reply.start?.ph ?? body.target_ph,
  ]
  const far_g = Math.max(...points.map(middle), ...series.flatMap(({ line }) => line.map(({ x }) => x)))
  const most_g = Math.min(Math.max(...points.map(({ max_g }) => max_g)), far_g * REACH)
  const name = reply.with ? readable(reply.with.inci) : ''
  const at = points.reduce((best, one) =>
    Math.abs(one.ph - body.target_ph) < Math.abs(best.ph - body.target_ph) ? one : best,
  )
  return (
    <>
      <LineChart
        alt={T.alt(T.curve, T.ways[way.way], T.altEnd(figureText(middle(at), 3), upTo(at.ph, 2)))}
        series={series}
        x={{ label: T.x(name), min: 0, max: Math.max(most_g, 1e-3) }}
        y={{ label: T.y, min: Math.min(...phs), max: Math.max(...phs) }}
        levels={[{ at: body.target_ph, label: T.targetLine(body.target_ph) }]}
      />
      <ChartTable
        caption={T.curve}
        heads={T.heads}
        rows={points.map(({ ph, min_g, max_g, likely_g }) => [
          upTo(ph, 2),
          figureText(min_g, 3),
          likely_g === null ? '–' : figureText(likely_g, 3),
          figureText(max_g, 3),
        ])}
      />
    </>
  )
}

/** pH against what goes in, by the better of the two ways, with the next steps and the readings on it. */
export function CalcTitration({ body, reply }: { body: PhAdjustBody; reply: PhAdjustReply }) {
  const known = reply.ways.filter(({ dose_g }) => dose_g !== null)
  const way = known.find((one) => one.way === 'measured') ?? known[0]
  const curve = usePhCurve(body, reply, way?.way ?? 'composition')
  if (!way || curve.state === 'idle') return null
  return (
    <>
      <h3>{T.curve}</h3>
      <p className="remark">
        {T.ways[way.way]}. {T.curveLead}
      </p>
      {curve.state === 'loading' && <Loading>{T.curveLoading}</Loading>}
      {curve.state === 'failed' && <Failed failure={curve} />}
      {curve.state === 'ready' &&
        (curve.data.length < 2 ? (
          <p>{T.noCurve}</p>
        ) : (
          <Drawing body={body} reply={reply} way={way} points={curve.data} />
        ))}
    </>
  )
}
