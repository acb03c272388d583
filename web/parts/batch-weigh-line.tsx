import { Link } from 'wouter'
import type { BatchLine, BatchReply } from '#web/client/use-batch.ts'
import { claimHref } from '#web/format/claim.ts'
import { costText, onScale } from '#web/format/mass.ts'
import { upTo } from '#web/format/number.ts'
import type { BatchInputs } from '#web/state/batch-inputs.ts'
import { text } from '#web/text/text.ts'
import { NumberField } from './number-field.tsx'
import { Said } from './spoken.tsx'

interface Props {
  line: BatchLine
  /** step of the phase in which this row stands */
  step: string
  reply: BatchReply
  name: string
  typed: string | undefined
  isTicked: boolean
  onTick: () => void
  inputs: BatchInputs
  onInputs: (next: Partial<BatchInputs>) => void
}

const MOST_PRICE = 10_000_000

/** Why a line goes here, with the claims to open; and what its record warns of. */
function Why({ line, name }: { line: BatchLine; name: string }) {
  const { reasons, ingredient, cautions, strength_percent, strengthFrom } = line
  const words = text.batch.weigh
  return (
    <details className="why">
      <summary aria-label={words.whyOf(name)}>{words.why}</summary>
      <ul>
        {reasons.map(({ fact, claim }) => {
          const href = claim === undefined ? null : claimHref(claim, ingredient)
          return <li key={fact}>{href ? <Link href={href}>{fact}</Link> : fact}</li>
        })}
        {strength_percent !== undefined && (
          <li>
            {strengthFrom === 'stated'
              ? words.strengthStated(strength_percent)
              : words.strengthRecord(strength_percent)}
          </li>
        )}
        {cautions.map((caution) => (
          <li key={caution} className="bring">
            <Said>{caution}</Said>
          </li>
        ))}
      </ul>
    </details>
  )
}

const otherStep = ({ portions }: BatchLine, step: string, { steps }: BatchReply): string =>
  portions
    .filter((portion) => portion.step !== step)
    .map((portion) => steps.find(({ id }) => id === portion.step)?.title ?? portion.step)
    .join(', ')

/** One line to weigh: tick, name, grams, price. */
export function BatchWeighLine(props: Props) {
  const { line, step, reply, name, typed, isTicked, onTick, inputs, onInputs } = props
  const words = text.batch.weigh
  const portion = line.portions.find((one) => one.step === step)
  const weigh_g = portion?.weigh_g ?? line.weigh_g
  const isFirst = line.portions[0]?.step === step
  const others = otherStep(line, step, reply)
  const setPrice = (price: number | null) => {
    const { [line.ingredient]: _, ...rest } = inputs.prices
    onInputs({ prices: price === null ? rest : { ...rest, [line.ingredient]: price } })
  }
  return (
    <tr role="row" data-ticked={isTicked || undefined}>
      <td role="cell" className="tick-cell">
        <input type="checkbox" checked={isTicked} aria-label={words.doneOf(name)} onChange={onTick} />
      </td>
      <th role="rowheader" scope="row" className="line-name">
        <Link href={`/ingredient/${line.ingredient}`}>{name}</Link>
        {typed !== undefined && typed.toLowerCase() !== name.toLowerCase() && <small>{typed}</small>}
        {others !== '' && <small>{words.split(others)}</small>}
        {isFirst && <Why line={line} name={name} />}
      </th>
      <td role="cell" className="grams">
        {onScale(weigh_g, reply.step_g)}
      </td>
      <td role="cell" className="share">
        {isFirst ? upTo(line.share_percent, 3) : ''}
      </td>
      <td role="cell" className="price screen-only">
        {isFirst && (
          <NumberField
            label={words.priceOf(name)}
            hideLabel
            placeholder={words.priceHint}
            value={inputs.prices[line.ingredient] ?? null}
            min={0}
            max={MOST_PRICE}
            onChange={setPrice}
          />
        )}
      </td>
      <td role="cell" className={reply.cost === null ? 'cost screen-only' : 'cost'}>
        {isFirst && line.cost !== undefined ? costText(line.cost, '') : ''}
      </td>
      <td role="cell" className="lot print-cell" />
    </tr>
  )
}
