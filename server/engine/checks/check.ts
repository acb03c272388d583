import type { FormulaContext } from '#engine/formula/context.ts'
import type { Finding, Severity } from '#engine/model/finding.ts'

/** What a check reports; the rule's id and usual severity are added by the runner. */
export interface Hit extends Omit<Finding, 'rule' | 'severity'> {
  severity?: Severity
}

/** One rule as a pure function of a formula in its context. */
export type Check = (context: FormulaContext) => Hit[]
