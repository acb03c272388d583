import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding, Verdict } from '#engine/model/finding.ts'
import { CHECKS } from './index.ts'

const ORDER = { stop: 0, warn: 1, unknown: 2, note: 3 } as const
const CHECK_IDS = Object.keys(CHECKS)

const key = (finding: Finding): string => `${finding.rule} ${finding.about.join(' ')}`

/** One rule on one formula. */
export function runRule(id: string, context: FormulaContext): Finding[] {
  const severity = context.world.knowledge.rules.get(id)?.severity ?? 'warn'
  return (CHECKS[id]?.(context) ?? []).map((hit) => ({ rule: id, ...hit, severity: hit.severity ?? severity }))
}

/** Worst first, ties by rule and subject, so that one question has one answer. */
export const inOrder = (findings: readonly Finding[]): Finding[] =>
  findings
    .map((finding) => ({ finding, key: key(finding) }))
    .sort((a, b) => ORDER[a.finding.severity] - ORDER[b.finding.severity] || (a.key < b.key ? -1 : 1))
    .map(({ finding }) => finding)

/** Some rules on one formula. */
export const runRules = (ids: readonly string[], context: FormulaContext): Finding[] =>
  inOrder(ids.flatMap((id) => runRule(id, context)))

/** All rules on one formula. */
export const runChecks = (context: FormulaContext): Finding[] => runRules(CHECK_IDS, context)

/** Unknown never turns into clear. */
export function verdictOf(findings: readonly Finding[]): Verdict {
  const has = (severity: Finding['severity']) => findings.some((finding) => finding.severity === severity)
  if (has('stop')) return 'stop'
  if (has('unknown')) return 'not-known'
  return has('warn') ? 'attention' : 'clear'
}
