import { whatIfRoute } from '#contract/what-if.ts'
import { whatIfOf } from '#engine/index.ts'
import { answer } from './answer.ts'
import { inRange, soundFormula } from './guards.ts'

export const whatIfAnswer = answer(whatIfRoute, ({ world }, { body }) => {
  const formula = soundFormula(world, body.formula)
  return { ...inRange(() => whatIfOf(world, formula, body.change)), graphVersion: world.knowledge.version }
})
