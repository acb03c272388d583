import { batch } from './batch.ts'
import { bench } from './bench.ts'
import { explorerLinks } from './explorer-links.ts'
import { offline } from './offline.ts'
import { records } from './records.ts'
import { swaps } from './swaps.ts'
import { terms } from './terms.ts'

/** Every word the page shows; pages and parts hold none of their own. */
export const text = { ...bench, ...batch, ...swaps, ...records, terms, explorer: explorerLinks, offline } as const
