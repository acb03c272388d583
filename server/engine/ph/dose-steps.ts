import type { Say } from '#engine/words/say.ts'
import { stepDown } from './amounts.ts'
import type { DoseStep } from './adjust-types.ts'

const MOST_STEPS = 5
/** A rest this small beside the step before it is not worth a weighing. */
const LEFTOVER = 0.05

/** About a drop of a 10 % solution in 100 g: a first step that shows something and spoils nothing. */
const TRIAL_SHARE = 5e-5

export const trialOf = (batch_g: number, strength_percent: number): number =>
  (batch_g * TRIAL_SHARE * 100) / strength_percent

/** One small step, to see how the product answers. */
export const trialStep = (add_g: number, of: string, say: Say): DoseStep[] => [
  {
    add_g: stepDown(add_g),
    of,
    then: say`Stir until even, wait some minutes, measure; this reading and the one before it tell how much more it takes`,
  },
]

/**
 * Steps towards an amount, none larger than the one before it; they stop at the amount or after five.
 * @param amount_g  what can go in without passing the target
 * @param first_g   largest first step
 */
export function stepsTo(amount_g: number, first_g: number, { of, say }: { of: string; say: Say }): DoseStep[] {
  const then = say`Stir until even, wait some minutes, measure; ask again with this reading before you add more`
  const steps: DoseStep[] = []
  let left = amount_g
  let last = first_g
  while (steps.length < MOST_STEPS) {
    const add_g = stepDown(Math.min(left, last))
    if (add_g <= 0 || (steps.length > 0 && add_g < last * LEFTOVER)) break
    steps.push({ add_g, of, then })
    left -= add_g
    last = add_g
  }
  return steps
}
