import type { Provenance } from '#engine/model/records.ts'
import { isObject } from './expand-claims.ts'
import type { RawFile } from './raw.ts'

/** What a natural scent typically holds of substances that the law names. */
export interface Composition {
  ingredient: string
  /** member name of an allergen or of a legal entry, with its range [% of the material] */
  parts: { substance: string; min_percent: number; max_percent: number }[]
  seen: Provenance
}

/** Where nothing is said of the origin it was not looked up. */
const UNSEEN: Provenance = {
  kind: 'rule-of-thumb',
  source: 'memory',
  locator: 'as remembered',
  access: 'memory',
  date: '',
}

const partsOf = (row: Record<string, unknown>): Composition['parts'] =>
  Object.entries(row).flatMap(([substance, range]) =>
    Array.isArray(range) ? [{ substance, min_percent: Number(range[0]), max_percent: Number(range[1]) }] : [],
  )

/** Compositions of all files that hold some, by ingredient. */
export function expandCompositions(files: readonly RawFile[]): Map<string, Composition> {
  const all = files.flatMap(({ data }): Composition[] => {
    if (!isObject(data) || !isObject(data['compositions'])) return []
    const seen = { ...UNSEEN, ...(isObject(data['seen']) ? (data['seen'] as Partial<Provenance>) : {}) }
    return Object.entries(data['compositions']).map(([ingredient, row]) => ({
      ingredient,
      parts: isObject(row) ? partsOf(row) : [],
      seen,
    }))
  })
  return new Map(all.map((one) => [one.ingredient, one]))
}
