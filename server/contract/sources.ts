import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Provenance } from '#engine/model/claim.ts'
import { DescribedClaim } from '#engine/model/evidence.ts'
import { closed, oneOf } from './closed.ts'
import { ErrorReply } from './error.ts'
import { WHOLE } from './query.ts'

export const SourceKind = oneOf(
  'law',
  'standard',
  'paper',
  'book',
  'opinion',
  'trade',
  'web',
  'data',
  'practice',
  'memory',
  'other',
)

const limit = Type.Optional(Type.String({ pattern: WHOLE, description: '1 to 200, 50 when left out' }))
const SourceId = Type.String({ minLength: 1, maxLength: 100 })

export const SourcesQuery = closed({
  text: Type.Optional(Type.String({ maxLength: 200, description: 'Beginnings of words of id, title or place' })),
  kind: Type.Optional(SourceKind),
  limit,
  after: Type.Optional(SourceId),
})

export const SourceShort = closed({
  id: Type.String(),
  title: Type.String(),
  kind: Type.Union([SourceKind], { description: 'Told from title, place and grade; other where they do not tell' }),
  year: Type.Union([Type.Number(), Type.Null()], { description: 'null where the list does not state it' }),
  locator: Type.String(),
  link: Type.Union([Type.String(), Type.Null()], { description: 'Address, where the place names one' }),
  grade: Type.String({ description: 'A standard or original paper … D supplier page, M memory; may be empty' }),
  statements: Type.Number({ description: 'Statements that rest on it' }),
})
export type SourceShort = Static<typeof SourceShort>

export const SourcesReply = closed({
  sources: Type.Array(SourceShort),
  next: Type.Union([Type.String(), Type.Null()]),
  total: Type.Number(),
  graphVersion: Type.String(),
})
export type SourcesReply = Static<typeof SourcesReply>

export const SourceQuery = closed({
  limit,
  after: Type.Optional(Type.String({ pattern: '^[0-9]{1,6}$', description: 'Statements on the pages before' })),
})

export const SourceUse = closed({
  ingredient: Type.Union([Type.String(), Type.Null()], { description: 'null: about whole classes, or a legal entry' }),
  label: Type.String(),
  on: oneOf('fact', 'role', 'relation', 'limit'),
  text: Type.String({ description: 'What is stated; of a fact the property' }),
  claim: Type.Optional(DescribedClaim),
  ...Provenance.properties,
})

export const SourceReply = closed({
  ...SourceShort.properties,
  note: Type.String(),
  licence: closed({ title: Type.String(), text: Type.String() }),
  ingredients: Type.Number({ description: 'Records with a statement that rests on it' }),
  uses: Type.Array(SourceUse),
  next: Type.Union([Type.String(), Type.Null()], { description: '`after` of the next page' }),
  total: Type.Number(),
  singleOnly: Type.Boolean({ description: 'Its values are given with their one ingredient only' }),
  graphVersion: Type.String(),
})
export type SourceReply = Static<typeof SourceReply>

export const sourcesRoute = {
  method: 'GET',
  url: '/api/sources',
  schema: { querystring: SourcesQuery, response: { 200: SourcesReply, '4xx': ErrorReply } },
} as const

export const sourceRoute = {
  method: 'GET',
  url: '/api/sources/:id',
  schema: {
    params: closed({ id: SourceId }),
    querystring: SourceQuery,
    response: { 200: SourceReply, '4xx': ErrorReply },
  },
} as const
