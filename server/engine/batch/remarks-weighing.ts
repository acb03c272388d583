import { because, nameOf } from '#engine/checks/say.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import type { BatchRemark, Dilution } from '#engine/model/batch.ts'
import type { Say } from '#engine/words/say.ts'
import { dilutionFor, LEAST_UNITS, swells } from './dilution.ts'
import type { Placed } from './item.ts'
import { dissolvesIn, isPowder } from './roles-here.ts'

/** As many digits as a scale can mean. */
const figure = (mass_g: number): number => Number(mass_g.toPrecision(6))

interface Scale {
  context: FormulaContext
  items: readonly Placed[]
  step_g: number
  batch_g: number
}

type Stock = 'mixture' | 'gel' | 'solution' | 'dispersion'

function stockOf({ line }: Placed, { form }: FormulaContext): Stock {
  if (form === 'powder' && isPowder(line)) return 'mixture'
  if (swells(line)) return 'gel'
  return ['water', 'both', 'oil', 'silicone'].includes(dissolvesIn(line) ?? '') ? 'solution' : 'dispersion'
}

/** How to make the stock: its strength [%], the carrier, and of what so much [g]. */
const STOCK: Record<Stock, (stock: { say: Say; strength: number; of: string; parts: string }) => string> = {
  mixture: ({ say, strength, of, parts }) => say`Make a ${strength} % mixture, ground with ${of}: ${parts}`,
  gel: ({ say, strength, of, parts }) => say`Make a ${strength} % stock gel in ${of}: ${parts}`,
  solution: ({ say, strength, of, parts }) => say`Make a ${strength} % solution in ${of}: ${parts}`,
  dispersion: ({ say, strength, of, parts }) => say`Make a ${strength} % dispersion in ${of}: ${parts}`,
}

function stockText(item: Placed, dilution: Dilution, { context, items }: Scale): string {
  const { say } = context.world
  const { pure_g, carrier_g, take_g, less_carrier_g } = dilution
  const carrier = items.find(({ key }) => key === dilution.carrier)
  const of = carrier ? nameOf(carrier.line.subject) : dilution.carrier
  const parts = say`${figure(pure_g)} g and ${figure(carrier_g)} g. Take ${figure(take_g)} g of it and ${figure(less_carrier_g)} g less of ${of}`
  return STOCK[stockOf(item, context)]({ say, strength: dilution.strength_percent, of, parts })
}

function smallText({ line, units, exact_g }: Placed, { context, step_g }: Scale): string {
  const { say } = context.world
  const name = nameOf(line.subject)
  if (units === 0) return say`${name}: ${figure(exact_g)} g is less than half a step of the scale and would be left out`
  return exact_g === step_g
    ? say`${name}: ${figure(exact_g)} g is 1 step of the scale; it can be off by a tenth and more`
    : say`${name}: ${figure(exact_g)} g is ${figure(exact_g / step_g)} steps of the scale; it can be off by a tenth and more`
}

function tooSmall(item: Placed, scale: Scale): BatchRemark {
  const { context, items, step_g, batch_g } = scale
  const { say } = context.world
  const dilution = dilutionFor(context, item, items, step_g)
  const times = (LEAST_UNITS * step_g) / item.exact_g
  const larger_g = Number((batch_g * times).toPrecision(3))
  const finer_g = 10 ** Math.floor(Math.log10(item.exact_g / LEAST_UNITS) + 1e-9)
  return {
    kind: item.units === 0 ? 'line-is-zero' : 'line-too-small',
    severity: 'warn',
    lines: [item.key],
    message: smallText(item, scale),
    remedy: [
      dilution
        ? stockText(item, dilution, scale)
        : say`A stock of it would be larger than the batch, or no line of the recipe can carry it`,
      say`or make ${figure(larger_g)} g and more, or weigh on a scale of ${figure(finer_g)} g`,
    ].join('; '),
    ...(dilution && { dilution }),
    because: [
      because(say`a scale of ${figure(step_g)} g weighs from about ${figure(LEAST_UNITS * step_g)} g`),
      because(say`usual practice: ten steps at least`),
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
export function sizeRemarks(
  { batch_g, overage_percent, step_g, weighed_g, sum_percent }: Size,
  say: Say,
): BatchRemark[] {
  const asked_g = batch_g * (1 + overage_percent / 100)
  const remarks: BatchRemark[] = []
  if (Math.abs(asked_g - weighed_g) > SAME * Math.max(1, asked_g))
    remarks.push({
      kind: 'batch-rounded',
      severity: 'note',
      lines: [],
      message: say`${figure(asked_g)} g is no whole number of scale steps of ${figure(step_g)} g; the lines add up to ${figure(weighed_g)} g`,
      because: [
        because(
          overage_percent > 0
            ? say`${figure(batch_g)} g and ${figure(overage_percent)} % on top`
            : say`${figure(batch_g)} g asked`,
        ),
      ],
    })
  if (Math.abs(sum_percent - 100) > OFF_PERCENT)
    remarks.push({
      kind: 'shares-scaled',
      severity: 'note',
      lines: [],
      message: say`The shares add up to ${figure(sum_percent)} %; they were scaled to 100 % for weighing`,
      because: [because(say`sums within 0.05 % of 100 are taken`)],
    })
  return remarks
}
