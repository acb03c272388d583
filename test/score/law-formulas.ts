import { checkFormula } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import { circumstancesOf } from './law-circumstances.ts'
import type { Circumstances } from './law-circumstances.ts'
import type { LawRow } from './law-rows.ts'

const LAW_RULES: ReadonlySet<string> = new Set([
  ...[
    'limit-by-law',
    'limit-by-opinion',
    'limit-coming',
    'limit-by-content',
    'law-ph',
    'law-condition',
    'colour-list-unknown',
  ],
])

const FILLER = 'caprylic-capric-triglyceride'

/** A formula of filler, the substance (pure) and what its use needs. */
export function formulaOf(
  { market }: LawRow,
  here: Circumstances,
  tested: { substance: string; share_percent: number } | null,
): Formula {
  const beside = Object.entries(here.beside ?? {}).map(([ingredient, share]) => ({ ingredient, share_percent: share }))
  const line = tested
    ? [{ ingredient: tested.substance, share_percent: tested.share_percent, strength_percent: 100 }]
    : []
  return {
    market,
    product: here.product ?? 'leave-on',
    ...(here.areas && { areas: here.areas }),
    ...(here.form && { form: here.form }),
    ...(here.uses && { uses: here.uses }),
    ...(here.professional !== undefined && { professional: here.professional }),
    ...(here.dispensing && { dispensing: here.dispensing }),
    ph: here.ph ?? 6,
    hottest_c: 40,
    lines: [{ ingredient: FILLER, fills: true }, ...line, ...beside],
  }
}

/** Findings of law that speak of the entry of a row. */
export function findingsOfEntry(world: World, row: LawRow, formula: Formula, placedOn: string | undefined): Finding[] {
  const own = row.fact === 'EU-III-15a-06' ? '15d' : row.entry.replace(/^preamble-/, 'preamble ')
  const entries = [own, ...(circumstancesOf(row).entries ?? [])].join('|').replaceAll('.', '\\.')
  const named = new RegExp(`, entry (${entries})(,| in the wording)`)
  return checkFormula(world, formula, placedOn).findings.filter(
    ({ rule, message }) => LAW_RULES.has(rule) && named.test(message),
  )
}

/** Whether one of them is as grave; mere conditions are none. */
export const has = (findings: readonly Finding[], ...severities: Finding['severity'][]): boolean =>
  findings.some(({ severity, rule }) => severities.includes(severity) && rule !== 'law-condition')
