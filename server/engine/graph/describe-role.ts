import type { Role, SwapSpec } from '#engine/model/records.ts'
import { shortRecord } from './short-record.ts'
import type { ShortRecord } from './short-record.ts'
import type { World } from './world.ts'

export interface RoleShort {
  id: string
  label: string
  says: string
  broader?: string
  phase: string
  confusedWith: string[]
  players: number
}

export interface RoleDescription extends RoleShort {
  narrower: string[]
  playedBy: ShortRecord[]
  swap: {
    scope: string
    dose: string
    lost: SwapSpec['lost']
    must: string[]
    criteria: { name: string; weight: number; why: string }[]
    irreplaceable?: string
  }
}

const roleShort = (role: Role, world: World): RoleShort => ({
  id: role.id,
  label: role.label,
  says: role.says,
  ...(role.broader !== undefined && { broader: role.broader }),
  phase: role.phase,
  confusedWith: role.confusedWith,
  players: world.players(role.id).length,
})

const swapOf = ({ scope, dose, lost, must, criteria, irreplaceable }: SwapSpec): RoleDescription['swap'] => ({
  scope,
  dose,
  lost,
  must: must.map(({ why }) => why),
  criteria: criteria.map(({ property, group, by, weight, why }) => ({ name: property ?? group ?? by, weight, why })),
  ...(irreplaceable !== undefined && { irreplaceable }),
})

/** All roles, by id. */
export const listRoles = (world: World): RoleShort[] =>
  [...world.knowledge.roles.values()].map((role) => roleShort(role, world)).sort((a, b) => (a.id < b.id ? -1 : 1))

/** One role with who plays it or a narrower one, by id; null when there is no such role. */
export function describeRole(world: World, id: string): RoleDescription | null {
  const role = world.knowledge.roles.get(id)
  if (!role) return null
  const narrower = [...world.knowledge.roles.values()].filter((one) => one.broader === id).map((one) => one.id)
  return {
    ...roleShort(role, world),
    narrower: narrower.sort(),
    playedBy: world.players(id).map(shortRecord),
    swap: swapOf(role.swap),
  }
}
