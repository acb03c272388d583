import { namesRoute } from '#contract/names.ts'
import { suggestNames } from '#engine/index.ts'
import { answer } from './answer.ts'
import { limitOf } from './query.ts'

export const nameAnswer = answer(namesRoute, ({ world }, { query: { text, limit } }) => ({
  names: suggestNames(world, text, limitOf(limit)?.limit),
  graphVersion: world.knowledge.version,
}))
