import { Type } from 'typebox'
import { closed } from './closed.ts'

/** Every code that the API can send, with what it means; tested against DEVELOPERS.md in both directions. */
export const ERROR_CODES = {
  'bad-request': 'The request does not fit the schema; the message names the field',
  'bad-json': 'The body is not JSON',
  'shares-not-100': 'The shares do not add up to 100 % and no line fills up',
  'two-fillers': 'More than one line fills up to 100 %',
  'share-missing': 'A line has neither a share nor fills',
  'no-room-to-fill': 'The other lines leave nothing for the line that fills up',
  'unknown-ingredient': 'No ingredient has this id; the message names the nearest',
  'unknown-role': 'No role has this id',
  'unknown-source': 'No source has this id',
  'unknown-class': 'Neither a class nor an ingredient has this id',
  'out-of-range': 'A calculation does not hold for this argument; the message names it and its range',
  'not-in-formula': 'An ingredient that is said to be missing is not a line of the formula',
  'unknown-lesson': 'No lesson has this id',
  'unknown-item': 'The graph makes no such practice item, or another one since it changed',
  'not-a-choice': 'The answer is not one of the choices of the practice item',
  'not-found': 'There is no such page or route',
  'method-not-allowed': 'The route does not take this method',
  'too-large': 'The body is larger than 256 kB',
  'not-json': 'The content type is not application/json',
  'too-many': 'Too many requests in a short time',
  internal: 'A fault of the server; it is never the answer to an input',
} as const
export type ErrorCode = keyof typeof ERROR_CODES

export const ErrorReply = closed({
  error: closed({
    code: Type.String(),
    message: Type.String(),
    at: Type.Optional(Type.String({ description: 'JSON pointer to the field' })),
    nearest: Type.Optional(Type.Array(Type.String())),
  }),
})
