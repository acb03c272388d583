import { Type } from 'typebox'
import { Id } from '#engine/model/formula.ts'

/** A query is text: a number in it is checked as text and read by the route. */
export const decimalText = (description: string) =>
  Type.Optional(Type.String({ pattern: '^-?[0-9]{1,3}([.][0-9]{1,6})?$', description }))

/** A whole number as text. */
export const WHOLE = '^[1-9][0-9]{0,2}$'

/** How a list that comes in pages is asked for. */
export const PAGE = {
  limit: Type.Optional(Type.String({ pattern: WHOLE, description: '1 to 200, 50 when left out' })),
  after: Type.Optional(Id),
}
