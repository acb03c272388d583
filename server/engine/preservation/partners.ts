import type { FormulaContext } from '#engine/formula/context.ts'
import { nameOf } from '#engine/formula/say.ts'
import { numberOf, usedClaim } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { Say } from '#engine/words/say.ts'
import type { World } from '#engine/graph/world.ts'
import { isUnproven } from './agents.ts'
import type { Group } from './tables.ts'
import { windowPosition } from './window.ts'

/** Families as a maker knows them; the first that an agent belongs to names it. */
const FAMILIES: readonly [string, (name: string, say: Say) => string][] = [
  ['paraben', (name, say) => say`a paraben such as ${name}`],
  ['organic-acid', (name, say) => say`an organic acid such as ${name}`],
  ['aromatic-alcohol', (name, say) => say`an aromatic alcohol such as ${name}`],
  ['cationic-biocide', (name, say) => say`a cationic preservative such as ${name}`],
  ['booster-only', (name, say) => say`a booster such as ${name}`],
]

/** Rare agents and well-known sensitisers are no advice. */
const LEAST_USUAL = 3

const memo = new WeakMap<World, readonly Subject[]>()

function advisable(world: World): readonly Subject[] {
  const known = memo.get(world)
  if (known) return known
  const found = world
    .players('preservative')
    .filter(
      (agent) =>
        agent.madeOf.length === 0 &&
        !isUnproven(agent) &&
        !agent.classes.has('known-sensitiser') &&
        (numberOf(agent, 'usual') ?? 0) >= LEAST_USUAL,
    )
    .sort((a, b) => (numberOf(b, 'usual') ?? 0) - (numberOf(a, 'usual') ?? 0) || (a.id < b.id ? -1 : 1))
  memo.set(world, found)
  return found
}

/** Only what is strong where it is needed and works at this pH; boosters and blends are left out. */
function fits(agent: Subject, groups: readonly Group[], ph: number | null): boolean {
  const spectrum = usedClaim(agent, 'spectrum')?.spectrum
  if (!spectrum || groups.some((group) => spectrum[group] !== 'strong')) return false
  const position = windowPosition(agent, ph)
  return position === 'inside' || (position === 'not-known' && ph === null)
}

const answers = new WeakMap<World, Map<string, readonly (readonly [string, Subject])[]>>()

/** Agents that fit, each with its family; the question comes up again and again with the same groups and pH. */
function fitting(world: World, groups: readonly Group[], ph: number | null): readonly (readonly [string, Subject])[] {
  const known = answers.get(world) ?? new Map<string, readonly (readonly [string, Subject])[]>()
  answers.set(world, known)
  const key = `${groups.join(' ')} ${ph === null ? '' : ph.toFixed(1)}`
  const found = known.get(key)
  if (found) return found
  const agents = advisable(world).flatMap((agent) => {
    const family = FAMILIES.find(([one]) => agent.classes.has(one))?.[0]
    return family !== undefined && fits(agent, groups, ph === null ? null : Number(ph.toFixed(1)))
      ? [[family, agent] as const]
      : []
  })
  known.set(key, agents)
  return agents
}

/** Families of partners that cover these groups at the pH of the formula, each with its most usual member; '' if none. */
export function partnersFor(context: FormulaContext, groups: readonly Group[]): string {
  const { say } = context.world
  const named = new Map<string, string>()
  for (const [family, agent] of fitting(context.world, groups, context.ph)) {
    if (named.has(family) || context.lines.some(({ subject }) => subject.id === agent.id)) continue
    named.set(family, say.inside(nameOf(agent)))
  }
  const texts = [...named].flatMap(([family, name]) => FAMILIES.find(([one]) => one === family)?.[1](name, say) ?? [])
  return say.list(texts.slice(0, 3), 'and')
}
