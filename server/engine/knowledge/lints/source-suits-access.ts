import type { Provenance } from '#engine/model/records.ts'
import type { Lint } from './lint.ts'
import { faultsOfOrigin } from './statements.ts'

/** Listed under these ids, a rule of the trade has no page that could be read. */
const PRACTICE = new Set(['practice', 'TRADE', 'PRACTICE'])

/** What is wrong with the marks of a statement, taken together; undefined when they go together. */
function contradiction({ kind, source, access }: Provenance): string | undefined {
  const parts = source.includes(';') ? source.split(/\s*;\s*/) : [source]
  const seen = access === 'read' || access === 'secondary'
  if (seen && parts.every((part) => PRACTICE.has(part))) return `practice has no page that could be ${access}`
  if (access !== 'memory' && parts.every((part) => part === 'memory'))
    return `what is known from memory is not ${access}`
  if (access === 'common-practice' && !parts.some((part) => PRACTICE.has(part)))
    return `common practice has no source, yet ${source} is named`
  if ((kind === 'measured' || kind === 'law') && access === 'common-practice') return `common practice is not ${kind}`
  if (kind === 'law' && access === 'memory') return 'a law from memory is an assertion'
  return undefined
}

/**
 * Guards against marks that cannot be together: a page of practice that was read, a measurement that is common
 * practice. A measurement from memory may be; it never stops a formula (see `mayStop`) and is shown as remembered.
 */
export const sourceSuitsAccess: Lint = (_raw, { ingredients }) => {
  const judged = new Map<string, Map<string, string | undefined>>() // few combinations stand in all the records
  function fault(provenance: Provenance): string | undefined {
    const { source, kind, access } = provenance
    const ofSource = judged.get(source) ?? new Map<string, string | undefined>()
    judged.set(source, ofSource)
    const marks = kind + access
    if (!ofSource.has(marks)) ofSource.set(marks, contradiction(provenance))
    return ofSource.get(marks)
  }
  return [...ingredients.values()].flatMap((ingredient) => faultsOfOrigin(ingredient, fault))
}
