import type { Knowledge } from '#engine/knowledge/knowledge.ts'
import { english } from '#engine/words/say.ts'
import type { Say } from '#engine/words/say.ts'
import { buildRoleGraph } from './build-graph.ts'
import type { RoleGraph } from './build-graph.ts'
import { createFinder } from './finder.ts'
import { buildHoldsWith } from './holds-with.ts'
import type { HoldsWith } from './holds-with.ts'
import { buildRoleTree } from './role-tree.ts'
import type { RoleTree } from './role-tree.ts'
import type { Subject } from './subject.ts'

/** The knowledge with its graph: what every question is asked of. Built once, only read. */
export interface World {
  knowledge: Knowledge
  /** puts sentences into the language of this world */
  say: Say
  roles: RoleTree
  graph: RoleGraph
  holdsWith: HoldsWith
  /** record by id or alias; derived on the fly for inventory names and unrecorded blends; null when unknown */
  find(id: string): Subject | null
  /** all recorded ingredients, by id */
  subjects: readonly Subject[]
  /** recorded ingredients that play this role or a narrower one, by id */
  players(role: string): readonly Subject[]
  /** recorded ingredients that say they do not stand in for this id */
  deniersOf(id: string): readonly { subject: Subject; claim: Subject['notFor'][number] }[]
  /** recorded ingredients that share a telling word of the name */
  namesakesOf(subject: Subject): readonly Subject[]
  /** recorded ingredients that say they stand in for this one, by its id or one of its classes */
  standInsFor(subject: Subject): readonly { stand: Subject; claim: Subject['standsFor'][number] }[]
}

/** Words of this length say what a thing is: "stearate" does, "oil" does not. */
const TELLING_LETTERS = 6

const tellingWords = ({ id }: Subject): string[] => id.split('-').filter((word) => word.length >= TELLING_LETTERS)

const EMPTY: readonly Subject[] = []

function indexBy<T>(
  subjects: readonly Subject[],
  keysOf: (subject: Subject) => Iterable<readonly [string, T]>,
): Map<string, T[]> {
  const index = new Map<string, T[]>()
  for (const subject of subjects) {
    for (const [key, value] of keysOf(subject)) {
      const list = index.get(key)
      if (list) list.push(value)
      else index.set(key, [value])
    }
  }
  return index
}

/** @param say the language in which this world speaks; the knowledge has to be in the same */
export function buildWorld(knowledge: Knowledge, say: Say = english): World {
  const roles = buildRoleTree(knowledge.roles)
  const find = createFinder(knowledge, roles)
  const subjects = [...knowledge.ingredients.keys()].sort().flatMap((id) => find(id) ?? [])
  const byRole = indexBy(subjects, (subject) => [...subject.allRoles].map((role) => [role, subject] as const))
  const standsFor = indexBy(subjects, (stand) => stand.standsFor.map((claim) => [claim.for, { stand, claim }] as const))
  const denies = indexBy(subjects, (subject) => subject.notFor.map((claim) => [claim.for, { subject, claim }] as const))
  const byWord = indexBy(subjects, (subject) => tellingWords(subject).map((word) => [word, subject] as const))
  return {
    knowledge,
    say,
    roles,
    graph: buildRoleGraph(knowledge, subjects),
    holdsWith: buildHoldsWith(subjects),
    find,
    subjects,
    deniersOf: (id) => denies.get(id) ?? [],
    namesakesOf: (subject) => [...new Set(tellingWords(subject).flatMap((word) => byWord.get(word) ?? []))],
    players: (role) => byRole.get(role) ?? EMPTY,
    standInsFor: (subject) =>
      [subject.id, ...[...subject.classes].map((one) => `class:${one}`)].flatMap((key) => standsFor.get(key) ?? []),
  }
}
