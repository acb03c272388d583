import { Link } from 'wouter'
import type { Swap } from '#web/client/use-swaps.ts'
import { termWords } from '#web/format/term.ts'
import { text } from '#web/text/text.ts'
import { CriteriaTable } from './criteria-table.tsx'
import { FormulaTable } from './formula-table.tsx'
import { SourceLinks } from './source-links.tsx'
import { isPlain, SwapChanges } from './swap-changes.tsx'
import { SwapPath } from './swap-path.tsx'
import { SwapScores } from './swap-scores.tsx'

const PROFILE = 'fatty_acids'

/** Both are oils with known fatty acids: those can be set side by side. */
function OilsLink({ swap, labelOf }: { swap: Swap; labelOf: (id: string) => string }) {
  const [from, to] = [swap.replaces[0], swap.lines[0]?.ingredient]
  const hasProfiles = swap.criteria.some(({ criterion, nearness }) => criterion === PROFILE && nearness !== null)
  if (from === undefined || to === undefined || swap.replaces.length + swap.lines.length > 2 || !hasProfiles)
    return null
  return (
    <p>
      <Link href={`/compare-oils?${new URLSearchParams({ from, to })}`}>
        {text.swaps.oilsOf(labelOf(from), labelOf(to))}
      </Link>
    </p>
  )
}

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
                <dd>
                  <SourceLinks ids={sources} />
                </dd>
              </>
            )}
          </dl>
          <SwapChanges changes={changes.filter(isPlain)} />
          <OilsLink swap={swap} labelOf={labelOf} />
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
