import { conditioner } from './conditioner.ts'
import type { Demo } from './demo.ts'
import { deodorant } from './deodorant.ts'
import { gentleWash } from './gentle-wash.ts'
import { handCream } from './hand-cream.ts'
import { lipBalm } from './lip-balm.ts'
import { roseGel } from './rose-gel.ts'

/** Recipes of the bench in Harrow Lane. The workshop is invented. */
export const DEMOS: readonly Demo[] = [handCream, gentleWash, lipBalm, conditioner, roseGel, deodorant]
