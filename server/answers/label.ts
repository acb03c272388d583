import { labelRoute } from '#contract/label.ts'
import { buildLabel } from '#engine/index.ts'
import { answer } from './answer.ts'
import { soundFormula } from './guards.ts'
import { mustBeDay } from './must-be-day.ts'

export const labelAnswer = answer(labelRoute, ({ world }, { body: { formula, placedOn } }) => {
  mustBeDay(placedOn)
  const label = buildLabel(world, soundFormula(world, formula), placedOn)
  return { ...label, graphVersion: world.knowledge.version }
})
