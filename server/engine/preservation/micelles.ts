import { totalToFree } from '#engine/chemistry/preservation/partition-with-micelles.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import { matches } from '#engine/knowledge/selector.ts'
import { inside } from '#engine/units/range.ts'
import type { InPhase } from './phases.ts'
import { figuresOf } from './tables.ts'
import type { BindingRow } from './tables.ts'

export type Outcome = NonNullable<BindingRow['outcome']>

/** What one surfactant does to one agent, as far as it is known. */
export interface Taker {
  surfactant: Subject
  /** active matter [% of the water phase] */
  percent: number
  /** total over free that this surfactant alone would bring; undefined where the constant of the pair is not known */
  total_to_free?: number
  /** how a test of the pair ended, the worst at this level */
  outcome?: Outcome
  /** the agent's record says that such a surfactant takes it */
  stated: boolean
  rows: readonly BindingRow[]
}

const WORST: readonly Outcome[] = ['lost', 'partly lost', 'less affected', 'kept']

/** Below this load a surfactant is not looked at [% of the water phase]. */
const TRACE_PERCENT = 0.3

/** Agents that shun fatty surroundings are not taken up: with less than one part in octanol for each in water. */
const staysInWater = (agent: Subject, world: World): boolean => {
  const octanol = figuresOf(world).logP.get(agent.id)
  return octanol !== undefined && octanol.log_p < 0
}

/** From this load on losses were seen [% of the formula in the one study that tried levels]. */
const FELT_PERCENT = 2.5
/** A loss of which the level was not printed counts from the lowest level at which one was seen. */
function wasTested({ outcome, level }: BindingRow, percent: number): boolean {
  if (outcome === null || !inside(percent, level)) return false
  const loss = outcome === 'lost' || outcome === 'partly lost'
  return !loss || level.min !== undefined || percent >= FELT_PERCENT
}

interface Pair {
  rows: readonly BindingRow[]
  constant: BindingRow | undefined
  k: number | undefined
  stated: boolean
}

function lookUpPair(agent: Subject, surfactant: Subject, world: World): Pair {
  const rows = figuresOf(world).bindings.filter(
    (row) => matches(row.appliesTo, agent) && matches(row.surfactant, surfactant),
  )
  const constant = rows.find(({ binding_per_percent }) => binding_per_percent !== null)
  return {
    rows,
    constant,
    k: staysInWater(agent, world) ? 0 : (constant?.binding_per_percent ?? undefined),
    stated: agent.inactivatedBy.some((relation) => matches(relation.with, surfactant)),
  }
}

/** What tables and records say of a pair does not depend on the formula. */
const pairs = new WeakMap<Subject, WeakMap<Subject, Pair>>()

function pairOf(agent: Subject, surfactant: Subject, world: World): Pair {
  const known = pairs.get(agent) ?? new WeakMap<Subject, Pair>()
  pairs.set(agent, known)
  const found = known.get(surfactant)
  if (found) return found
  const pair = lookUpPair(agent, surfactant, world)
  known.set(surfactant, pair)
  return pair
}

function takerOf(agent: Subject, { subject, percent }: InPhase, world: World): Taker {
  const { rows, constant, k, stated } = pairOf(agent, subject, world)
  const tested = rows.filter((row) => wasTested(row, percent))
  const outcome = WORST.find((word) => tested.some((row) => row.outcome === word))
  return {
    surfactant: subject,
    percent,
    ...(k !== undefined && { total_to_free: totalToFree(k, Math.min(100, percent)) }),
    ...(outcome && { outcome }),
    stated,
    rows: [...(constant ? [constant] : []), ...tested.filter((row) => row.outcome === outcome)],
  }
}

const NONE: readonly Taker[] = []

/** Surfactants that may take an agent out of the water, most of them first; ties by id. */
export const takersOf = (agent: Subject, surfactants: readonly InPhase[], world: World): readonly Taker[] =>
  surfactants.length === 0
    ? NONE
    : surfactants
        .filter(({ subject, percent }) => percent >= TRACE_PERCENT && subject.id !== agent.id)
        .map((one) => takerOf(agent, one, world))
        .sort((a, b) => b.percent - a.percent || (a.surfactant.id < b.surfactant.id ? -1 : 1))

/** Total over free of all surfactants together; `open` where the constant of one of them is not known. */
export function totalToFreeOf(takers: readonly Taker[]): { least: number; open: boolean } {
  const least = takers.reduce((sum, { total_to_free = 1 }) => sum + total_to_free - 1, 1)
  return { least, open: takers.some(({ total_to_free, outcome }) => total_to_free === undefined && outcome !== 'kept') }
}

const PARTLY = 0.5

/**
 * What is surely left of an agent's work beside surfactants whose constant is not known, 0 to 1: nothing where a test
 * of the pair ended in a loss, a half where it was partly lost or the record says that such a surfactant takes it.
 * A rule of thumb: how much is taken cannot be told without the constant.
 */
export function sureShare(takers: readonly Taker[]): number {
  const shares = takers.map(({ total_to_free, outcome, stated, percent }) => {
    if (total_to_free !== undefined || outcome === 'kept' || outcome === 'less affected') return 1
    if (outcome === 'lost' && percent >= FELT_PERCENT) return 0
    return outcome !== undefined || stated ? (percent >= FELT_PERCENT ? PARTLY : 1) : 1
  })
  return Math.min(1, ...shares)
}
