import { text } from '#web/text/text.ts'

/** Id of a source as a person reads it; practice and memory are said to be no source. */
export const sourceWords = (id: string): string => text.finding.noSource[id] ?? id

/** Practice or memory stand where a source would. */
export const isNoSource = (id: string): boolean => id in text.finding.noSource

/** Anchor of a source in the list at the foot of a page. */
export const sourceAnchor = (id: string): string => `source-${id}`
