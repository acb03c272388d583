import { idOf } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Method } from './score-case.ts'
import { random } from './statistics.ts'
import type { SwapCase } from './swap-cases.ts'

const seedOf = (text: string): number => [...text].reduce((sum, letter) => Math.imul(sum, 31) + letter.charCodeAt(0), 7)

const others = (world: World, one: SwapCase): { missing: Subject | null; pool: Subject[] } => {
  const missing = world.find(idOf(one.missing))
  const role = missing?.roles[0]?.role ?? ''
  return { missing, pool: world.players(role).filter((subject) => subject.id !== missing?.id) }
}

const usual = (subject: Subject): number => subject.facts.get('usual')?.[0]?.value ?? 1

const top = (subjects: readonly Subject[]) => ({ answers: subjects.slice(0, 10).map((subject) => [subject.id]) })

/** Any other ingredient of the same main role. */
const randomOfRole: Method = (world, one) => {
  const next = random(seedOf(one.id))
  return top(
    others(world, one)
      .pool.map((subject) => ({ subject, key: next() }))
      .sort((a, b) => a.key - b.key)
      .map(({ subject }) => subject),
  )
}

/** The most usual ingredients of the same main role; ties by a seeded draw. */
const mostUsualOfRole: Method = (world, one) => {
  const next = random(seedOf(one.id))
  const keyed = others(world, one).pool.map((subject) => ({ subject, key: next() }))
  return top(keyed.sort((a, b) => usual(b.subject) - usual(a.subject) || a.key - b.key).map(({ subject }) => subject))
}

/** Most roles in common, whatever they are; ties by a seeded draw. */
const sharedRoles: Method = (world, one) => {
  const { missing } = others(world, one)
  const roles = new Set(missing?.roles.map(({ role }) => role))
  const next = random(seedOf(one.id))
  const keyed = world.subjects
    .filter((subject) => subject.id !== missing?.id)
    .map((subject) => ({ subject, key: next(), shared: subject.roles.filter(({ role }) => roles.has(role)).length }))
  return top(keyed.sort((a, b) => b.shared - a.shared || a.key - b.key).map(({ subject }) => subject))
}

export const BASELINES: Readonly<Record<string, Method>> = {
  'random of role': randomOfRole,
  'most usual of role': mostUsualOfRole,
  'shared roles': sharedRoles,
}
