import type { CheckReply } from '#web/client/use-check.ts'
import { costText } from '#web/format/mass.ts'
import { rangeText, shareText } from '#web/format/number.ts'
import { compareFindings, compareLines, costOf } from '#web/state/compare.ts'
import type { ComparedLine } from '#web/state/compare.ts'
import type { Formula } from '#web/state/to-formula.ts'
import { compare as T } from '#web/text/compare.ts'
import { text } from '#web/text/text.ts'
import { Findings } from './findings.tsx'
import '#web/styles/compare.css'

export interface Side {
  name: string
  formula: Formula
  check: CheckReply
}

export interface Prices {
  currency: string
  prices: Readonly<Record<string, number>>
}

interface Props {
  one: Side
  other: Side
  labelOf: (id: string) => string
  prices: Prices
}

function changeWords({ change, from_percent, to_percent }: ComparedLine): string {
  if (change !== 'dose') return T.changes[change]
  const by = (to_percent ?? 0) - (from_percent ?? 0)
  return by > 0 ? T.more(by) : T.less(-by)
}

const shareOf = (share_percent: number | null): string => (share_percent === null ? T.none : shareText(share_percent))

function Lines({ one, other, labelOf }: Omit<Props, 'prices'>) {
  const lines = compareLines(one.formula, other.formula)
  const number = (change: ComparedLine['change']) => lines.filter((line) => line.change === change).length
  return (
    <>
      <p>{T.summary(number('added'), number('removed'), number('dose'))}</p>
      <table className="compared" role="table">
        <caption className="hidden">{T.caption}</caption>
        <thead role="rowgroup">
          <tr role="row">
            {[T.line, one.name, other.name, T.change].map((head, at) => (
              <th key={at} scope="col" role="columnheader">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {lines.map((line) => (
            <tr role="row" key={line.ingredient} data-change={line.change}>
              <th scope="row" role="rowheader">
                {labelOf(line.ingredient)}
              </th>
              <td role="cell" data-label={T.one}>
                {shareOf(line.from_percent)}
              </td>
              <td role="cell" data-label={T.other}>
                {shareOf(line.to_percent)}
              </td>
              <td role="cell" className="change">
                {changeWords(line)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  )
}

const windowWords = ({ common_ph }: CheckReply): string => {
  if (common_ph === null) return T.phNone
  const range = rangeText(common_ph)
  return range === '' ? T.phAny : range
}

function costWords(formula: Formula, { currency, prices }: Prices): string {
  const { cost_per_kg, priced, unpriced } = costOf(formula, prices)
  if (priced === 0) return T.costNone
  return [costText(cost_per_kg, currency), unpriced > 0 ? T.costPart(unpriced) : ''].join(' ').trim()
}

function Figures({ one, other, prices }: Omit<Props, 'labelOf'>) {
  const phOf = ({ formula }: Side) => (formula.ph === null ? T.phOpen : text.ruler.ph(formula.ph))
  const rows = [
    { head: T.verdict, of: ({ check }: Side) => text.check.words[check.verdict] },
    { head: T.product, of: ({ check }: Side) => text.check.forms[check.form] },
    { head: `${T.ph}, ${T.phIs}`, of: phOf },
    { head: `${T.ph}, ${T.phSuits}`, of: ({ check }: Side) => windowWords(check) },
    { head: T.cost, of: ({ formula }: Side) => costWords(formula, prices) },
  ]
  return (
    <table className="compared" role="table">
      <caption className="hidden">{T.findings}</caption>
      <thead role="rowgroup">
        <tr role="row">
          <td role="cell" />
          <th scope="col" role="columnheader">
            {one.name}
          </th>
          <th scope="col" role="columnheader">
            {other.name}
          </th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        {rows.map(({ head, of }) => (
          <tr role="row" key={head} data-change={of(one) === of(other) ? 'same' : 'dose'}>
            <th scope="row" role="rowheader">
              {head}
            </th>
            <td role="cell" data-label={T.one}>
              {of(one)}
            </td>
            <td role="cell" data-label={T.other}>
              {of(other)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}

/** Two recipes side by side: lines, doses, what the check says of one and not of the other, pH and cost. */
export function Comparison({ one, other, labelOf, prices }: Props) {
  const { gained, lost, kept } = compareFindings(one.check.findings, other.check.findings)
  return (
    <div className="comparison">
      <Lines one={one} other={other} labelOf={labelOf} />
      <Figures one={one} other={other} prices={prices} />
      <div className="two">
        <div>
          <h3>{T.gained}</h3>
          {gained.length === 0 ? <p>{T.noneGained}</p> : <Findings findings={gained} fold={false} />}
        </div>
        <div>
          <h3>{T.lost}</h3>
          {lost.length === 0 ? <p>{T.noneLost}</p> : <Findings findings={lost} fold={false} />}
        </div>
      </div>
      {kept > 0 && <p className="remark">{T.kept(kept)}</p>}
      {Object.keys(prices.prices).length === 0 && <p className="remark screen-only">{T.costWhere}</p>}
    </div>
  )
}
