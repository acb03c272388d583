import { Type } from 'typebox'
import type { Static } from 'typebox'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'
import { ShortRecord } from './ingredients.ts'

export const RoleShort = closed({
  id: Type.String(),
  label: Type.String(),
  says: Type.String(),
  broader: Type.Optional(Type.String()),
  phase: Type.String(),
  confusedWith: Type.Array(Type.String()),
  players: Type.Number(),
})
export const RolesReply = closed({ roles: Type.Array(RoleShort), graphVersion: Type.String() })

export const RoleReply = closed({
  ...RoleShort.properties,
  narrower: Type.Array(Type.String()),
  playedBy: Type.Array(ShortRecord),
  swap: closed({
    scope: Type.String(),
    dose: Type.String(),
    lost: oneOf('fine', 'workable', 'no'),
    must: Type.Array(Type.String()),
    criteria: Type.Array(closed({ name: Type.String(), weight: Type.Number(), why: Type.String() })),
    irreplaceable: Type.Optional(Type.String()),
  }),
  graphVersion: Type.String(),
})
export type RoleReply = Static<typeof RoleReply>

export const rolesRoute = { method: 'GET', url: '/api/roles', schema: { response: { 200: RolesReply } } } as const
export const roleRoute = {
  method: 'GET',
  url: '/api/roles/:id',
  schema: { params: closed({ id: Type.String({ maxLength: 100 }) }), response: { 200: RoleReply, '4xx': ErrorReply } },
} as const
