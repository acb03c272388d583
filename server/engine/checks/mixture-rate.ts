import { separationRate } from '#engine/chemistry/mixtures/separation-rate.ts'
import type { SeparationRate } from '#engine/chemistry/mixtures/separation-rate.ts'
import type { FormulaContext } from '#engine/formula/context.ts'
import { mixtureDataOf } from '#engine/knowledge/mixture-data.ts'
import type { MixtureHere } from './mixture-here.ts'

/** From here on nearly all such mixtures separate, and a warning is right nine times in ten. */
export const WARN_FROM_RATE = 0.8

/** Rate of the mixture in a formula, or null where measured mixtures do not speak for it. */
export function rateHere({ mixture, outside }: MixtureHere, { world }: FormulaContext): SeparationRate | null {
  const { model } = mixtureDataOf(world.knowledge)
  return mixture && model && outside.length === 0 ? separationRate(mixture, model) : null
}
