import { phAdjustRoute, phWindowRoute } from '#contract/ph.ts'
import { adjustPh, phWindow } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { answered } from './calculate.ts'
import { knownId, soundFormula } from './shared.ts'
import type { App } from './shared.ts'

export function phRoutes(app: App, world: World): void {
  const graphVersion = world.knowledge.version
  app.route({
    ...phWindowRoute,
    handler: async ({ body }) => ({ ...phWindow(world, soundFormula(world, body.formula)), graphVersion }),
  })
  app.route({
    ...phAdjustRoute,
    handler: async ({ body }) => {
      const formula = soundFormula(world, body.formula)
      const chosen = body.with === undefined ? {} : { with: knownId(world, body.with, '/with') }
      return { ...answered(() => adjustPh(world, { ...body, ...chosen, formula })), graphVersion }
    },
  })
}
