import type { BatchReply } from '#web/client/use-batch.ts'
import type { TickStore } from '#web/state/batch-ticks.ts'
import { text } from '#web/text/text.ts'
import { BatchStepItem } from './batch-step-item.tsx'

interface Props {
  reply: BatchReply
  ticks: TickStore
  nameOf: (line: string) => string
}

/** Numbers of the steps that have to be done before, where that is not just the step above. */
function waitsFor({ edges, order }: BatchReply, id: string): number[] {
  const at = order.indexOf(id)
  const before = edges.filter(({ to }) => to === id).map(({ from }) => order.indexOf(from) + 1)
  return before.length === 1 && before[0] === at ? [] : before.sort((a, b) => a - b)
}

/** The order of work as a list that keeps every edge of the graph. */
export function BatchSteps({ reply, ticks, nameOf }: Props) {
  const { order, steps, lines, step_g } = reply
  return (
    <section className="card batch-steps" aria-labelledby="batch-steps-title">
      <h2 id="batch-steps-title">{text.batch.steps.title}</h2>
      <p className="remark screen-only">{text.batch.steps.lead}</p>
      <ol className="work">
        {order.map((id) => {
          const step = steps.find((one) => one.id === id)
          return (
            step && (
              <BatchStepItem
                key={id}
                step={step}
                lines={lines}
                step_g={step_g}
                waitsFor={waitsFor(reply, id)}
                nameOf={nameOf}
                isTicked={ticks.isTicked(`step ${id}`)}
                onTick={() => ticks.toggle(`step ${id}`)}
              />
            )
          )
        })}
      </ol>
    </section>
  )
}
