import type { CheckReply, Finding } from '#web/client/use-check.ts'
import { gramsText, upTo } from '#web/format/number.ts'
import type { Bench } from '#web/state/bench.ts'
import { MOST_MISSING } from '#web/state/edit.ts'
import type { Standing } from '#web/state/line-view.ts'
import { shareOf, sumShares } from '#web/state/shares.ts'
import type { BenchStore } from '#web/state/use-bench.ts'
import { text } from '#web/text/text.ts'
import { nameOf } from './line-name.tsx'
import { RecipeLine } from './recipe-line.tsx'
import { SumNote } from './sum-note.tsx'

interface Props {
  bench: Bench
  standings: ReadonlyMap<string, Standing>
  check: CheckReply | null
  change: BenchStore['change']
}

const HEADS = [text.recipe.line, text.recipe.share, text.recipe.grams, text.recipe.phase, text.recipe.does]
const WATER = 'aqua'
const UNREAD: Standing = { state: 'unread' }

const idOf = (standing: Standing | undefined): string | null => (standing?.state === 'known' ? standing.id : null)

/** Findings go to the first line of each ingredient they speak of. */
function findingsAt(bench: Bench, standings: Props['standings'], findings: readonly Finding[], at: number): Finding[] {
  const id = idOf(standings.get(bench.lines[at]?.key ?? ''))
  const isFirst = bench.lines.findIndex(({ key }) => idOf(standings.get(key)) === id) === at
  return id !== null && isFirst ? findings.filter(({ about }) => about.includes(id)) : []
}

function Head() {
  return (
    <thead role="rowgroup">
      <tr role="row">
        <th role="columnheader" scope="col">
          <span className="hidden">{text.recipe.order}</span>
        </th>
        {HEADS.map((head) => (
          <th key={head} scope="col" role="columnheader">
            {head}
          </th>
        ))}
        <th role="columnheader" scope="col">
          <span className="hidden">{text.tools.label}</span>
        </th>
      </tr>
    </thead>
  )
}

/** The recipe: one row a line, with its findings below it. */
export function RecipeTable({ bench, standings, check, change }: Props) {
  const sum = sumShares(bench.lines)
  const { batch_g } = bench.settings
  const isFull = bench.lines.filter(({ missing }) => missing).length >= MOST_MISSING
  const total_percent = sum.stated_percent + (sum.filler_percent ?? 0)
  const water = bench.lines.find(({ key }) => idOf(standings.get(key)) === WATER)
  return (
    <>
      <table className="recipe" role="table">
        <caption className="hidden">{text.recipe.caption}</caption>
        <Head />
        {bench.lines.map((line, at) => {
          const standing = standings.get(line.key) ?? UNREAD
          const id = idOf(standing)
          return (
            <RecipeLine
              key={line.key}
              line={line}
              at={at}
              count={bench.lines.length}
              neighbour={(bench.lines[at + 1] ?? bench.lines[at - 1])?.key ?? null}
              standing={standing}
              reply={check?.roles.find(({ ingredient }) => ingredient === id)}
              findings={findingsAt(bench, standings, line.aside ? [] : (check?.findings ?? []), at)}
              share_percent={shareOf(line, sum)}
              batch_g={batch_g}
              isFull={isFull}
              change={change}
            />
          )
        })}
        <tfoot role="rowgroup">
          <tr role="row">
            <th scope="row" role="rowheader" colSpan={2}>
              {text.recipe.total}
            </th>
            <td role="cell" className="total">
              {upTo(total_percent, 3)} %
            </td>
            <td role="cell" colSpan={4}>
              {batch_g === null ? '' : gramsText((total_percent / 100) * batch_g)}
            </td>
          </tr>
        </tfoot>
      </table>
      <SumNote
        bench={bench}
        sum={sum}
        water={water ? { key: water.key, name: nameOf(water, standings.get(water.key) ?? UNREAD, undefined) } : null}
        change={change}
      />
    </>
  )
}
