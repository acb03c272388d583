import { profileCosine } from '#engine/chemistry/oil-constants.ts'
import { numberOf, usedClaim, wordOf } from '#engine/graph/subject.ts'
import type { Subject } from '#engine/graph/subject.ts'
import type { World } from '#engine/graph/world.ts'
import type { Criterion } from '#engine/model/records.ts'

/** How near a stand-in comes in one criterion: 0 to 1, or why there is no figure. */
export type Nearness = number | 'not-asked' | 'not-known'

/** A stand-in of which a property is not known is taken as rather far: unknown is never yes. */
export const UNKNOWN_NEARNESS = 0.3

/** Groups in which more is worse: what the stand-in has and the missing one had not counts against it. */
const BURDENS = new Set(['hazard', 'allergen'])

const inGroup = (subject: Subject, group: string, { knowledge }: World): string[] =>
  [...subject.classes].filter((id) => knowledge.classes.get(id)?.group === group)

/** No charge offends nobody, an amphoteric goes with either; only opposite charges are far. */
function byCharge(asked: readonly string[], given: readonly string[]): number {
  if (asked.some((id) => given.includes(id))) return 1
  const mild = (ids: readonly string[]) => ids.includes('nonionic') || ids.includes('amphoteric')
  return mild(asked) || mild(given) ? 0.5 : 0
}

function byClass(missing: Subject, stand: Subject, group: string, world: World): Nearness {
  const asked = inGroup(missing, group, world)
  const given = inGroup(stand, group, world)
  if (BURDENS.has(group)) return Math.max(0, 1 - 0.5 * given.filter((id) => !asked.includes(id)).length)
  if (asked.length === 0) return 'not-asked'
  if (given.length === 0) return 'not-known'
  if (group === 'charge') return byCharge(asked, given)
  const common = asked.filter((id) => given.includes(id)).length
  const union = new Set([...asked, ...given]).size
  return (common / asked.length + common / union) / 2
}

/** Half the score at one scale of distance. */
function byNumber(missing: Subject, stand: Subject, { property = '', scale = 1, log = false }: Criterion): Nearness {
  const asked = numberOf(missing, property)
  const given = numberOf(stand, property)
  if (asked === undefined) return 'not-asked'
  if (given === undefined) return 'not-known'
  const distance = log && asked > 0 && given > 0 ? Math.log10(asked / given) : asked - given
  return 1 / (1 + (distance / scale) ** 2)
}

function byWord(missing: Subject, stand: Subject, property: string): Nearness {
  const asked = wordOf(missing, property)
  const given = wordOf(stand, property)
  if (asked === undefined) return 'not-asked'
  if (given === undefined) return 'not-known'
  if (asked === given) return 1
  return asked === 'both' || given === 'both' ? 0.6 : 0
}

function byProfile(missing: Subject, stand: Subject): Nearness {
  const asked = usedClaim(missing, 'fatty_acids')?.shares
  const given = usedClaim(stand, 'fatty_acids')?.shares
  if (!asked) return 'not-asked'
  // No fatty acids at all is a fact of its own: a hydrocarbon nourishes nothing.
  if (!given) return stand.classes.has('triglyceride') ? 'not-known' : 0
  return profileCosine(asked, given) ** 2
}

const STRENGTH: Record<string, number> = { strong: 1, moderate: 0.6, weak: 0.25, none: 0 }

/** Share of the cover that is kept, group by group; more than was there is no gain. */
function bySpectrum(missing: Subject, stand: Subject): Nearness {
  const asked = usedClaim(missing, 'spectrum')?.spectrum
  const given = usedClaim(stand, 'spectrum')?.spectrum
  if (!asked) return 'not-asked'
  if (!given) return 'not-known'
  const groups = Object.keys(asked)
  const kept = groups.map((group) => {
    const before = STRENGTH[asked[group] ?? 'none'] ?? 0
    return before === 0 ? 1 : Math.min(1, (STRENGTH[given[group] ?? 'none'] ?? 0) / before)
  })
  return kept.reduce((sum, value) => sum + value, 0) / groups.length
}

export function nearness(criterion: Criterion, missing: Subject, stand: Subject, world: World): Nearness {
  const { by, property = '', group = '' } = criterion
  if (by === 'class') return byClass(missing, stand, group, world)
  if (by === 'number') return byNumber(missing, stand, criterion)
  if (by === 'word') return byWord(missing, stand, property)
  if (by === 'profile') return byProfile(missing, stand)
  return bySpectrum(missing, stand)
}

export const nameOfCriterion = ({ by, property, group }: Criterion): string =>
  by === 'spectrum' ? 'spectrum' : (property ?? group ?? by)

export interface Likeness {
  /** weighted mean of the criteria, 0 to 1 */
  total: number
  scores: Record<string, number>
  unknown: string[]
  /** the criterion of what it is there for: its share of all weights, and how near the stand-in comes; null where not known */
  purpose?: { share: number; near: number | null }
}

/** Weights that a person moved, by name of the criterion; 1 is as recorded. */
export type Moved = Readonly<Record<string, number>>

export const weightOf = (criterion: Criterion, moved: Moved): number =>
  criterion.weight * (moved[nameOfCriterion(criterion)] ?? 1)

/** How like the missing one a stand-in is in what counts for this role. */
export function likeness(
  criteria: readonly Criterion[],
  missing: Subject,
  stand: Subject,
  world: World,
  moved: Moved = {},
): Likeness {
  const out: Likeness = { total: 0, scores: {}, unknown: [] }
  let weights = 0
  for (const criterion of criteria) {
    const near = nearness(criterion, missing, stand, world)
    if (near === 'not-asked') continue
    const score = near === 'not-known' ? UNKNOWN_NEARNESS : near
    if (near === 'not-known') out.unknown.push(nameOfCriterion(criterion))
    else out.scores[nameOfCriterion(criterion)] = score
    const weight = weightOf(criterion, moved)
    if (criterion.purpose) out.purpose = { share: weight, near: near === 'not-known' ? null : near }
    out.total += score * weight
    weights += weight
  }
  if (out.purpose) out.purpose.share /= weights
  // Nothing to compare by: neither near nor far.
  out.total = weights === 0 ? 0.5 : out.total / weights
  return out
}
