import { join } from 'node:path'
import { buildKnowledge, buildWorld } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import { loadRaw } from '#load/load-raw.ts'

/** The reviewed files as they stand. */
export const DATA = join(import.meta.dirname, '../../graph-data')

export const openRealWorld = (): World => buildWorld(buildKnowledge(loadRaw(DATA)))
