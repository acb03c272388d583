import { useMutation } from '@tanstack/react-query'
import type { Api } from '#contract/api.ts'
import { call } from './call.ts'

type Body = Api['POST /api/learn/what-if']['body']
export type RecipeChange = Body['change']
export type WhatIfReply = Api['POST /api/learn/what-if']['reply']

/** Has a change of a recipe tried out. */
export const useWhatIf = () => useMutation({ mutationFn: (body: Body) => call('POST /api/learn/what-if', { body }) })
