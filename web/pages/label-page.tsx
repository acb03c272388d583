import { useState } from 'react'
import { Link } from 'wouter'
import { useRecipeAnswers } from '#web/client/use-recipe-answers.ts'
import { useLabel } from '#web/client/use-label.ts'
import type { LabelReply } from '#web/client/use-label.ts'
import { useLabels } from '#web/client/use-labels.ts'
import { useTitle } from '#web/client/use-title.ts'
import { Choice } from '#web/parts/choice.tsx'
import { LabelAnalyses } from '#web/parts/label-analyses.tsx'
import { LabelView } from '#web/parts/label-view.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import type { Analysis, Bench } from '#web/state/bench.ts'
import { setSettings } from '#web/state/edit.ts'
import { withFact } from '#web/state/facts.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { useBench } from '#web/state/use-bench.ts'
import { useRecipeLink } from '#web/state/use-recipe-link.ts'
import { label as T } from '#web/text/label.ts'
import { text } from '#web/text/text.ts'
import '#web/styles/label.css'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

interface ForProps {
  market: Formula['market']
  placedOn: string
  onMarket: (market: Formula['market']) => void
  onPlacedOn: (day: string) => void
}

/** Market and day: what the law hangs on and a recipe does not say. */
function ForWhom({ market, placedOn, onMarket, onPlacedOn }: ForProps) {
  return (
    <section className="card label-for screen-only" aria-label={text.settings.market}>
      <Choice
        legend={text.settings.market}
        name="label-market"
        value={market}
        choices={text.settings.markets}
        onChange={onMarket}
      />
      <div className="field">
        <label htmlFor="placed-on">{T.placedOn}</label>
        <input
          id="placed-on"
          type="date"
          value={placedOn}
          aria-describedby="placed-on-hint"
          onChange={({ target }) => onPlacedOn(target.value)}
        />
        <small id="placed-on-hint">{T.placedOnHint}</small>
      </div>
    </section>
  )
}

const withAnalyses = (bench: Bench, analyses: Analysis[]): Bench => ({
  ...bench,
  settings: withFact(bench.settings, 'analyses', analyses.length > 0 ? analyses : undefined),
})

interface PapersProps {
  reply: LabelReply
  analyses: readonly Analysis[]
  onChange: (analyses: Analysis[]) => void
}

/** Papers of suppliers on what brings allergens, or may bring some. */
function Papers({ reply, analyses, onChange }: PapersProps) {
  const open = reply.findings.filter(({ rule }) => rule === 'label-incomplete').flatMap(({ about }) => about)
  const brought = reply.allergens.flatMap(({ from }) => from)
  const materials = [...new Set([...brought, ...open, ...analyses.map(({ ingredient }) => ingredient)])].sort()
  const found = analyses.flatMap(({ holds }) => holds.map(({ substance }) => substance))
  const labelOf = useLabels([...materials, ...found])
  if (materials.length === 0) return null
  return (
    <LabelAnalyses
      analyses={analyses}
      materials={materials}
      substances={reply.allergens.map(({ name }) => name)}
      labelOf={labelOf}
      onChange={onChange}
    />
  )
}

/** The label of the recipe on the bench. */
export function LabelPage() {
  const { bench, change } = useBench()
  useRecipeLink(bench, change, '/label')
  const [placedOn, setPlacedOn] = useState('')
  const { formula, lacking } = useRecipeAnswers(bench)
  const label = useLabel(formula, placedOn)
  const title = bench.title === '' ? T.title : T.of(bench.title)
  useTitle(title)
  return (
    <div className="page label-page sheet">
      <div className="bench-head">
        <h1>{title}</h1>
        <div className="tools" role="group" aria-label={text.tools.label}>
          <Link href="/" className="button">
            {T.back}
          </Link>
          <button type="button" disabled={label.state !== 'ready'} onClick={() => window.print()}>
            {T.print}
          </button>
        </div>
      </div>
      <p className="lead screen-only">{T.lead}</p>
      <p className="remark">{T.caution}</p>
      {bench.lines.length === 0 && <p role="status">{T.empty}</p>}
      {bench.lines.length > 0 && (
        <ForWhom
          market={bench.settings.market}
          placedOn={placedOn}
          onMarket={(market) => change((now) => setSettings(now, { market }))}
          onPlacedOn={setPlacedOn}
        />
      )}
      {bench.lines.length > 0 && lacking !== null && (
        <p role="status">
          {T.lacking} {text.check.lacking[lacking]}
        </p>
      )}
      {label.state === 'loading' && lacking === null && <Loading>{T.loading}</Loading>}
      {label.state === 'failed' && lacking === null && <Failed failure={label} />}
      {label.state === 'ready' && lacking === null && (
        <Papers
          reply={label.data}
          analyses={bench.settings.analyses ?? []}
          onChange={(analyses) => change((now) => withAnalyses(now, analyses))}
        />
      )}
      {label.state === 'ready' && lacking === null && (
        <Spoken by="POST /api/label">
          <InEnglish by="POST /api/label" />
          <LabelView reply={label.data} old={label.old} />
        </Spoken>
      )}
    </div>
  )
}
