import { Type } from 'typebox'
import type { Static } from 'typebox'
import { closed } from './closed.ts'

export const HealthReply = closed({
  status: Type.Literal('ok'),
  graph: closed({
    version: Type.String(),
    ingredients: Type.Number(),
    roles: Type.Number(),
    classes: Type.Number(),
    edges: Type.Number(),
    claims: Type.Number(),
  }),
})
export type HealthReply = Static<typeof HealthReply>

export const healthRoute = { method: 'GET', url: '/api/health', schema: { response: { 200: HealthReply } } } as const
