import { preservationRoute } from '#contract/preservation.ts'
import { preservationOf } from '#engine/index.ts'
import { answer } from './answer.ts'
import { soundFormula } from './guards.ts'

export const preservationAnswer = answer(preservationRoute, ({ world }, { body: { formula } }) => ({
  ...preservationOf(world, soundFormula(world, formula)),
  graphVersion: world.knowledge.version,
}))
