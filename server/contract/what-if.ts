import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Formula } from '#engine/model/formula.ts'
import { RecipeChange } from '#engine/model/lesson-recipe.ts'
import { WhatIf } from '#engine/model/what-if.ts'
import { closed } from './closed.ts'
import { ErrorReply } from './error.ts'

export const WhatIfBody = closed({ formula: Formula, change: RecipeChange })
export type WhatIfBody = Static<typeof WhatIfBody>
export const WhatIfReply = closed({ ...WhatIf.properties, graphVersion: Type.String() })
export type WhatIfReply = Static<typeof WhatIfReply>

export const whatIfRoute = {
  method: 'POST',
  url: '/api/learn/what-if',
  schema: { body: WhatIfBody, response: { 200: WhatIfReply, '4xx': ErrorReply } },
} as const
