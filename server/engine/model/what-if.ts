import { Type } from 'typebox'
import type { Static } from 'typebox'
import { Finding } from './finding.ts'
import { Formula } from './formula.ts'
import { ItemChoice } from './learn.ts'

/** What a change does to a recipe, with choices for one who guesses first. */
export const WhatIf = Type.Object(
  {
    after: Formula,
    choices: Type.Array(ItemChoice, { description: 'Rules that may speak, and that none has anything new to say' }),
    right: Type.Array(Type.String(), { description: 'Ids of the choices that are right' }),
    news: Type.Array(Finding, { description: 'What the check says that it did not say before in these words' }),
    gone: Type.Array(Finding, { description: 'What it no longer says in these words' }),
  },
  { additionalProperties: false },
)
export type WhatIf = Static<typeof WhatIf>
