import { mustBeDay } from '#api/must-be-day.ts'
import { labelRoute } from '#contract/label.ts'
import { buildLabel } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { soundFormula } from './shared.ts'
import type { App } from './shared.ts'

export function labelRoutes(app: App, world: World): void {
  app.route({
    ...labelRoute,
    handler: async ({ body: { formula, placedOn } }) => {
      mustBeDay(placedOn)
      const label = buildLabel(world, soundFormula(world, formula), placedOn)
      return { ...label, graphVersion: world.knowledge.version }
    },
  })
}
