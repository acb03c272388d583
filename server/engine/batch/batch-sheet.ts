import { runChecks, verdictOf } from '#engine/checks/run.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { numberOf } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { BatchAsk, BatchLine, BatchPhase, BatchSheet, BatchStep, Portion } from '#engine/model/batch.ts'
import { mustBeIn } from '#engine/units/must-be-in.ts'
import { roundTo } from '#engine/units/round.ts'
import { batchCost, costOf } from './cost.ts'
import type { Prices } from './cost.ts'
import { looksOf } from './looks.ts'
import { stepsOf } from './flow.ts'
import type { Placed } from './item.ts'
import { itemsOf } from './items.ts'
import { makePlan } from './make-plan.ts'
import { massOf, phasesOf, portionsOf } from './portions.ts'
import { contentsOf, edgesOf } from './order-graph.ts'
import type { Draft, Plan } from './plan.ts'
import { sizeRemarks, smallLines } from './remarks-weighing.ts'
import { workRemarks } from './remarks-work.ts'

const STEP_G = 0.1

function strengthOf({ line }: Placed): Pick<BatchLine, 'strength_percent' | 'strengthFrom'> {
  if (line.strength_percent !== undefined) return { strength_percent: line.strength_percent, strengthFrom: 'stated' }
  const usual_percent = numberOf(line.subject, 'active_percent')
  return usual_percent === undefined ? {} : { strength_percent: roundTo(usual_percent, 2), strengthFrom: 'record' }
}

interface Sheet {
  ask: BatchAsk
  plan: Plan
  drafts: readonly Draft[]
  portions: ReadonlyMap<string, Portion[]>
  phases: readonly BatchPhase[]
  prices: Prices | null
}

function lineOf(item: Placed, { plan, portions, phases, prices }: Sheet): BatchLine {
  const { key, line, units, reasons } = item
  const parts = portions.get(key) ?? []
  const cost = prices === null ? undefined : costOf(item, plan.step_g, prices)
  return {
    line: key,
    ingredient: line.subject.id,
    inci: line.subject.inci,
    share_percent: roundTo(line.share_percent, 6),
    weigh_g: massOf(units, plan.step_g),
    phase: phases.find(({ step }) => step === parts[0]?.step)?.phase ?? '',
    portions: parts,
    reasons,
    ...strengthOf(item),
    cautions: line.subject.cautions,
    ...(cost !== undefined && { cost: roundTo(cost, 4) }),
  }
}

function stepOf(step: Draft, { drafts, portions }: Sheet): BatchStep {
  const { after: _after, isMain: _isMain, weighBack, ...rest } = step
  if (weighBack !== true) return rest
  const held_g = contentsOf(drafts, step.id).reduce(
    (sum, { line, step: id }) => sum + (portions.get(line)?.find((part) => part.step === id)?.weigh_g ?? 0),
    0,
  )
  return { ...rest, holds_g: roundTo(held_g, 6) }
}

function pricesOf(ask: BatchAsk, world: World): Prices | null {
  if (ask.prices_per_kg === undefined) return null
  const perKg = new Map(Object.entries(ask.prices_per_kg).map(([id, price]) => [world.find(id)?.id ?? id, price]))
  return { perKg, currency: ask.currency ?? null }
}

/** Whole scale steps of the batch with what is weighed on top. @throws RangeError for less than one step */
function unitsOf({ batch_g, overage_percent = 0 }: BatchAsk, step_g: number): number {
  mustBeIn('batch_g', batch_g, 0, 1_000_000)
  mustBeIn('step_g', step_g, 0.001, 1000)
  mustBeIn('overage_percent', overage_percent, 0, 100)
  const units = Math.round((batch_g * (1 + overage_percent / 100)) / step_g)
  if (units < 1) throw new RangeError(`batch_g: expected at least one step of the scale (${step_g} g), got ${batch_g}`)
  return units
}

/**
 * What to weigh and in which order to work, for one batch of a formula.
 *
 *   line [g] = batch [g] · (1 + overage / 100) · share / Σ share, in whole scale steps by largest remainder
 *
 * The grams add up to the batch to the step. Every temperature and time names the claim it comes from, the recipe, or
 * usual practice. Neither grams nor steps change what the check says of the formula.
 *
 * @throws RangeError for a batch of less than one scale step, or a day that the calendar does not have
 */
export function batchSheet(world: World, ask: BatchAsk): BatchSheet {
  const step_g = ask.step_g ?? STEP_G
  const overage_percent = ask.overage_percent ?? 0
  const units = unitsOf(ask, step_g)
  const context = buildContext(ask.formula, world)
  const items = itemsOf(context, units, step_g)
  const date = ask.date ?? null
  const plan = makePlan({ context, items, step_g, date, batchCode: ask.batchCode ?? null })
  const drafts = stepsOf(plan)
  const portions = portionsOf(plan, drafts)
  const phases = phasesOf(drafts, portions)
  const prices = pricesOf(ask, world)
  const sheet: Sheet = { ask, plan, drafts, portions, phases, prices }
  const order = phases.flatMap(({ lines }) => lines)
  const lines = [...plan.placed]
    .sort((a, b) => order.indexOf(a.key) - order.indexOf(b.key))
    .map((item) => lineOf(item, sheet))
  const findings = runChecks(context)
  const sum_percent = roundTo(
    context.lines.reduce((sum, line) => sum + line.share_percent, 0),
    9,
  )
  const weighed_g = massOf(units, step_g)
  return {
    batch_g: ask.batch_g,
    overage_percent,
    weighed_g,
    step_g,
    form: context.form,
    formDerived: context.formDerived,
    process: plan.process,
    date,
    batchCode: plan.batchCode,
    lines,
    phases,
    steps: drafts.map((step) => stepOf(step, sheet)),
    edges: edgesOf(drafts),
    order: drafts.map(({ id }) => id),
    looks: looksOf(plan),
    remarks: [
      ...sizeRemarks({ batch_g: ask.batch_g, overage_percent, step_g, weighed_g, sum_percent }, world.say),
      ...smallLines({ context, items: plan.placed, step_g, batch_g: ask.batch_g }),
      ...workRemarks(plan),
    ],
    cost: prices === null ? null : batchCost(items, step_g, prices),
    verdict: verdictOf(findings),
    findings,
  }
}
