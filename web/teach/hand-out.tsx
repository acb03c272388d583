import { useRecipeAnswers } from '#web/client/use-recipe-answers.ts'
import type { BenchAnswers } from '#web/client/use-bench-answers.ts'
import { useLabels } from '#web/client/use-labels.ts'
import { useSwapSheet } from '#web/client/use-swap-sheet.ts'
import type { Sheet } from '#web/client/use-swap-sheet.ts'
import { PrintLine } from '#web/parts/print-line.tsx'
import { SheetTable } from '#web/parts/sheet-table.tsx'
import { Failed } from '#web/parts/states.tsx'
import { sharesOf } from '#web/state/swap-cost.ts'
import type { ClassRecipe, TeachClass } from '#web/state/teach.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { sheet as S } from '#web/text/sheet.ts'
import { teach } from '#web/text/teach.ts'
import { text } from '#web/text/text.ts'
import { BlankTable } from './blank-table.tsx'
import { classTitle } from './class-title.ts'
import { NameLines } from './name-lines.tsx'
import { recipeTitle } from './recipe-choices.ts'
import '#web/styles/swap-sheet.css'
import { dayText } from '#web/format/day.ts'
import { Spoken } from '#web/parts/spoken.tsx'

const T = teach.handout
const NO_MONEY = { prices: {}, currency: '' }

/** What of the recipe is dangerous to handle, as the check says it: lye, acids, dust. */
function cautionsIn(check: BenchAnswers['check']): string[] {
  if (check.state !== 'ready') return []
  const handling = check.data.findings.filter(({ rule }) => rule === 'handle-with-care')
  return [...new Set(handling.map(({ message, remedy }) => [message, remedy].filter(Boolean).join('. ')))]
}

function Cautions({ words }: { words: readonly string[] }) {
  if (words.length === 0) return null
  return (
    <div className="teach-cautions keep">
      <strong>{T.cautions}</strong>
      <ul>
        {words.map((one) => (
          <li key={one}>{one}.</li>
        ))}
      </ul>
    </div>
  )
}

const idsIn = ({ rows }: Sheet, formula: Formula): string[] =>
  [
    ...new Set([
      ...formula.lines.map(({ ingredient }) => ingredient),
      ...rows.flatMap(({ line }) =>
        (line?.standIns ?? []).flatMap(({ lines }) => lines.map(({ ingredient }) => ingredient)),
      ),
    ]),
  ].sort()

interface Props {
  of: TeachClass
  recipe: ClassRecipe
  withKey: boolean
}

interface PagesProps extends Props {
  formula: Formula
  sheet: Sheet
  cautions: readonly string[]
}

function Pages({ of, recipe: { bench }, withKey, formula, sheet, cautions }: PagesProps) {
  const labelOf = useLabels(idsIn(sheet, formula))
  const ids = [...new Set(formula.lines.map(({ ingredient }) => ingredient))]
  const name = recipeTitle(bench)
  const under = [classTitle(of), dayText(of.date)].filter((one) => one !== '').join(' · ')
  return (
    <>
      <section className="card teach-page" aria-labelledby="blanks-title">
        <h2 id="blanks-title">{T.title(name)}</h2>
        <p className="remark">{under}</p>
        <NameLines />
        <PrintLine settings={bench.settings} />
        <p>{T.task}</p>
        <Cautions words={cautions} />
        <BlankTable ids={ids} shares={sharesOf(formula)} labelOf={labelOf} />
      </section>
      {withKey && (
        <section className="card teach-page swap-sheet new-page" aria-labelledby="key-title">
          <h2 id="key-title">{T.keyTitle(name)}</h2>
          <p className="remark">{under}</p>
          <Cautions words={cautions} />
          <Spoken by="POST /api/swap-sheet">
            <SheetTable rows={sheet.rows} formula={formula} labelOf={labelOf} money={NO_MONEY} />
          </Spoken>
          <div className="sheet-foot">
            <p className="remark">{S.legend}</p>
            <p className="remark">
              <strong>{S.caution}</strong>
            </p>
          </div>
        </section>
      )}
    </>
  )
}

/** Blanks on the first page, the key on the second. */
export function HandOut(props: Props) {
  const { bench } = props.recipe
  const { formula, lacking, check } = useRecipeAnswers(bench)
  const sheet = useSwapSheet(formula && { formula })
  const { done } = sheet
  const all = sheet.rows.length
  const isKeyReady = all > 0 && done === all
  // A page without the cautions must not go out: printing waits for the check.
  const isReady = check.state === 'ready' && (isKeyReady || !props.withKey)
  if (lacking !== null && formula === null) {
    return (
      <p role="status">
        {T.lacking} {text.check.lacking[lacking]}
      </p>
    )
  }
  return (
    <>
      <div className="row screen-only">
        <p role="status">{isKeyReady ? T.ready(all) : T.working(done, all)}</p>
        <button type="button" className="main" disabled={!isReady} onClick={() => window.print()}>
          {teach.print}
        </button>
      </div>
      {check.state === 'failed' && <Failed failure={check} />}
      {formula && <Pages {...props} formula={formula} sheet={sheet} cautions={cautionsIn(check)} />}
    </>
  )
}
