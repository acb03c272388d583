import { useCheck } from '#web/client/use-check.ts'
import { Findings } from '#web/parts/findings.tsx'
import { FormulaTable } from '#web/parts/formula-table.tsx'
import { Failed, Loading } from '#web/parts/states.tsx'
import type { Formula } from '#web/state/to-formula.ts'
import { lessons } from '#web/text/lessons.ts'
import { Said, Spoken } from '#web/parts/spoken.tsx'

const T = lessons.live

interface Props {
  title: string
  formula: Formula
  names: Readonly<Record<string, string>>
  /** ingredients that are new or changed in it */
  fresh?: readonly string[]
}

/** A recipe with what the check says of it as it stands. */
export function CheckedRecipe({ title, formula, names, fresh = [] }: Props) {
  const check = useCheck(formula)
  return (
    <div className="lesson-recipe">
      <h3>
        <Said>{title}</Said>
      </h3>
      <FormulaTable formula={formula} fresh={fresh} labelOf={(id) => names[id] ?? id} />
      <div role="status" aria-busy={check.state === 'ready' && check.old}>
        {check.state === 'failed' && <Failed failure={check} />}
        {(check.state === 'loading' || check.state === 'idle') && <Loading>{T.checking}</Loading>}
        {check.state === 'ready' && check.data.findings.length === 0 && <p>{T.nothing}</p>}
        {check.state === 'ready' && (
          <Spoken by="POST /api/check">
            <Findings findings={check.data.findings} />
          </Spoken>
        )}
      </div>
    </div>
  )
}
