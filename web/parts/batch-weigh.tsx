import type { BatchReply } from '#web/client/use-batch.ts'
import { costText, onScale } from '#web/format/mass.ts'
import type { BatchInputs } from '#web/state/batch-inputs.ts'
import type { TickStore } from '#web/state/batch-ticks.ts'
import { text } from '#web/text/text.ts'
import { BatchWeighLine } from './batch-weigh-line.tsx'
import { Said } from './spoken.tsx'

interface Props {
  reply: BatchReply
  ticks: TickStore
  nameOf: (line: string) => string
  typed: ReadonlyMap<string, string>
  inputs: BatchInputs
  onInputs: (next: Partial<BatchInputs>) => void
}

function Head({ priced }: { priced: boolean }) {
  const words = text.batch.weigh
  return (
    <thead role="rowgroup">
      <tr role="row">
        <th role="columnheader" scope="col" className="tick-cell">
          <span className="hidden">{words.done}</span>
        </th>
        <th role="columnheader" scope="col">
          {words.ingredient}
        </th>
        <th role="columnheader" scope="col" className="grams">
          {words.grams}
        </th>
        <th role="columnheader" scope="col" className="share">
          {words.share}
        </th>
        <th role="columnheader" scope="col" className="price screen-only">
          {words.price}
        </th>
        <th role="columnheader" scope="col" className={priced ? 'cost' : 'cost screen-only'}>
          {words.cost}
        </th>
        <th role="columnheader" scope="col" className="lot print-cell">
          {words.lot}
        </th>
      </tr>
    </thead>
  )
}

/** Sum of the prices, or which are missing. */
function Cost({ reply, nameOf, currency }: Pick<Props, 'reply' | 'nameOf'> & { currency: string }) {
  const { cost } = reply
  if (cost === null) return null
  const words = text.batch.weigh
  const missing = cost.missing.map(nameOf).join(', ')
  return (
    <p className="batch-cost">
      {cost.total !== null
        ? `${words.total(costText(cost.total, currency))}${cost.per_100_g === null ? '' : `, ${words.per100(costText(cost.per_100_g, currency))}`}`
        : words.known(costText(cost.known, currency))}
      {missing !== '' && `. ${words.missing(missing)}`}
    </p>
  )
}

type Phase = BatchReply['phases'][number]

/** The lines that are weighed together, under the letter of their phase. */
function PhaseRows({ phase, ...props }: Props & { phase: Phase }) {
  const { reply, ticks, nameOf, typed, inputs, onInputs } = props
  const lines = phase.lines.flatMap((key) => reply.lines.find(({ line }) => line === key) ?? [])
  return (
    <tbody role="rowgroup">
      <tr role="row" className="phase">
        <th role="rowheader" scope="rowgroup" colSpan={2}>
          <b className="letter">{phase.phase}</b> <Said>{phase.title}</Said>
        </th>
        <td role="cell" className="grams">
          {onScale(phase.weigh_g, reply.step_g)}
        </td>
        <td role="cell" colSpan={4} />
      </tr>
      {lines.map((line) => (
        <BatchWeighLine
          key={line.line}
          line={line}
          step={phase.step}
          reply={reply}
          name={nameOf(line.line)}
          typed={typed.get(line.ingredient)}
          isTicked={ticks.isTicked(`${phase.phase} ${line.line}`)}
          onTick={() => ticks.toggle(`${phase.phase} ${line.line}`)}
          inputs={inputs}
          onInputs={onInputs}
        />
      ))}
    </tbody>
  )
}

/** The table to weigh by: a part for each phase, a tick for each line. */
export function BatchWeigh(props: Props) {
  const { reply, ticks, nameOf, inputs } = props
  const { phases, weighed_g, step_g, cost } = reply
  const words = text.batch.weigh
  return (
    <section className="card batch-weigh" aria-labelledby="batch-weigh-title">
      <h2 id="batch-weigh-title">{words.title}</h2>
      <p className="remark screen-only">{words.lead(step_g)}</p>
      <table className="weigh" role="table">
        <caption className="hidden">{words.caption}</caption>
        <Head priced={cost !== null} />
        {phases.map((phase) => (
          <PhaseRows key={phase.phase} phase={phase} {...props} />
        ))}
        <tfoot role="rowgroup">
          <tr role="row">
            <th role="rowheader" scope="row" colSpan={2}>
              {words.sum}
            </th>
            <td role="cell" className="grams">
              {onScale(weighed_g, step_g)}
            </td>
            <td role="cell" colSpan={4} />
          </tr>
        </tfoot>
      </table>
      <Cost reply={reply} nameOf={nameOf} currency={inputs.currency} />
      {ticks.any && (
        <button type="button" className="quiet screen-only" onClick={ticks.clear}>
          {words.clear}
        </button>
      )}
    </section>
  )
}
