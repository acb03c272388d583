import type { Given, Question } from '#answers/ask.ts'

export type { Given, Question }

/** From the page to its engine: a question, or that its answer is no longer wanted. */
export type ToEngine = { id: number; question: Question } | { drop: number }

/** From the engine to the page: an answer as JSON and the version of the data it rests on, or that there is none. */
export type FromEngine = { id: number; json: string; version: string } | { id: number; failed: string }
