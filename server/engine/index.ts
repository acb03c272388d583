/** The engine's only door. Pure: no clock, no chance, no files, no network; what it needs comes in as an argument. */
export { buildKnowledge } from './knowledge/build.ts'
export { LINTS } from './knowledge/lints/index.ts'
export type { Knowledge } from './knowledge/knowledge.ts'
export type { InventoryRow, RawData, RawFile, RawTable } from './knowledge/raw.ts'
export { idOf } from './knowledge/slug.ts'
export { buildWorld } from './graph/world.ts'
export type { World } from './graph/world.ts'
