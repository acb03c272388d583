import type { Static, TSchema } from 'typebox'
import type { World } from '#engine/index.ts'

/** What an answer works with. */
export interface Here {
  world: World
  /** lets others have their turn; long answers call it between their parts */
  breathe: () => Promise<void>
}

interface RouteSchema {
  readonly params?: TSchema
  readonly querystring?: TSchema
  readonly body?: TSchema
  readonly response: { readonly 200: TSchema }
}

/** A route as server/contract states it. */
export interface Route<S extends RouteSchema = RouteSchema> {
  readonly method: 'GET' | 'POST'
  readonly url: string
  readonly schema: S
}

type Part<S, K extends keyof RouteSchema> =
  S extends Readonly<Record<K, infer T extends TSchema>> ? Static<T> : undefined

/** What was asked, as the schemas of the route type it. */
export interface Asked<S = RouteSchema> {
  params: Part<S, 'params'>
  query: Part<S, 'querystring'>
  body: Part<S, 'body'>
}

type Reply<S extends RouteSchema> = Static<S['response'][200]>

/** One route with the function that answers it. Whoever calls it has checked what was asked against the schemas. */
export interface Answer {
  route: Route
  reply: (here: Here, asked: { params: unknown; query: unknown; body: unknown }) => unknown
}

/** Ties a function to the route that it answers: its types follow from the schemas. */
export const answer = <S extends RouteSchema>(
  route: Route<S>,
  reply: (here: Here, asked: Asked<S>) => Reply<S> | Promise<Reply<S>>,
): Answer => ({ route, reply: (here, asked) => reply(here, asked as Asked<S>) })
