import type {} from '@fastify/swagger'
import { ApiError } from '#api/api-error.ts'
import { calculateRoute, CALCULATION_NAMES, calculationsRoute } from '#contract/calculate.ts'
import type { CalculateReply, CalculationName } from '#contract/calculate.ts'
import { calculate, CALCULATIONS } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { knownId } from './shared.ts'
import type { App } from './shared.ts'

/** Fields of an input that name a record. */
const NAMES_A_RECORD = new Set(['ingredient', 'from', 'to'])

/** @throws ApiError 404 with the nearest ids for the first name that is no record's */
function mustNameRecords(world: World, input: unknown, at = ''): void {
  if (typeof input !== 'object' || input === null) return
  for (const [key, value] of Object.entries(input)) {
    if (NAMES_A_RECORD.has(key) && typeof value === 'string') knownId(world, value, `${at}/${key}`)
    else mustNameRecords(world, value, `${at}/${key}`)
  }
}

/** Title and place of each source on record. */
const cited = ({ knowledge }: World, ids: readonly string[]): CalculateReply['cited'] =>
  ids.flatMap((id) => {
    const source = knowledge.sources.get(id)
    return source ? [{ id, title: source.title, locator: source.locator }] : []
  })

function reply(world: World, name: CalculationName, body: unknown): CalculateReply {
  mustNameRecords(world, body)
  const worked = answered(() => calculate(world, name, body as never))
  return { ...worked, cited: cited(world, worked.sources), graphVersion: world.knowledge.version }
}

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
    app.route({ ...titled(name), handler: async ({ body }) => reply(world, name, body) })
}
