import type { Ingredient, NameKind } from '#engine/model/records.ts'
import type { InventoryRow } from './raw.ts'

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

/** Normal form: lower case, accents off, marks and spaces folded to one space. */
export function normalName(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/['’`´]/g, '')
    .replace(/[^a-z0-9%+]+/g, ' ')
    .replace(/(\d) (?=\d)/g, '$1 ')
    .trim()
}

/** "Xanthan (de)" carries its language in brackets; the name is what stands before. */
const plain = (name: string): string => name.replace(/\s*\((?:[a-z]{2})\)\s*$/, '')

export function buildNameIndex(
  ingredients: Iterable<Ingredient>,
  inventory: Iterable<InventoryRow>,
  aliases: ReadonlyMap<string, string>,
): NameIndex {
  const byName = new Map<string, NameHit[]>()
  const add = (text: string, id: string, why: NameWhy) => {
    const key = normalName(plain(text))
    if (key === '') return
    const hits = byName.get(key) ?? []
    if (!hits.some((hit) => hit.id === id && hit.why === why)) byName.set(key, [...hits, { id, why }])
  }
  for (const ingredient of ingredients) {
    add(ingredient.inci, ingredient.id, 'inci')
    add(ingredient.inci.replace(/\s*\(and\)\s*/gi, ' + '), ingredient.id, 'inci')
    add(ingredient.inci.replace(/\s*\(and\)\s*/gi, ' and '), ingredient.id, 'inci')
    for (const cas of ingredient.cas) add(cas, ingredient.id, 'cas')
    for (const [kind, names] of Object.entries(ingredient.names)) {
      for (const name of names) add(name, ingredient.id, kind as NameKind)
    }
  }
  for (const row of inventory) {
    const id = aliases.get(row.id) ?? row.id
    add(row.inci, id, 'inci')
    for (const cas of row.cas) add(cas, id, 'cas')
  }
  return { byName }
}
