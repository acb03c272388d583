import { Type } from 'typebox'
import { Formula, Id, Market, Product } from '#engine/model/formula.ts'
import { LeaveOut, Swap, SwapsReply, Wishes } from '#engine/model/swap.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

export const SwapsBody = closed({
  formula: Formula,
  missing: Type.Array(Id, { minItems: 1, maxItems: 3, uniqueItems: true }),
  wishes: Type.Optional(Wishes),
  about: Type.Optional(
    Type.Array(Id, {
      minItems: 1,
      maxItems: 5,
      uniqueItems: true,
      description: 'With one missing: how these would do, or why not',
    }),
  ),
  limit: Type.Optional(Type.Integer({ minimum: 1, maximum: 50 })),
})
export const swapsRoute = {
  method: 'POST',
  url: '/api/swaps',
  schema: { body: SwapsBody, response: { 200: SwapsReply, '4xx': ErrorReply } },
} as const

export const standInsRoute = {
  method: 'GET',
  url: '/api/ingredients/:id/stand-ins',
  schema: {
    params: closed({ id: Id }),
    querystring: closed({
      role: Type.Optional(Type.String({ maxLength: 100 })),
      product: Type.Optional(Product),
      market: Type.Optional(Market),
    }),
    response: { 200: SwapsReply, '4xx': ErrorReply },
  },
} as const

export const SwapSheetReply = closed({
  lines: Type.Array(
    closed({
      ingredient: Type.String(),
      inci: Type.String(),
      share_percent: Type.Number(),
      roles: Type.Array(closed({ role: Type.String(), label: Type.String() })),
      outcome: SwapsReply.properties.outcome,
      why: Type.String(),
      standIns: Type.Array(Swap),
      leaveOut: LeaveOut,
      irreplaceable: Type.Boolean(),
    }),
  ),
  graphVersion: Type.String(),
})
export const swapSheetRoute = {
  method: 'POST',
  url: '/api/swap-sheet',
  schema: {
    body: closed({
      formula: Formula,
      wishes: Type.Optional(Wishes),
      lines: Type.Optional(
        Type.Array(Id, {
          minItems: 1,
          maxItems: 100,
          uniqueItems: true,
          description: 'Only these lines, so that a long sheet can be asked for piece by piece. Left out: all',
        }),
      ),
    }),
    response: { 200: SwapSheetReply, '4xx': ErrorReply },
  },
} as const
