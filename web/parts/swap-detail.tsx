import type { Swap } from '#web/client/use-swaps.ts'
import { sourceWords } from '#web/format/source.ts'
import { termWords } from '#web/format/term.ts'
import { text } from '#web/text/en.ts'
import { CriteriaTable } from './criteria-table.tsx'
import { FormulaTable } from './formula-table.tsx'
import { isPlain, SwapChanges } from './swap-changes.tsx'
import { SwapPath } from './swap-path.tsx'
import { SwapScores } from './swap-scores.tsx'

interface Props {
  swap: Swap
  labelOf: (id: string) => string
  weights?: Readonly<Record<string, number>>
  onWeight?: (criterion: string, factor: number) => void
}

/** Scores, what is not known, evidence, path and sources; and the whole new recipe. */
export function SwapDetail({ swap, labelOf, weights, onWeight }: Props) {
  const { scores, unknown, evidence, path, sources, formula, lines, changes } = swap
  return (
    <>
      <details>
        <summary>{text.swaps.detail}</summary>
        <div className="detail">
          {swap.lines.length === 1 ? (
            <CriteriaTable
              rows={swap.criteria}
              missing={swap.replaces.map(labelOf).join(', ')}
              standIn={lines.map(({ ingredient }) => labelOf(ingredient)).join(' + ')}
              {...(weights && { weights })}
              {...(onWeight && { onWeight })}
            />
          ) : (
            <SwapScores scores={scores} />
          )}
          <dl>
            <dt>{text.swaps.evidence}</dt>
            <dd>{text.swaps.evidenceWords[evidence]}</dd>
            {unknown.length > 0 && (
              <>
                <dt>{text.swaps.unknown}</dt>
                <dd>{unknown.map(termWords).join(', ')}</dd>
              </>
            )}
            {sources.length > 0 && (
              <>
                <dt>{text.swaps.sources}</dt>
                <dd>{sources.map(sourceWords).join(', ')}</dd>
              </>
            )}
          </dl>
          <SwapChanges changes={changes.filter(isPlain)} />
          <SwapPath path={path} labelOf={labelOf} />
        </div>
      </details>
      {formula && (
        <details>
          <summary>{text.swaps.formula}</summary>
          <FormulaTable formula={formula} fresh={lines.map(({ ingredient }) => ingredient)} labelOf={labelOf} />
        </details>
      )}
    </>
  )
}
