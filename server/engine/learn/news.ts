import { checkFormula } from '#engine/checks/report.ts'
import type { World } from '#engine/graph/world.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import { drawOne } from './chance.ts'
import type { Chance } from './chance.ts'

/** Practice recipes come up again and again, changed in the same few ways; their findings do not change. */
const seen = new WeakMap<World, Map<string, readonly Finding[]>>()
const MOST_KEPT = 4000

export function findingsFor(world: World, formula: Formula): readonly Finding[] {
  const kept = seen.get(world) ?? new Map<string, readonly Finding[]>()
  seen.set(world, kept)
  const key = JSON.stringify(formula)
  const known = kept.get(key)
  if (known) return known
  const { findings } = checkFormula(world, formula)
  if (kept.size < MOST_KEPT) kept.set(key, findings)
  return findings
}

const keyOf = ({ rule, severity, about, message }: Finding): string =>
  `${rule} ${severity} ${about.join(' ')} ${message}`

/** Findings of the second recipe that the first does not have in the same words. */
export function newFindings(before: readonly Finding[], after: readonly Finding[]): Finding[] {
  const old = new Set(before.map(keyOf))
  return after.filter((one) => !old.has(keyOf(one)))
}

const COMMONPLACE: readonly string[] = ['level-high', 'level-low']

/** The title speaks of law; where the finding is only a warning, an opinion or an advice stands behind it. */
const isLawInName = ({ rule, severity }: Finding): boolean => rule === 'limit-by-law' && severity !== 'stop'

/** The finding to ask about: of a rule that did not fire before, the worst first, a plain level last. */
export function tellingFinding(before: readonly Finding[], after: readonly Finding[], chance: Chance): Finding | null {
  const old = new Set(before.map(({ rule }) => rule))
  const fresh = after.filter(
    (one) => !old.has(one.rule) && !isLawInName(one) && (one.severity === 'stop' || one.severity === 'warn'),
  )
  const telling = fresh.filter(({ rule }) => !COMMONPLACE.includes(rule))
  return drawOne(telling.length > 0 ? telling : fresh, chance) ?? null
}
