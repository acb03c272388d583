import { sourceRoute, sourcesRoute } from '#contract/sources.ts'
import { describeSource, listSources } from '#engine/index.ts'
import { answer } from './answer.ts'
import { ApiError } from './api-error.ts'
import { limitOf } from './query.ts'

export const sourceAnswers = [
  answer(sourcesRoute, ({ world }, { query: { limit, ...query } }) => ({
    ...listSources(world, { ...query, ...limitOf(limit) }),
    graphVersion: world.knowledge.version,
  })),
  answer(sourceRoute, ({ world }, { params: { id }, query: { limit, after = '0' } }) => {
    const source = describeSource(world, id, limitOf(limit)?.limit, Number(after))
    if (!source) throw new ApiError(404, 'unknown-source', `id: no source has the id ${id}`, { at: '/id' })
    return { ...source, graphVersion: world.knowledge.version }
  }),
]
