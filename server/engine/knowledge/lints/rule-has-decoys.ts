import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Rule } from '#engine/model/records.ts'
import type { Lint, Vocabulary } from './lint.ts'

const LEAST = 2
const SEVERITIES = ['stop', 'warn', 'note', 'unknown']
const SWAPS = ['refuse', 'cost', 'silent']

const idsIn = (cases: readonly unknown[]): string[] =>
  cases.flatMap((one) =>
    isObject(one) && Array.isArray(one['lines'])
      ? one['lines'].flatMap((line) => (isObject(line) ? [String(line['ingredient'])] : []))
      : [],
  )

/** A blend that no record holds is known by its parts. */
const isKnown = (id: string, { ingredients, inventory, aliases }: Vocabulary): boolean =>
  [id, id.split('-and-')].some((names) =>
    [names].flat().every((name) => ingredients.has(name) || inventory.has(name) || aliases.has(name)),
  )

function faultsOf({ fires, silent, severity, swap, why }: Rule, vocabulary: Vocabulary): string[] {
  const unknown = [...new Set(idsIn([...fires, ...silent]))].filter((id) => !isKnown(id, vocabulary))
  return [
    ...(fires.length < LEAST ? [`${fires.length} worked cases; at least ${LEAST} show where it fires`] : []),
    ...(silent.length < LEAST ? [`${silent.length} decoys; at least ${LEAST} show where it stays silent`] : []),
    ...(SEVERITIES.includes(severity) ? [] : [`severity ${severity} is not one of ${SEVERITIES.join(', ')}`]),
    ...(SWAPS.includes(swap) ? [] : [`swap ${swap} is not one of ${SWAPS.join(', ')}`]),
    // A swap looks first with the rules that refuse, and takes what they let pass as held.
    ...(severity === 'stop' && swap !== 'refuse' ? [`stops, but its swap is ${swap}, not refuse`] : []),
    ...(why === '' ? ['says not why'] : []),
    ...unknown.map((id) => `a case names ${id}, which is not known`),
  ]
}

/** Guards against rules that are proved by nothing: without decoys a rule that always fires looks right. */
export const ruleHasDecoys: Lint = (_raw, vocabulary) =>
  [...vocabulary.rules.values()].flatMap((rule) =>
    faultsOf(rule, vocabulary).map((message) => ({ path: `rules/${rule.id}.yaml`, message })),
  )
