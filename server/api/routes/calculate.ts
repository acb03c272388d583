import type {} from '@fastify/swagger'
import { ApiError } from '#api/api-error.ts'
import { calculateRoute, CALCULATION_NAMES, calculationsRoute } from '#contract/calculate.ts'
import type { CalculationName } from '#contract/calculate.ts'
import { calculate, CALCULATIONS } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { App } from './shared.ts'

/** What the relation cannot bear is 422; the message names the argument. */
export function answered<T>(work: () => T): T {
  try {
    return work()
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    const [argument] = error.message.split(':')
    throw new ApiError(422, 'out-of-range', error.message, { at: `/${argument}` })
  }
}

/** The route with its question as the summary of the description. */
function titled(name: CalculationName) {
  const route = calculateRoute(name)
  return { ...route, schema: { ...route.schema, summary: CALCULATIONS[name].title } }
}

export function calculateRoutes(app: App, world: World): void {
  const graphVersion = world.knowledge.version
  app.route({
    ...calculationsRoute,
    handler: async () => ({
      calculations: CALCULATION_NAMES.map((name) => ({
        name,
        title: CALCULATIONS[name].title,
        input: calculateRoute(name).schema.body,
      })),
      graphVersion,
    }),
  })
  for (const name of CALCULATION_NAMES)
    app.route({
      ...titled(name),
      handler: async ({ body }) => ({ ...answered(() => calculate(world, name, body as never)), graphVersion }),
    })
}
