import { useMemo } from 'react'
import { Link } from 'wouter'
import { useRecipeAnswers } from '#web/client/use-recipe-answers.ts'
import type { CheckReply } from '#web/client/use-check.ts'
import { useLabels } from '#web/client/use-labels.ts'
import { usePhWindow } from '#web/client/use-ph-window.ts'
import { usePreservation } from '#web/client/use-preservation.ts'
import { useTitle } from '#web/client/use-title.ts'
import { CalcAdjust } from '#web/parts/calc-adjust.tsx'
import { CalcCurves } from '#web/parts/calc-curves.tsx'
import { CalcPhWindow } from '#web/parts/calc-ph-window.tsx'
import { CalcPreservation } from '#web/parts/calc-preservation.tsx'
import { PhRuler } from '#web/parts/ph-ruler.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import type { Formula } from '#web/state/to-formula.ts'
import { useBench } from '#web/state/use-bench.ts'
import { useRecipeLink } from '#web/state/use-recipe-link.ts'
import { text } from '#web/text/text.ts'
import { working as T } from '#web/text/working.ts'
import '#web/styles/calculations.css'
import '#web/styles/charts.css'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

interface Props {
  formula: Formula
  check: CheckReply | null
  batch_g: number | null
}

/** All panels of a recipe that can be checked. */
function Panels({ formula, check, batch_g }: Props) {
  const preservation = usePreservation(formula)
  const window = usePhWindow(formula)
  const agents = preservation.state === 'ready' ? preservation.data.agents : []
  const ids = [
    ...formula.lines.map(({ ingredient }) => ingredient),
    ...agents.flatMap((one) => [one.ingredient, ...one.takenBy.flatMap(({ ingredient }) => ingredient ?? [])]),
  ]
  const labelOf = useLabels([...new Set(ids)], new Map(check?.roles.map(({ ingredient, inci }) => [ingredient, inci])))
  const oils = check?.roles.filter(({ phase }) => phase === 'oil').map(({ ingredient }) => ingredient) ?? []
  return (
    <>
      <section className="card" id="preservation" aria-labelledby="preservation-title">
        <h2 id="preservation-title">{T.preservation.title}</h2>
        {preservation.state === 'failed' && <Failed failure={preservation} />}
        {preservation.state === 'loading' && <Loading>{T.preservation.loading}</Loading>}
        {preservation.state === 'ready' && (
          <Spoken by="POST /api/preservation">
            <InEnglish by="POST /api/preservation" />
            <CalcPreservation reply={preservation.data} labelOf={labelOf} />
          </Spoken>
        )}
      </section>
      {agents.length > 0 && check && <CalcCurves formula={formula} oils={oils} labelOf={labelOf} />}
      <section className="card" id="window" aria-labelledby="window-title">
        <h2 id="window-title">{T.window.title}</h2>
        {window.state === 'failed' && <Failed failure={window} />}
        {window.state === 'loading' && <Loading>{T.window.loading}</Loading>}
        {window.state === 'ready' && <CalcPhWindow reply={window.data} labelOf={labelOf} />}
      </section>
      {check && <PhRuler reply={check} ph={formula.ph} />}
      <CalcAdjust formula={formula} batch_g={batch_g} />
    </>
  )
}

/** How the recipe on the bench works: what is left of its preservatives, its pH, and how to get there. */
export function WorkingPage() {
  const { bench, change } = useBench()
  useRecipeLink(bench, change)
  const { formula: asked, lacking, check } = useRecipeAnswers(bench)
  const now = asked === null ? '' : JSON.stringify(asked)
  const formula = useMemo(() => (now === '' ? null : (JSON.parse(now) as Formula)), [now])
  const title = bench.title === '' ? T.title : T.of(bench.title)
  useTitle(title)
  return (
    <div className="page working">
      <div className="bench-head">
        <h1>{title}</h1>
        <Link href="/" className="button">
          {T.back}
        </Link>
      </div>
      <p className="lead">{T.lead}</p>
      {bench.lines.length === 0 && <p role="status">{T.empty}</p>}
      {bench.lines.length > 0 && lacking !== null && (
        <p role="status">
          {T.lacking} {text.check.lacking[lacking]}
        </p>
      )}
      {formula && (
        <Panels
          formula={formula}
          check={check.state === 'ready' ? check.data : null}
          batch_g={bench.settings.batch_g}
        />
      )}
    </div>
  )
}
