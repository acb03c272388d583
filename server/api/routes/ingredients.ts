import { ApiError } from '#api/api-error.ts'
import { ingredientRoute, ingredientsRoute } from '#contract/ingredients.ts'
import { standInsRoute } from '#contract/swaps.ts'
import { describeIngredient, findIngredients, standIns } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { knownId, mustBeClass, mustBeRole } from './shared.ts'
import type { App } from './shared.ts'

const MOST = 200

/** A query is text, and stays text up to here. @throws ApiError 400 above the most that a page holds */
function limitOf(text: string | undefined): { limit: number } | undefined {
  if (text === undefined) return undefined
  const limit = Number(text)
  if (limit > MOST) throw new ApiError(400, 'bad-request', `limit: must be <= ${MOST}`, { at: '/limit' })
  return { limit }
}

export function ingredientRoutes(app: App, world: World): void {
  const graphVersion = world.knowledge.version
  app.route({
    ...ingredientsRoute,
    handler: async ({ query: { limit, ...query } }) => {
      const page = { ...query, ...limitOf(limit) }
      mustBeRole(world, query.role, '/role')
      mustBeClass(world, query.class, '/class')
      return { ...findIngredients(world, page), graphVersion }
    },
  })
  app.route({
    ...ingredientRoute,
    handler: async ({ params }) => {
      const description = describeIngredient(world, knownId(world, params.id, '/id'))
      if (!description) throw new Error(`${params.id} was found and then not`)
      return { ...description, graphVersion }
    },
  })
  app.route({
    ...standInsRoute,
    handler: async ({ params, query }) => {
      const id = knownId(world, params.id, '/id')
      mustBeRole(world, query.role, '/role')
      return standIns(world, id, query)
    },
  })
}
