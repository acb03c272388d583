import type { Finding } from '#engine/model/finding.ts'
import type { World } from '#engine/graph/world.ts'
import type { Knowledge } from '#engine/knowledge/knowledge.ts'

const RANK = { note: 0, unknown: 1, warn: 2, stop: 3 } as const

/** What a stand-in does by itself: that the missing one failed in the same way excuses nothing. */
const NOT_EXCUSED = new Set([
  ...['limit-by-law', 'limit-by-opinion', 'limit-coming', 'law-ph', 'law-condition', 'small-children', 'phototoxic'],
  ...['preservative-window', 'ph-keeps', 'ph-works', 'heat-too-low', 'soap-in-acid', 'need-missing'],
])

/** Subject of a finding with what was swapped taken out: "the same subject" before and after. */
function subjectOf({ rule, about }: Finding, swapped: ReadonlySet<string>): string {
  const own = NOT_EXCUSED.has(rule) ? about : about.filter((id) => !swapped.has(id))
  return `${rule} ${own.join(' ')}`
}

/** Findings of the new formula that were not there before, or that are worse than before on the same subject. */
export function worsened(
  before: readonly Finding[],
  after: readonly Finding[],
  swapped: ReadonlySet<string>,
): Finding[] {
  const worst = new Map<string, number>()
  for (const finding of before) {
    const key = subjectOf(finding, swapped)
    worst.set(key, Math.max(worst.get(key) ?? -1, RANK[finding.severity]))
  }
  return after.filter((finding) => RANK[finding.severity] > (worst.get(subjectOf(finding, swapped)) ?? -1))
}

/** Findings that forbid a stand-in: a stop, or a warning of a rule that refuses. */
export function forbidding(findings: readonly Finding[], world: World): Finding[] {
  return findings.filter(
    ({ rule, severity }) =>
      severity === 'stop' || (severity === 'warn' && (world.knowledge.rules.get(rule)?.swap ?? 'cost') === 'refuse'),
  )
}

const USUAL_COST = 0.06
const UNKNOWN_COST = 0.14

/** What the remaining new findings take off the rank. */
export function costOf(findings: readonly Finding[], world: World): number {
  return findings.reduce((sum, { rule, severity }) => {
    const data = world.knowledge.rules.get(rule)
    if (data?.swap === 'silent') return sum
    if (severity === 'unknown') return sum + (data?.cost ?? UNKNOWN_COST)
    return sum + (data?.cost ?? USUAL_COST) * (severity === 'note' ? 0.4 : 1)
  }, 0)
}

interface Voices {
  /** rules that can forbid */
  forbid: readonly string[]
  /** rules that cannot forbid but take something off the rank */
  cost: readonly string[]
  /** rules that are told and have no say */
  silent: readonly string[]
}

const voices = new WeakMap<Knowledge, Voices>()

/** Rules by the say they have in a swap. A rule that stops must be one that refuses: a lint holds them together. */
export function rulesByVoice({ knowledge }: World): Voices {
  const known = voices.get(knowledge)
  if (known) return known
  const ids = [...knowledge.rules.keys()]
  const voiceOf = (id: string) => knowledge.rules.get(id)?.swap ?? 'cost'
  const found = {
    forbid: ids.filter((id) => voiceOf(id) === 'refuse'),
    cost: ids.filter((id) => voiceOf(id) === 'cost'),
    silent: ids.filter((id) => voiceOf(id) === 'silent'),
  }
  voices.set(knowledge, found)
  return found
}
