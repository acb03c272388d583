import { usedClaim } from '#engine/knowledge/used-claim.ts'
import type { Ingredient, Limit } from '#engine/model/records.ts'
import type { Range } from '#engine/units/range.ts'

/** An ingredient with what the checks ask of it again and again worked out once. */
export { usedClaim }

export interface Subject extends Ingredient {
  /** every role played and all broader roles of those */
  allRoles: ReadonlySet<string>
  /** parts of a blend with their share of it, 0 to 1; the subject itself where it is no blend */
  parts: { subject: Subject; share: number }[]
  /** indices of class clashes in which it stands at either side */
  clashSides: readonly [ReadonlySet<number>, ReadonlySet<number>]
  /** legal entries that count it, by name or by class */
  limits: readonly Limit[]
}

/** The checks ask for the same few ranges again and again; records do not change. */
const ranges = new WeakMap<Ingredient, Map<string, Range | undefined>>()

/** Decided range of a numeric property. */
export function rangeOfProperty(subject: Ingredient, property: string): Range | undefined {
  const known = ranges.get(subject) ?? new Map<string, Range | undefined>()
  if (known.has(property)) return known.get(property)
  const range = readRange(subject, property)
  ranges.set(subject, known.set(property, range))
  return range
}

function readRange(subject: Ingredient, property: string): Range | undefined {
  const claim = usedClaim(subject, property)
  if (!claim) return undefined
  if (claim.value !== undefined) return { min: claim.value, max: claim.value }
  if (claim.min === undefined && claim.max === undefined) return undefined
  return { ...(claim.min !== undefined && { min: claim.min }), ...(claim.max !== undefined && { max: claim.max }) }
}

/** Middle of the decided range. */
export function numberOf(subject: Ingredient, property: string): number | undefined {
  const range = rangeOfProperty(subject, property)
  if (!range) return undefined
  if (range.min === undefined) return range.max
  if (range.max === undefined) return range.min
  return (range.min + range.max) / 2
}

/** Decided word of a property such as solubility or form. */
export const wordOf = (subject: Ingredient, property: string): string | undefined => usedClaim(subject, property)?.is

export const plays = (subject: Subject, role: string): boolean => subject.allRoles.has(role)

/** The role for which a maker first thinks of it. */
export const mainRole = (subject: Ingredient): string => subject.roles[0]?.role ?? ''
