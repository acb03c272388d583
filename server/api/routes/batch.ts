import { ApiError } from '#api/api-error.ts'
import { batchRoute } from '#contract/batch.ts'
import { batchSheet } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { soundFormula } from './shared.ts'
import type { App } from './shared.ts'

/** A day that the calendar does not have is 400, what the scale cannot weigh 422; the message names the argument. */
function answered<T>(work: () => T): T {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    const [argument = ''] = error.message.split(':')
    const at = `/${argument}`
    if (argument === 'date') throw new ApiError(400, 'bad-request', error.message, { at })
    throw new ApiError(422, 'out-of-range', error.message, { at })
  }
}

export function batchRoutes(app: App, world: World): void {
  app.route({
    ...batchRoute,
    handler: async ({ body }) => {
      const formula = soundFormula(world, body.formula)
      const sheet = answered(() => batchSheet(world, { ...body, formula }))
      return { ...sheet, graphVersion: world.knowledge.version }
    },
  })
}
