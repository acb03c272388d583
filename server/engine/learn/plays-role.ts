import { deriveFromInventory } from '#engine/graph/derive-from-inventory.ts'
import { mainRole, plays } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Role } from '#engine/model/records.ts'
import { drawOne, shuffled } from './chance.ts'
import type { Chance } from './chance.ts'
import { choiceOf, isCommon, nameOf, SEEN, WRONG_CHOICES } from './draft.ts'
import type { Draft, Maker } from './draft.ts'

/** Played first and always: a side role or one under a condition makes a poor key. */
const isPlainPlayer = (subject: Subject, role: string): boolean =>
  mainRole(subject) === role && subject.roles[0]?.when === undefined

/** Common plain players; of a role that has none, what plays it first, then whatever is known to play it. */
function keysOf(role: string, world: World): readonly Subject[] {
  const players = world.players(role)
  const first = players.filter((one) => world.roles.above(mainRole(one)).includes(role))
  const tiers = [
    first.filter((one) => isCommon(one) && isPlainPlayer(one, role)),
    first.filter(isCommon),
    first,
    players,
  ]
  return tiers.find((one) => one.length > 0) ?? []
}

/** Its statement about this role or a narrower one. */
const claimOf = (subject: Subject, role: string, world: World) =>
  subject.roles.find((claim) => world.roles.above(claim.role).includes(role))

/** Does the inventory's function, a part of the blend, or a statement that it stands in say the role after all? */
function hasSomeClaim(subject: Subject, role: string, world: World): boolean {
  const row = world.knowledge.inventory.get(subject.id)
  const byFunction = row ? deriveFromInventory(row).roles : []
  const players = new Set(world.players(role).map(({ id }) => id))
  return (
    byFunction.some((claim) => world.roles.above(claim.role).includes(role)) ||
    subject.parts.some((part) => plays(part.subject, role)) ||
    subject.standsFor.some((claim) => players.has(claim.for) || claim.for.startsWith('class:'))
  )
}

/** A claim of a broader role leaves open whether it also plays this one. */
function mayPlay(subject: Subject, role: string, world: World): boolean {
  const broader = world.roles.above(role)
  return (
    plays(subject, role) ||
    subject.roles.some((claim) => broader.includes(claim.role)) ||
    hasSomeClaim(subject, role, world)
  )
}

/** Sibling roles and those that people take it for come before the rest. */
function wrongOnes(world: World, role: Role, chance: Chance): { near: Subject[]; far: Subject[] } {
  const near = new Set(
    [...role.confusedWith, ...(role.broader === undefined ? [] : [role.broader])].flatMap((one) =>
      world.players(one).map(({ id }) => id),
    ),
  )
  const pool = shuffled(world.subjects.filter(isCommon), chance)
  const wrong = pool.filter((one) => near.has(one.id) && !mayPlay(one, role.id, world)).slice(0, WRONG_CHOICES)
  const taken = new Set(wrong.map(({ id }) => id))
  const far: Subject[] = []
  for (const one of pool) {
    if (far.length === WRONG_CHOICES) break
    if (!taken.has(one.id) && !mayPlay(one, role.id, world)) far.push(one)
  }
  return { near: wrong, far }
}

function draftOf(world: World, role: Role, key: Subject, wrong: readonly Subject[], near: number): Draft | null {
  const claim = claimOf(key, role.id, world)
  if (!claim || wrong.length < WRONG_CHOICES) return null
  return {
    difficulty: near === 0 ? 1 : near < WRONG_CHOICES ? 2 : 3,
    question: `Which of these is used as ${role.label.toLowerCase()}? (${role.says}.)`,
    choices: [key, ...wrong].map(choiceOf),
    key: key.id,
    because: `${nameOf(key)} is recorded as ${role.label.toLowerCase()} (${SEEN[claim.access]}: ${claim.locator}). The others are recorded in other roles only.`,
    sources: [claim.source],
    about: { role: role.id, ingredients: [key.id, ...wrong.map(({ id }) => id)] },
  }
}

/** Which of these plays the role? Wrong choices have no claim to it, to a narrower or to a broader role. */
export const playsRole: Maker = (world, chance, asked) => {
  const roles = [...world.knowledge.roles.values()].filter(
    ({ id }) => asked === undefined || world.roles.above(id).includes(asked),
  )
  const role = drawOne(roles, chance)
  const key = role && drawOne(keysOf(role.id, world), chance)
  if (!role || !key) return null
  const { near, far } = wrongOnes(world, role, chance)
  const nearest = near.slice(0, 1 + Math.floor(chance() * WRONG_CHOICES))
  const wrong = [...nearest, ...far].slice(0, WRONG_CHOICES)
  return draftOf(world, role, key, wrong, nearest.length)
}
