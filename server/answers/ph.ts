import { phAdjustRoute, phWindowRoute } from '#contract/ph.ts'
import { adjustPh, phWindow } from '#engine/index.ts'
import { answer } from './answer.ts'
import { inRange, knownId, soundFormula } from './guards.ts'

export const phAnswers = [
  answer(phWindowRoute, ({ world }, { body }) => ({
    ...phWindow(world, soundFormula(world, body.formula)),
    graphVersion: world.knowledge.version,
  })),
  answer(phAdjustRoute, ({ world }, { body }) => {
    const formula = soundFormula(world, body.formula)
    const chosen = body.with === undefined ? {} : { with: knownId(world, body.with, '/with') }
    const adjusted = inRange(() => adjustPh(world, { ...body, ...chosen, formula }))
    return { ...adjusted, graphVersion: world.knowledge.version }
  }),
]
