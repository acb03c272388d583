import { checkRoute } from '#contract/check.ts'
import { checkFormula } from '#engine/index.ts'
import { answer } from './answer.ts'
import { soundFormula } from './guards.ts'
import { mustBeDay } from './must-be-day.ts'

export const checkAnswer = answer(checkRoute, ({ world }, { body: { formula, placedOn } }) => {
  mustBeDay(placedOn)
  const report = checkFormula(world, soundFormula(world, formula), placedOn)
  return { ...report, graphVersion: world.knowledge.version }
})
