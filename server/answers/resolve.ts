import { resolveRoute } from '#contract/resolve.ts'
import { resolveNames } from '#engine/index.ts'
import { answer } from './answer.ts'

export const resolveAnswer = answer(resolveRoute, ({ world }, { body }) => ({
  results: resolveNames(world, body.names),
  graphVersion: world.knowledge.version,
}))
