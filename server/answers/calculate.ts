import { calculateRoute, CALCULATION_NAMES, calculationsRoute } from '#contract/calculate.ts'
import type { CalculateReply, CalculationName } from '#contract/calculate.ts'
import { calculate, CALCULATIONS } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { answer } from './answer.ts'
import { inRange, knownId } from './guards.ts'

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
  const worked = inRange(() => calculate(world, name, body as never))
  return { ...worked, cited: cited(world, worked.sources), graphVersion: world.knowledge.version }
}

/** The route with its question as the summary of the description. */
function titled(name: CalculationName) {
  const route = calculateRoute(name)
  return { ...route, schema: { ...route.schema, summary: CALCULATIONS[name].title } }
}

export const calculateAnswers = [
  answer(calculationsRoute, ({ world }) => ({
    calculations: CALCULATION_NAMES.map((name) => ({
      name,
      title: CALCULATIONS[name].title,
      input: calculateRoute(name).schema.body,
    })),
    graphVersion: world.knowledge.version,
  })),
  ...CALCULATION_NAMES.map((name) => answer(titled(name), ({ world }, { body }) => reply(world, name, body))),
]
