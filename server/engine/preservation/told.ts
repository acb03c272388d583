import type { Say } from '#engine/words/say.ts'
import type { Finding, Severity } from '#engine/model/finding.ts'

/** What this layer has to say about a formula; a rule or the reply adds its name and usual severity. */
export interface Told extends Omit<Finding, 'rule' | 'severity'> {
  severity?: Severity
}

/** A row of a published table as a reason: its words, and the claim that can be opened. */
export const cite = (fact: string, row: { id: string }): { fact: string; claim: string } => ({ fact, claim: row.id })

/** Sources that a person can look up, each once. */
export const listed = (rows: readonly { source: string }[]): string[] =>
  [...new Set(rows.flatMap(({ source }) => source.split(/\s*;\s*/)))].sort()

/** How a figure was seen, where that is worth a word. */
export const seenAs = ({ access }: { access: string }, say: Say): string =>
  access === 'memory' ? say`, from memory` : ''
