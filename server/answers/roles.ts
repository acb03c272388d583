import { roleRoute, rolesRoute } from '#contract/roles.ts'
import { describeRole, listRoles } from '#engine/index.ts'
import { answer } from './answer.ts'
import { unknownRole } from './guards.ts'

export const roleAnswers = [
  answer(rolesRoute, ({ world }) => ({ roles: listRoles(world), graphVersion: world.knowledge.version })),
  answer(roleRoute, ({ world }, { params: { id } }) => {
    const role = describeRole(world, id)
    if (!role) throw unknownRole(id, '/id')
    return { ...role, graphVersion: world.knowledge.version }
  }),
]
