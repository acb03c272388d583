import { batch } from './en-batch.ts'
import { bench } from './en-bench.ts'
import { explorerLinks } from './en-explorer-links.ts'
import { offline } from './en-offline.ts'
import { records } from './en-records.ts'
import { swaps } from './en-swaps.ts'
import { terms } from './en-terms.ts'

/** Every word the page shows; pages and parts hold none of their own. */
export const text = { ...bench, ...batch, ...swaps, ...records, terms, explorer: explorerLinks, offline } as const
