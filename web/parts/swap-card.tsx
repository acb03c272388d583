import { Link } from 'wouter'
import type { CheckReply, Finding } from '#web/client/use-check.ts'
import type { Swap } from '#web/client/use-swaps.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { text } from '#web/text/text.ts'
import { Companions } from './companions.tsx'
import { Findings } from './findings.tsx'
import { isPlain, SwapChanges } from './swap-changes.tsx'
import { SwapCompare } from './swap-compare.tsx'
import { SwapCost } from './swap-cost.tsx'
import { SwapDetail } from './swap-detail.tsx'
import { keyOf } from './use-order-remark.ts'
import { isSpoken } from '#web/client/spoken.ts'
import { Said } from './spoken.tsx'

export interface Before {
  formula: Formula
  check: CheckReply
}

interface Props {
  swap: Swap
  /** the recipe as it is with its check: a finding that is not in that is new */
  before: Before | null
  /** several lines are missing: say which of them it replaces */
  isOneOfSeveral: boolean
  labelOf: (id: string) => string
  onUse?: (formula: NonNullable<Swap['formula']>, name: string) => void
  weights?: Readonly<Record<string, number>>
  onWeight?: (criterion: string, factor: number) => void
}

/** Where check and search speak two languages, their sentences cannot be compared; rule, subject and severity can. */
const speakAlike = isSpoken('POST /api/swaps') === isSpoken('POST /api/check')

const sameAs = (a: Finding) => (b: Finding) =>
  a.rule === b.rule &&
  a.about.join() === b.about.join() &&
  (speakAlike ? a.message === b.message : a.severity === b.severity)

function NewFindings({ swap, before }: Pick<Props, 'swap' | 'before'>) {
  const fresh = swap.findings.filter((finding) => !before?.check.findings.some(sameAs(finding)))
  if (fresh.length === 0) return <p className="remark">{text.swaps.noNew}</p>
  return (
    <div>
      <h4>{text.swaps.newFindings}</h4>
      <Findings findings={fresh} />
    </div>
  )
}

/** One stand-in: what, how much, why, what else changes, and how sure. */
export function SwapCard({ swap, before, isOneOfSeveral, labelOf, onUse, weights, onWeight }: Props) {
  const { grade, lines, replaces, why, formula, companions } = swap
  const names = lines.map(({ ingredient }) => labelOf(ingredient)).join(' + ')
  const useWith: Props['onUse'] = (whole, name) => onUse?.(whole, `${names} + ${name}`)
  return (
    <article className="swap" data-grade={grade} data-swap={keyOf(swap)}>
      <header>
        <p className="grade">
          <strong>{text.swaps.grade[grade]}</strong> {text.swaps.gradeMore[grade]}
        </p>
        <h3>
          {lines.map(({ ingredient, share_percent }, at) => (
            <span key={ingredient}>
              {at > 0 && ' + '}
              <Link href={`/ingredient/${ingredient}`}>{labelOf(ingredient)}</Link>{' '}
              {share_percent > 0 && <b className="dose">{text.swaps.dose(share_percent)}</b>}
            </span>
          ))}
        </h3>
        {isOneOfSeveral && <p className="remark">{text.swaps.insteadOf(replaces.map(labelOf).join(', '))}</p>}
      </header>
      <p>
        <Said>{why}</Said>
      </p>
      {onUse && formula && (
        <button
          type="button"
          className="main"
          aria-label={text.swaps.useOf(names)}
          onClick={() => onUse(formula, names)}
        >
          {text.swaps.use}
        </button>
      )}
      <SwapChanges changes={swap.changes.filter((change) => !isPlain(change))} title={text.swaps.changes} />
      {before && formula && <SwapCost now={before.formula} then={formula} labelOf={labelOf} />}
      <Companions companions={companions} labelOf={labelOf} {...(onUse && { onUse: useWith })} />
      {swap.formula && <NewFindings swap={swap} before={before} />}
      <SwapDetail swap={swap} labelOf={labelOf} {...(weights && { weights })} {...(onWeight && { onWeight })} />
      {before && formula && <SwapCompare now={before} then={formula} name={names} labelOf={labelOf} />}
    </article>
  )
}
