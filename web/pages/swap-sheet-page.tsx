import { Link } from 'wouter'
import { useRecipeAnswers } from '#web/client/use-recipe-answers.ts'
import { useLabels } from '#web/client/use-labels.ts'
import { useSwapSheet } from '#web/client/use-swap-sheet.ts'
import type { Sheet } from '#web/client/use-swap-sheet.ts'
import { useTitle } from '#web/client/use-title.ts'
import { PriceFields } from '#web/parts/price-fields.tsx'
import { PrintLine } from '#web/parts/print-line.tsx'
import { SheetTable } from '#web/parts/sheet-table.tsx'
import { swapsBody } from '#web/state/swaps-body.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { useBench } from '#web/state/use-bench.ts'
import { usePrices } from '#web/state/use-prices.ts'
import { useRecipeLink } from '#web/state/use-recipe-link.ts'
import { sheet as T } from '#web/text/sheet.ts'
import { text } from '#web/text/text.ts'
import '#web/styles/swap-sheet.css'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

/** Ids whose names the sheet shows. */
const idsIn = ({ rows }: Sheet): string[] =>
  [
    ...new Set(
      rows.flatMap(({ ingredient, line }) => [
        ingredient,
        ...(line?.standIns.flatMap(({ lines }) => lines.map((one) => one.ingredient)) ?? []),
      ]),
    ),
  ].sort()

function Progress({ sheet: { rows, done } }: { sheet: Sheet }) {
  const all = rows.length
  if (all === 0) return null
  return (
    <div className="progress screen-only">
      <p role="status">{done < all ? T.progress(done, all) : T.done(all)}</p>
      {done < all && <progress max={all} value={done} aria-label={T.progress(done, all)} />}
    </div>
  )
}

function SheetView({ sheet, formula }: { sheet: Sheet; formula: Formula }) {
  const { inputs, set } = usePrices()
  const ids = idsIn(sheet)
  const known = new Map(sheet.rows.flatMap(({ ingredient, line }) => (line ? [[ingredient, line.inci] as const] : [])))
  const labelOf = useLabels(ids, known)
  return (
    <>
      <Progress sheet={sheet} />
      <section className="card" aria-label={T.caption}>
        <SheetTable rows={sheet.rows} formula={formula} labelOf={labelOf} money={inputs} />
      </section>
      <PriceFields ids={ids} labelOf={labelOf} inputs={inputs} onInputs={set} />
    </>
  )
}

/** The hand-out of the recipe on the bench: for each line what can stand in. */
export function SwapSheetPage() {
  const { bench, change } = useBench()
  useRecipeLink(bench, change, '/swap-sheet')
  const { formula, lacking, shelf } = useRecipeAnswers(bench)
  const wishes = swapsBody(formula, ['any'], bench.wishes, shelf)?.wishes
  const sheet = useSwapSheet(formula && { formula, ...(wishes && { wishes }) })
  const title = bench.title === '' ? T.title : T.of(bench.title)
  useTitle(title)
  const isReady = sheet.rows.length > 0 && sheet.done === sheet.rows.length
  return (
    <div className="page swap-sheet sheet">
      <div className="sheet-head">
        <h1>{title}</h1>
        <div className="tools" role="group" aria-label={text.tools.label}>
          <Link href="/" className="button">
            {T.back}
          </Link>
          <button type="button" className="main" disabled={!isReady} onClick={() => window.print()}>
            {T.print}
          </button>
        </div>
      </div>
      <p className="lead screen-only">{T.lead}</p>
      {bench.lines.length === 0 && <p role="status">{T.empty}</p>}
      {bench.lines.length > 0 && <PrintLine settings={bench.settings} />}
      {bench.lines.length > 0 && lacking !== null && (
        <p role="status">
          {T.lacking} {text.check.lacking[lacking]}
        </p>
      )}
      {formula && (
        <Spoken by="POST /api/swap-sheet">
          <InEnglish by="POST /api/swap-sheet" />
          <SheetView sheet={sheet} formula={formula} />
        </Spoken>
      )}
      {formula && (
        <div className="sheet-foot">
          <p className="remark">{T.legend}</p>
          <p className="remark">
            <strong>{T.caution}</strong>
          </p>
        </div>
      )}
    </div>
  )
}
