import { Type } from 'typebox'
import type { Static } from 'typebox'
import { AskedItem, ItemAnswer, ItemKind, ItemRef, LARGEST_SEED } from '#engine/model/learn.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

export const ItemsBody = closed({
  kinds: Type.Optional(Type.Array(ItemKind, { minItems: 1, uniqueItems: true })),
  roles: Type.Optional(
    Type.Array(Type.String({ minLength: 1, maxLength: 100 }), {
      minItems: 1,
      maxItems: 20,
      uniqueItems: true,
      description: 'Ask about these roles or below them; kinds that ask about a whole recipe then make no items',
    }),
  ),
  seed: Type.Integer({ minimum: 0, maximum: LARGEST_SEED }),
  count: Type.Integer({ minimum: 1, maximum: 20 }),
})
export const ItemsReply = closed({
  items: Type.Array(AskedItem, { description: 'Fewer than asked for where the graph holds no more' }),
  graphVersion: Type.String(),
})
export const learnItemsRoute = {
  method: 'POST',
  url: '/api/learn/items',
  schema: { body: ItemsBody, response: { 200: ItemsReply, '4xx': ErrorReply } },
} as const

export const AnswerBody = closed({
  item: ItemRef,
  id: Type.Optional(
    Type.String({ maxLength: 40, description: 'Id of the item that was shown; refused when the graph makes another' }),
  ),
  choice: Type.String({ minLength: 1, maxLength: 1000 }),
})
export type AnswerBody = Static<typeof AnswerBody>
export const AnswerReply = closed({
  right: Type.Boolean(),
  ...ItemAnswer.properties,
  cited: Type.Array(closed({ id: Type.String(), title: Type.String(), locator: Type.String() })),
  graphVersion: Type.String(),
})
export const learnAnswersRoute = {
  method: 'POST',
  url: '/api/learn/answers',
  schema: { body: AnswerBody, response: { 200: AnswerReply, '4xx': ErrorReply } },
} as const
