import { roleRoute, rolesRoute } from '#contract/roles.ts'
import { describeRole, listRoles } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { unknownRole } from './shared.ts'
import type { App } from './shared.ts'

export function roleRoutes(app: App, world: World): void {
  const graphVersion = world.knowledge.version
  app.route({ ...rolesRoute, handler: async () => ({ roles: listRoles(world), graphVersion }) })
  app.route({
    ...roleRoute,
    handler: async ({ params: { id } }) => {
      const role = describeRole(world, id)
      if (!role) throw unknownRole(id, '/id')
      return { ...role, graphVersion }
    },
  })
}
