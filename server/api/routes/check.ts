import { mustBeDay } from '#api/must-be-day.ts'
import { checkRoute } from '#contract/check.ts'
import { checkFormula } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { soundFormula } from './shared.ts'
import type { App } from './shared.ts'

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
