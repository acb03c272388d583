import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { RawData } from '#engine/knowledge/raw.ts'
import type { Lint } from './lint.ts'
import { membersOf } from './members.ts'

const LEAST = 5

/** Roles that say why so few play them. */
export function statedFew(raw: RawData): ReadonlyMap<string, string> {
  const roles = isObject(raw.roles.data) && isObject(raw.roles.data['roles']) ? raw.roles.data['roles'] : {}
  return new Map(
    Object.entries(roles).flatMap(([id, entry]) =>
      isObject(entry) && typeof entry['few'] === 'string' ? [[id, entry['few']] as const] : [],
    ),
  )
}

/** Guards against a role that nearly nothing plays: a search for a stand-in has nowhere to go. `few` states why it is so. */
export const roleHasFiveMembers: Lint = (raw, vocabulary) => {
  const few = statedFew(raw)
  const counts = new Map<string, number>()
  for (const { allRoles } of membersOf(vocabulary))
    for (const role of allRoles) counts.set(role, (counts.get(role) ?? 0) + 1)
  return [...vocabulary.roles.keys()].flatMap((role) => {
    const count = counts.get(role) ?? 0
    const path = `${raw.roles.path}/roles/${role}`
    if (count === 0) return [{ path, message: 'nothing plays this role' }]
    if (count < LEAST && !few.has(role))
      return [{ path, message: `${count} play this role; add members or say in "few" why there are no more` }]
    if (count >= LEAST && few.has(role)) return [{ path: `${path}/few`, message: `${count} play this role: not few` }]
    return []
  })
}
