import type { World } from '#engine/graph/world.ts'
import { ITEM_KINDS, LARGEST_SEED } from '#engine/model/learn.ts'
import type { AskedItem, Item, ItemKind, ItemRef } from '#engine/model/learn.ts'
import { mustBeIn } from '#engine/units/must-be-in.ts'
import { activeMatter } from './active-matter.ts'
import { chanceOf, drawOne, hashOf } from './chance.ts'
import { finish } from './draft.ts'
import type { Maker } from './draft.ts'
import { holdsAtPh } from './holds-at-ph.ts'
import { orderWork } from './order-work.ts'
import { playsRole } from './plays-role.ts'
import { findFault, whatIf } from './recipe-items.ts'
import { ruleSpeaks } from './rule-speaks.ts'
import { swapHere } from './swap-here.ts'

const MAKERS: Record<ItemKind, Maker> = {
  'plays-role': playsRole,
  'holds-at-ph': holdsAtPh,
  'active-matter': activeMatter,
  'find-fault': findFault,
  'rule-speaks': ruleSpeaks,
  'what-if': whatIf,
  'swap-here': swapHere,
  'order-work': orderWork,
}

/** Kinds that can be asked about a given role; the others ask about a whole recipe. */
export const KINDS_OF_A_ROLE: readonly ItemKind[] = ['plays-role', 'holds-at-ph', 'active-matter']

const MOST_DRAWS = 60
const MOST_ITEMS = 20
/** Draws of items for one that is asked for, before the graph is taken to hold no more. */
const PATIENCE = 6

/**
 * The practice item of a reference: the same graph makes the same item. Null where the graph holds nothing to ask,
 * as of a role that one ingredient alone plays.
 *
 * @throws RangeError when the seed is out of range
 */
export function makeItem(world: World, ref: ItemRef): Item | null {
  mustBeIn('seed', ref.seed, 0, LARGEST_SEED)
  const chance = chanceOf(hashOf(`${ref.kind} ${ref.seed} ${ref.role ?? ''}`))
  for (let draw = 0; draw < MOST_DRAWS; draw += 1) {
    const draft = MAKERS[ref.kind](world, chance, ref.role)
    if (draft) return finish(draft, ref, chance)
  }
  return null
}

export interface ItemsQuestion {
  kinds?: readonly ItemKind[]
  roles?: readonly string[]
  seed: number
  count: number
}

function kindsOf({ kinds = ITEM_KINDS, roles = [] }: ItemsQuestion): readonly ItemKind[] {
  return roles.length === 0 ? kinds : kinds.filter((kind) => KINDS_OF_A_ROLE.includes(kind))
}

/**
 * Practice items, one after the other, none twice; kinds take turns. Fewer than asked for where the graph holds no
 * more. With roles only kinds that ask about a role are made.
 *
 * @throws RangeError when seed or count is out of range
 */
export function* makeItems(world: World, question: ItemsQuestion): Generator<Item> {
  mustBeIn('seed', question.seed, 0, LARGEST_SEED)
  mustBeIn('count', question.count, 1, MOST_ITEMS)
  const kinds = kindsOf(question)
  const chance = chanceOf(question.seed)
  const ids = new Set<string>()
  const draws = question.count * PATIENCE
  for (let draw = 0; draw < draws && ids.size < question.count; draw += 1) {
    const kind = kinds[draw % kinds.length]
    const role = drawOne(question.roles ?? [], chance)
    const seed = Math.floor(chance() * LARGEST_SEED)
    const item = kind && makeItem(world, { kind, seed, ...(role !== undefined && { role }) })
    if (!item || ids.has(item.id)) continue
    ids.add(item.id)
    yield item
  }
}

/** The item as a learner may see it before answering. */
export const withoutKey = ({ id, ref, kind, difficulty, question, recipe, choices }: Item): AskedItem => ({
  id,
  ref,
  kind,
  difficulty,
  question,
  ...(recipe && { recipe }),
  choices,
})
