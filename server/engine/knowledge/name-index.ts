import type { Ingredient, NameKind } from '#engine/model/records.ts'
import { normalName } from './normal-name.ts'
import type { InventoryRow } from './raw.ts'

export { normalName } from './normal-name.ts'

/** How a text came to point at an ingredient. */
export type NameWhy = 'inci' | 'cas' | NameKind

export interface NameHit {
  id: string
  why: NameWhy
}

export interface NameIndex {
  /** normal form of a name → what it may mean */
  byName: ReadonlyMap<string, NameHit[]>
}

/** "Xanthan (de)" carries its language in brackets; the name is what stands before. */
const plain = (name: string): string => (name.includes(')') ? name.replace(/\s*\((?:[a-z]{2})\)\s*$/, '') : name)

/** "BUTYROSPERMUM PARKII (SHEA) BUTTER" is read without what stands in brackets too. */
const withoutBrackets = (name: string): string => name.replace(/\s*\([^()]*\)\s*/g, ' ').trim()

/** @param extra names of inventory entries that have no record of their own, by id */
export function buildNameIndex(
  ingredients: Iterable<Ingredient>,
  inventory: Iterable<InventoryRow>,
  aliases: ReadonlyMap<string, string>,
  extra: ReadonlyMap<string, readonly string[]> = new Map(),
): NameIndex {
  const byName = new Map<string, NameHit[]>()
  const add = (text: string, id: string, why: NameWhy) => {
    const key = normalName(plain(text))
    if (key === '') return
    const hits = byName.get(key)
    if (!hits) byName.set(key, [{ id, why }])
    else if (!hits.some((hit) => hit.id === id && hit.why === why)) hits.push({ id, why })
  }
  for (const ingredient of ingredients) {
    add(ingredient.inci, ingredient.id, 'inci')
    if (/\(and\)/i.test(ingredient.inci)) {
      for (const joint of [' + ', ' and '])
        add(ingredient.inci.replace(/\s*\(and\)\s*/gi, joint), ingredient.id, 'inci')
    }
    for (const cas of ingredient.cas) add(cas, ingredient.id, 'cas')
    for (const [kind, names] of Object.entries(ingredient.names)) {
      for (const name of names) {
        add(name, ingredient.id, kind as NameKind)
        if (kind === 'exact' && name.includes('(')) add(withoutBrackets(plain(name)), ingredient.id, 'narrow')
      }
    }
  }
  for (const row of inventory) {
    const id = aliases.get(row.id) ?? row.id
    add(row.inci, id, 'inci')
    for (const cas of row.cas) add(cas, id, 'cas')
  }
  for (const [id, names] of extra) {
    for (const name of names) add(name, aliases.get(id) ?? id, 'exact')
  }
  return { byName }
}
