import { german } from '#web/text/german.ts'
import { conditioner } from './conditioner.ts'
import type { Demo } from './demo.ts'
import { deodorant } from './deodorant.ts'
import { gentleWash } from './gentle-wash.ts'
import { handCream } from './hand-cream.ts'
import { lipBalm } from './lip-balm.ts'
import { roseGel } from './rose-gel.ts'

const ENGLISH: readonly Demo[] = [handCream, gentleWash, lipBalm, conditioner, roseGel, deodorant]

/** Recipes of the bench in Harrow Lane, in the page's language. The workshop is invented. */
export const DEMOS: readonly Demo[] = ENGLISH.map((demo) => ({ ...demo, ...german?.demos[demo.id] }))
