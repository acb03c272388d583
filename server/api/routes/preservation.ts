import { preservationRoute } from '#contract/preservation.ts'
import { preservationOf } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { soundFormula } from './shared.ts'
import type { App } from './shared.ts'

export function preservationRoutes(app: App, world: World): void {
  app.route({
    ...preservationRoute,
    handler: async ({ body: { formula } }) => ({
      ...preservationOf(world, soundFormula(world, formula)),
      graphVersion: world.knowledge.version,
    }),
  })
}
