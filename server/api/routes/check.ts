import { ApiError } from '#api/api-error.ts'
import { checkRoute } from '#contract/check.ts'
import { checkFormula } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { soundFormula } from './shared.ts'
import type { App } from './shared.ts'

/** @throws ApiError 400 for a day that the calendar does not have */
function mustBeDay(day: string | undefined): void {
  if (day === undefined) return
  const time = Date.parse(`${day}T00:00:00Z`)
  if (!Number.isNaN(time) && new Date(time).toISOString().startsWith(day)) return
  throw new ApiError(400, 'bad-request', `placedOn: there is no day ${day}`, { at: '/placedOn' })
}

export function checkRoutes(app: App, world: World): void {
  app.route({
    ...checkRoute,
    handler: async ({ body: { formula, placedOn } }) => {
      mustBeDay(placedOn)
      const report = checkFormula(world, soundFormula(world, formula), placedOn)
      return { ...report, graphVersion: world.knowledge.version }
    },
  })
}
