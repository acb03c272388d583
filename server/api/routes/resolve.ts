import { resolveRoute } from '#contract/resolve.ts'
import { resolveNames } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { App } from './shared.ts'

export function resolveRoutes(app: App, world: World): void {
  const graphVersion = world.knowledge.version
  app.route({
    ...resolveRoute,
    handler: async ({ body }) => ({ results: resolveNames(world, body.names), graphVersion }),
  })
}
