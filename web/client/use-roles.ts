import type { Api } from '#contract/api.ts'
import { call } from './call.ts'
import { useQuestion } from './question.ts'
import type { Question } from './question.ts'

export type RolesReply = Api['GET /api/roles']['reply']
export type RoleShort = RolesReply['roles'][number]
export type RoleReply = Api['GET /api/roles/:id']['reply']

/** All roles. */
export function useRoles(when = true): Question<RolesReply> {
  return useQuestion({ key: ['roles'], ask: (signal) => call('GET /api/roles', { signal }), when })
}

/** One role and who plays it. */
export function useRole(id: string): Question<RoleReply> {
  return useQuestion({
    key: ['role', id],
    ask: (signal) => call('GET /api/roles/:id', { params: { id }, signal }),
  })
}
