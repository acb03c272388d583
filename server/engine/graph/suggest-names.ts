import { normalName } from '#engine/knowledge/name-index.ts'
import { searchNames } from '#engine/knowledge/search-names.ts'
import type { FoundBy } from '#engine/knowledge/search-names.ts'
import type { Tier } from '#engine/model/records.ts'
import { candidateOf, idsNamed } from './find-ingredients.ts'
import type { World } from './world.ts'

/** One line of a pick list. */
export interface NameSuggestion {
  ingredient: string
  inci: string
  tier: Tier
  /** the name that fitted, in its normal form, where that is not the INCI name */
  name?: string
  by: FoundBy | 'part'
  /** what it does, the first two roles in words; of a name of the inventory its functions there */
  roles: string[]
}

type Found = Pick<NameSuggestion, 'by'> & { id: string; name: string }

const USUAL_LIMIT = 12
const MOST_ROLES = 2
/** So many are ranked before the list is cut, so that a record behind many inventory names still comes first. */
const RANKED = 120
/** Likely names shorter than this are looked for by their beginning only: parts of names would be half the inventory. */
const LEAST_LETTERS = 3

const BY_RANK: Record<NameSuggestion['by'], number> = { name: 0, beginning: 1, words: 1, part: 2, likeness: 3 }
/** Names that stand only in the inventory come behind every record that fits. */
const INVENTORY_RANK = 10

/** Names that hold the typed words somewhere, behind those that begin so. */
function inParts(world: World, typed: string): Found[] {
  const text = normalName(typed)
  if (text.length < LEAST_LETTERS) return []
  return idsNamed(world, typed).map((id) => ({ id, name: '', by: 'part' as const }))
}

/** What a likeness suggests is of no use beside names that carry what was typed. */
function foundFor(world: World, typed: string): Found[] {
  const near = searchNames(world.knowledge, typed, RANKED)
  const sure = [...near.filter(({ by }) => by !== 'likeness'), ...inParts(world, typed)]
  const once = new Map<string, Found>()
  for (const found of sure.length > 0 ? sure : near) if (!once.has(found.id)) once.set(found.id, found)
  return [...once.values()]
}

/** How easy it is to get, 5 on every shelf; what is not on record counts as the rarest. */
const usualOf = (world: World, id: string): number =>
  world.knowledge.ingredients
    .get(id)
    ?.facts.get('usual')
    ?.find(({ used }) => used)?.value ?? 1

/**
 * Whole names first; then records, those that begin as typed before those that hold it, the usual before the rare; then
 * names of the inventory alone. Of equals the shorter name.
 */
function rankOf(world: World, { id, name, by }: Found): number {
  const isRecord = world.knowledge.ingredients.has(id)
  const length = Math.min(name === '' ? id.length : name.length, 99)
  const group = by === 'name' ? 0 : BY_RANK[by] + (isRecord ? 0 : INVENTORY_RANK)
  return group * 1000 + (5 - usualOf(world, id)) * 100 + length
}

function suggestionOf(world: World, { id, name, by }: Found): NameSuggestion | null {
  const one = candidateOf(world, id)
  if (!one) return null
  const own = name === '' || normalName(one.inci) === name
  const roles = [...new Set(one.roles.map(({ role }) => world.knowledge.roles.get(role)?.label ?? role))]
  return {
    ingredient: one.id,
    inci: one.inci,
    tier: one.tier,
    ...(!own && { name }),
    by,
    roles: roles.slice(0, MOST_ROLES),
  }
}

/**
 * A pick list while a person types, over all records and the whole inventory; it ranks and never decides. Names that
 * are only like the text come where no name carries it.
 * @param limit length of the list, 12 when left out
 */
export function suggestNames(world: World, typed: string, limit = USUAL_LIMIT): NameSuggestion[] {
  return foundFor(world, typed)
    .map((found) => ({ found, rank: rankOf(world, found) }))
    .sort((a, b) => a.rank - b.rank || (a.found.id < b.found.id ? -1 : 1))
    .slice(0, limit)
    .flatMap(({ found }) => suggestionOf(world, found) ?? [])
}
