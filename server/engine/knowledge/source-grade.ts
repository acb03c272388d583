import type { Source } from '#engine/model/records.ts'

export type Sources = ReadonlyMap<string, Source>

/** How good a source is, by the lists of sources: A standard or original paper … D page of a seller or hobby writer. */
export const GRADES = ['A', 'B', 'C', 'D'] as const
export type Grade = (typeof GRADES)[number]

/** @returns the best grade of the sources that a claim names (ids, "; " between); undefined where none has one */
export function gradeOf(source: string, sources: Sources): Grade | undefined {
  const grades = source.split(';').map((id) => sources.get(id.trim())?.grade)
  return GRADES.find((grade) => grades.includes(grade))
}
