import { healthRoute } from '#contract/health.ts'
import { healthOf } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { App } from './shared.ts'

export function healthRoutes(app: App, world: World): void {
  const health = healthOf(world) // the world never changes
  app.route({ ...healthRoute, handler: async () => health })
}
