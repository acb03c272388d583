import { because, nameOf } from '#engine/checks/say.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { BatchRemark, Dilution } from '#engine/model/batch.ts'
import { dilutionFor, LEAST_UNITS, swells } from './dilution.ts'
import type { Placed } from './item.ts'
import { dissolvesIn, isPowder } from './roles-here.ts'

const text = (mass_g: number): string => String(Number(mass_g.toPrecision(6)))

const KINDS: Record<string, string> = {
  water: 'solution in',
  both: 'solution in',
  oil: 'solution in',
  silicone: 'solution in',
}

function stockText(item: Placed, dilution: Dilution, items: readonly Placed[], isDry: boolean): string {
  const { strength_percent, pure_g, carrier_g, take_g, less_carrier_g } = dilution
  const carrier = items.find(({ key }) => key === dilution.carrier)
  const of = carrier ? nameOf(carrier.line.subject) : dilution.carrier
  const kind = isDry
    ? 'mixture, ground with'
    : swells(item.line)
      ? 'stock gel in'
      : (KINDS[dissolvesIn(item.line) ?? ''] ?? 'dispersion in')
  return `Make a ${strength_percent} % ${kind} ${of}: ${text(pure_g)} g and ${text(carrier_g)} g. Take ${text(take_g)} g of it and ${text(less_carrier_g)} g less of ${of}`
}

interface Scale {
  context: FormulaContext
  items: readonly Placed[]
  step_g: number
  batch_g: number
}

function tooSmall(item: Placed, { context, items, step_g, batch_g }: Scale): BatchRemark {
  const name = nameOf(item.line.subject)
  const isDry = context.form === 'powder' && isPowder(item.line)
  const dilution = dilutionFor(context, item, items, step_g)
  const times = (LEAST_UNITS * step_g) / item.exact_g
  const larger_g = Number((batch_g * times).toPrecision(3))
  const finer_g = 10 ** Math.floor(Math.log10(item.exact_g / LEAST_UNITS) + 1e-9)
  const isZero = item.units === 0
  return {
    kind: isZero ? 'line-is-zero' : 'line-too-small',
    severity: 'warn',
    lines: [item.key],
    message: isZero
      ? `${name}: ${text(item.exact_g)} g is less than half a step of the scale and would be left out`
      : `${name}: ${text(item.exact_g)} g is ${text(item.exact_g / step_g)} ${item.exact_g === step_g ? 'step' : 'steps'} of the scale; it can be off by a tenth and more`,
    remedy: [
      dilution
        ? stockText(item, dilution, items, isDry)
        : 'A stock of it would be larger than the batch, or no line of the recipe can carry it',
      `or make ${text(larger_g)} g and more, or weigh on a scale of ${text(finer_g)} g`,
    ].join('; '),
    ...(dilution && { dilution }),
    because: [
      because(`a scale of ${text(step_g)} g weighs from about ${text(LEAST_UNITS * step_g)} g`),
      because('usual practice: ten steps at least'),
    ],
  }
}

/** Lines that the scale cannot show well, each with what to do about it. */
export const smallLines = (scale: Scale): BatchRemark[] =>
  scale.items.filter(({ units }) => units < LEAST_UNITS).map((item) => tooSmall(item, scale))

export interface Size {
  batch_g: number
  overage_percent: number
  step_g: number
  weighed_g: number
  sum_percent: number
}

const SAME = 1e-9
const OFF_PERCENT = 1e-6

/** Where the batch is not what was asked: no whole number of scale steps, or shares that are not quite 100. */
export function sizeRemarks({ batch_g, overage_percent, step_g, weighed_g, sum_percent }: Size): BatchRemark[] {
  const asked_g = batch_g * (1 + overage_percent / 100)
  const remarks: BatchRemark[] = []
  if (Math.abs(asked_g - weighed_g) > SAME * Math.max(1, asked_g))
    remarks.push({
      kind: 'batch-rounded',
      severity: 'note',
      lines: [],
      message: `${text(asked_g)} g is no whole number of scale steps of ${text(step_g)} g; the lines add up to ${text(weighed_g)} g`,
      because: [
        because(
          overage_percent > 0 ? `${text(batch_g)} g and ${text(overage_percent)} % on top` : `${text(batch_g)} g asked`,
        ),
      ],
    })
  if (Math.abs(sum_percent - 100) > OFF_PERCENT)
    remarks.push({
      kind: 'shares-scaled',
      severity: 'note',
      lines: [],
      message: `The shares add up to ${text(sum_percent)} %; they were scaled to 100 % for weighing`,
      because: [because('sums within 0.05 % of 100 are taken')],
    })
  return remarks
}
