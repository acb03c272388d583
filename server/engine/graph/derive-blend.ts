import type { Ingredient } from '#engine/model/records.ts'
import type { Subject } from './subject.ts'

/**
 * A blend that is named but not recorded: its parts are known, their shares are not. Roles and classes are those of
 * the parts; no number is made up. Null when a part is not known.
 */
export function deriveBlend(id: string, find: (id: string) => Subject | null): Ingredient | null {
  const parts = id.split('-and-').map((part) => find(part))
  if (parts.some((part) => part === null)) return null
  const known = parts.filter((part): part is Subject => part !== null)
  const [first] = known
  if (!first) return null
  return {
    ...first,
    id,
    inci: known.map((part) => part.inci).join(' (and) '),
    tier: 'inventory',
    cas: [],
    names: { exact: [], broad: [], narrow: [], former: [], foreign: [] },
    classes: new Set(known.flatMap((part) => [...part.classes])),
    roles: known.flatMap((part) => part.roles.slice(0, 1)),
    facts: new Map(
      ['solubility', 'phase', 'form'].flatMap((key) =>
        first.facts.has(key) ? [[key, first.facts.get(key) ?? []]] : [],
      ),
    ),
    madeOf: known.map((part) => ({ ingredient: part.id, share_percent: 100 / known.length })),
    clashes: known.flatMap((part) => part.clashes),
    needs: [],
    boostedBy: [],
    inactivatedBy: known.flatMap((part) => part.inactivatedBy),
    standsFor: [],
    notFor: [],
    cautions: known.flatMap((part) => part.cautions),
    cautionsAt: {},
  }
}
