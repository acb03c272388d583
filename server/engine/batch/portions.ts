import type { BatchPhase, Portion } from '#engine/model/batch.ts'
import { roundTo } from '#engine/units/round.ts'
import type { Placed } from './item.ts'
import type { Draft, Plan } from './plan.ts'

/** Digits after which a sum of scale steps is only binary noise. */
const DIGITS = 12

export const massOf = (units: number, step_g: number): number => Number((units * step_g).toPrecision(DIGITS))

/** Whole scale steps of a line by the step of work that adds it. */
function unitsByStep({ key, units }: Placed, plan: Plan, drafts: readonly Draft[]): [string, number][] {
  const adding = drafts.filter(({ adds }) => adds.includes(key)).map(({ id }) => id)
  const kept = (id: string): number => (plan.keptBack?.key === key ? (plan.keptBack.units.get(id) ?? 0) : 0)
  const [first = '', ...later] = adding
  const rest = units - later.reduce((sum, id) => sum + kept(id), 0)
  return [[first, rest], ...later.map((id): [string, number] => [id, kept(id)])]
}

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** Lines that go in together, under a letter each, in the order of the work. */
export function phasesOf(drafts: readonly Draft[], portions: ReadonlyMap<string, Portion[]>): BatchPhase[] {
  return drafts
    .filter(({ adds }) => adds.length > 0)
    .map(({ id, title, adds }, at) => ({
      phase: LETTERS[at] ?? String(at + 1),
      title,
      step: id,
      lines: adds,
      weigh_g: roundTo(
        adds
          .flatMap((key) => portions.get(key) ?? [])
          .reduce((sum, part) => sum + (part.step === id ? part.weigh_g : 0), 0),
        6,
      ),
    }))
}

/** Where each line goes and how much of it [g]; more than one place where water is kept back. */
export const portionsOf = (plan: Plan, drafts: readonly Draft[]): Map<string, Portion[]> =>
  new Map(
    plan.placed.map((item) => [
      item.key,
      unitsByStep(item, plan, drafts).map(([step, count]) => ({ step, weigh_g: massOf(count, plan.step_g) })),
    ]),
  )
