import { useCallback, useEffect, useState } from 'react'
import { Link } from 'wouter'
import { useBatch } from '#web/client/use-batch.ts'
import { useTitle } from '#web/client/use-title.ts'
import { today } from '#web/format/day.ts'
import { BatchInputsForm } from '#web/parts/batch-inputs-form.tsx'
import { BatchSheetView } from '#web/parts/batch-sheet-view.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import { loadInputs, saveInputs } from '#web/state/batch-inputs.ts'
import type { BatchInputs } from '#web/state/batch-inputs.ts'
import { setSettings } from '#web/state/edit.ts'
import { useBatchLink } from '#web/state/use-batch-link.ts'
import { useBench } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { InEnglish, Spoken } from '#web/parts/spoken.tsx'

const USUAL_G = 100

/** The batch of the recipe on the bench: inputs, weigh table, order of work. */
export function BatchPage() {
  const { bench, change } = useBench()
  const [inputs, setInputs] = useState<BatchInputs>(() => loadInputs(window.localStorage, today()))
  useBatchLink({ bench, change, inputs, setInputs })
  useEffect(() => saveInputs(window.localStorage, inputs), [inputs])
  const isSizeless = bench.lines.length > 0 && bench.settings.batch_g === null
  useEffect(() => {
    if (isSizeless) change((now) => setSettings(now, { batch_g: USUAL_G }), 'batch')
  }, [isSizeless, change])
  const { sheet, lacking, typed } = useBatch(bench, inputs)
  const set = useCallback((next: Partial<BatchInputs>) => setInputs((now) => ({ ...now, ...next })), [])
  useTitle(bench.title === '' ? text.batch.title : text.batch.of(bench.title))
  return (
    <div className="batch sheet">
      <header className="sheet-head">
        <h1>{bench.title === '' ? text.batch.title : text.batch.of(bench.title)}</h1>
        <div className="tools" role="group" aria-label={text.tools.label}>
          <Link href="/" className="button">
            {text.batch.back}
          </Link>
          <button type="button" className="main" disabled={sheet.state !== 'ready'} onClick={() => window.print()}>
            {text.batch.print}
          </button>
        </div>
      </header>
      {bench.lines.length === 0 ? (
        <p role="status">{text.batch.empty}</p>
      ) : (
        <>
          <p className="lead screen-only">{text.batch.lead}</p>
          <BatchInputsForm
            batch_g={bench.settings.batch_g}
            inputs={inputs}
            onSize={(batch_g) => change((now) => setSettings(now, { batch_g }), 'batch')}
            onInputs={set}
          />
          {lacking !== null && (
            <p role="status">
              {text.batch.lacking} {text.check.lacking[lacking]}
            </p>
          )}
          {lacking === null && sheet.state === 'loading' && <Loading>{text.batch.loading}</Loading>}
          {lacking === null && sheet.state === 'failed' && <Failed failure={sheet} />}
          {lacking === null && sheet.state === 'ready' && (
            <Spoken by="POST /api/batch">
              <InEnglish by="POST /api/batch" />
              <BatchSheetView reply={sheet.data} old={sheet.old} typed={typed} inputs={inputs} onInputs={set} />
            </Spoken>
          )}
        </>
      )}
    </div>
  )
}
