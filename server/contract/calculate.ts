import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Worked } from '#engine/model/calculation.ts'
import { CALCULATION_INPUTS } from '#engine/model/inputs/index.ts'
import type { CalculationName } from '#engine/model/inputs/index.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

const Cited = closed({ id: Type.String(), title: Type.String(), locator: Type.String() })

export const CalculateReply = closed({
  ...Worked.properties,
  cited: Type.Array(Cited, { description: 'The sources with title and place' }),
  graphVersion: Type.String(),
})
export type CalculateReply = Static<typeof CalculateReply>

export const CALCULATION_NAMES = Object.keys(CALCULATION_INPUTS) as CalculationName[]

export const calculateRoute = (name: CalculationName) => ({
  method: 'POST' as const,
  url: `/api/calculate/${name}`,
  schema: { body: CALCULATION_INPUTS[name], response: { 200: CalculateReply, '4xx': ErrorReply } },
})

export const CalculationsReply = closed({
  calculations: Type.Array(
    closed({ name: Type.String(), title: Type.String(), input: Type.Unknown({ description: 'JSON schema' }) }),
  ),
  graphVersion: Type.String(),
})
export type CalculationsReply = Static<typeof CalculationsReply>

export const calculationsRoute = {
  method: 'GET',
  url: '/api/calculate',
  schema: { response: { 200: CalculationsReply, '4xx': ErrorReply } },
} as const

export type { CalculationName }
