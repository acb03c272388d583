import type { Static } from 'typebox'
import type { BatchAsk, BatchReply } from './batch.ts'
import type { CalculateReply, CalculationsReply } from './calculate.ts'
import type { CheckBody, CheckReply } from './check.ts'
import type { ErrorReply } from './error.ts'
import type { GraphQuery, GraphReply, WholeGraphReply } from './graph.ts'
import type { HealthReply } from './health.ts'
import type { IngredientReply, IngredientsQuery, IngredientsReply } from './ingredients.ts'
import type { PreservationBody, PreservationReply } from './preservation.ts'
import type { PhAdjustBody, PhAdjustReply, PhWindowBody, PhWindowReply } from './ph.ts'
import type { AnswerBody, AnswerReply, ItemsBody, ItemsReply } from './learn.ts'
import type { LessonReply, LessonsReply } from './learn-lessons.ts'
import type { LabelBody, LabelReply } from './label.ts'
import type { NamesQuery, NamesReply } from './names.ts'
import type { ResolveBody, ResolveReply } from './resolve.ts'
import type { RoleReply, RolesReply } from './roles.ts'
import type { SourceQuery, SourceReply, SourcesQuery, SourcesReply } from './sources.ts'
import type { standInsRoute, SwapsBody, SwapSheetReply, swapSheetRoute } from './swaps.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { SwapsReply } from '#engine/model/swap.ts'
import type { WhatIfBody, WhatIfReply } from './what-if.ts'

/** All routes as one type: what the page may send and what it gets. */
export interface Api {
  'GET /api/health': { reply: HealthReply }
  'POST /api/resolve': { body: Static<typeof ResolveBody>; reply: Static<typeof ResolveReply> }
  'GET /api/names': { reply: NamesReply; query: Static<typeof NamesQuery> }
  'GET /api/ingredients': { reply: Static<typeof IngredientsReply>; query: Static<typeof IngredientsQuery> }
  'GET /api/ingredients/:id': { reply: IngredientReply }
  'GET /api/ingredients/:id/stand-ins': {
    reply: SwapsReply
    query: Static<(typeof standInsRoute)['schema']['querystring']>
  }
  'GET /api/roles': { reply: Static<typeof RolesReply> }
  'GET /api/roles/:id': { reply: RoleReply }
  'GET /api/sources': { reply: SourcesReply; query: Static<typeof SourcesQuery> }
  'GET /api/sources/:id': { reply: SourceReply; query: Static<typeof SourceQuery> }
  'GET /api/graph': { reply: GraphReply; query: Static<typeof GraphQuery> }
  'GET /api/graph/whole': { reply: WholeGraphReply }
  'POST /api/check': { body: Static<typeof CheckBody>; reply: CheckReply }
  'POST /api/preservation': { body: Static<typeof PreservationBody>; reply: PreservationReply }
  'POST /api/learn/items': { body: Static<typeof ItemsBody>; reply: Static<typeof ItemsReply> }
  'POST /api/learn/what-if': { body: WhatIfBody; reply: WhatIfReply }
  'POST /api/learn/answers': { body: AnswerBody; reply: Static<typeof AnswerReply> }
  'GET /api/learn/lessons': { reply: Static<typeof LessonsReply> }
  'GET /api/learn/lessons/:id': { reply: LessonReply }
  'POST /api/label': { body: Static<typeof LabelBody>; reply: LabelReply }
  'POST /api/swaps': { body: Static<typeof SwapsBody>; reply: SwapsReply }
  'POST /api/batch': { body: Static<typeof BatchAsk>; reply: BatchReply }
  'POST /api/ph/window': { body: Static<typeof PhWindowBody>; reply: PhWindowReply }
  'POST /api/ph/adjust': { body: PhAdjustBody; reply: PhAdjustReply }
  'GET /api/calculate': { reply: CalculationsReply }
  'POST /api/calculate/:name': { body: Record<string, unknown>; reply: CalculateReply }
  'POST /api/swap-sheet': {
    body: Static<(typeof swapSheetRoute)['schema']['body']>
    reply: Static<typeof SwapSheetReply>
  }
}

export type ApiError = Static<typeof ErrorReply>
export type { Formula }
