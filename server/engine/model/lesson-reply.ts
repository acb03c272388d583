import { Type } from 'typebox'
import type { Static, TProperties } from 'typebox'
import { Formula } from './formula.ts'
import { LessonAbout, LessonFile, LessonPart, Practise } from './lesson.ts'
import { oneOf } from './one-of.ts'

const closed = <T extends TProperties>(properties: T) => Type.Object(properties, { additionalProperties: false })
const opt = Type.Optional
const file = LessonFile.properties

export const LessonShort = closed({
  id: Type.String(),
  title: Type.String(),
  about: LessonAbout,
  minutes: Type.Integer({ description: 'To read it and to try its live example' }),
})
export type LessonShort = Static<typeof LessonShort>

/** A lesson as it is read. */
export const LessonReply = closed({
  ...LessonShort.properties,
  question: Type.String({ description: 'What the learner can answer afterwards' }),
  parts: Type.Array(LessonPart),
  seen: file.seen,
  cautions: Type.Array(Type.String()),
  sources: Type.Array(
    closed({
      id: Type.String(),
      title: Type.String(),
      address: Type.String(),
      locator: Type.String(),
      access: Type.String(),
    }),
  ),
  states: Type.Array(closed({ says: Type.String(), checkedBy: oneOf('records', 'engine') }), {
    description: 'What it states, each checked against the records or by asking the engine',
  }),
  live: file.live,
  recipe: opt(
    closed({
      title: Type.String(),
      before: Formula,
      broken: opt(Formula),
      mended: opt(Formula),
      names: Type.Record(Type.String(), Type.String()),
    }),
  ),
  practise: opt(Practise),
  next: Type.Array(LessonShort),
})
export type LessonReply = Static<typeof LessonReply>
