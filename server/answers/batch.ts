import { batchRoute } from '#contract/batch.ts'
import { batchSheet } from '#engine/index.ts'
import { answer } from './answer.ts'
import { ApiError } from './api-error.ts'
import { inRange, soundFormula } from './guards.ts'

/** A day that the calendar does not have is 400, what the scale cannot weigh 422. */
function onADay<T>(work: () => T): T {
  try {
    return inRange(work)
  } catch (error) {
    if (!(error instanceof ApiError) || error.details.at !== '/date') throw error
    throw new ApiError(400, 'bad-request', error.message, { at: '/date' })
  }
}

export const batchAnswer = answer(batchRoute, ({ world }, { body }) => {
  const formula = soundFormula(world, body.formula)
  const sheet = onADay(() => batchSheet(world, { ...body, formula }))
  return { ...sheet, graphVersion: world.knowledge.version }
})
