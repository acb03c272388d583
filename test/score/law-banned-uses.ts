import type { World } from '#engine/index.ts'
import type { Area } from '#engine/model/formula.ts'
import { circumstancesOf } from './law-circumstances.ts'
import type { Circumstances } from './law-circumstances.ts'
import { findingsOfEntry, formulaOf, has } from './law-formulas.ts'
import type { LawRow } from './law-rows.ts'

/** A use for which a row bans its substance whatever the amount. */
export interface BannedUse {
  row: LawRow
  use: string
  /** the product to test with; null: no formula can state it */
  at: Circumstances | null
  /** how it has to be judged: banned, asked for, or told as a condition */
  expected: 'stop' | 'asked' | 'told'
}

const on = (...areas: Area[]): Circumstances => ({ areas })

/** Words of the rows → product in which the ban has to be found. */
const USES: [RegExp, Circumstances | null, BannedUse['expected']][] = [
  [/^children under 3$|^children under 3 except bath/, on('under-3'), 'stop'],
  [/^children under 3, shampoo excepted/, on('under-3', 'face'), 'stop'],
  [/^children under (6|10)/, on('under-3'), 'stop'],
  [/nappy area/, { product: 'leave-on', ...on('under-3') }, 'asked'],
  [/^leave-on products$/, { product: 'leave-on' }, 'stop'],
  [/^(oral and )?lip products|mucous/, on('lip'), 'stop'],
  [/^eye and lip products|^eye products/, on('eye'), 'stop'],
  [/^body lotion/, { product: 'leave-on', ...on('body') }, 'stop'],
  [/^every product type not listed/, on('intimate'), 'stop'],
  [/^sunscreen/, { beside: { 'ethylhexyl-salicylate': 3 } }, 'asked'],
  [/lungs|spray|aerosol/, {}, 'told'],
  [/oral|toothpaste|mouthwash/, null, 'told'],
]

/** Every use that a row bans, one by one. */
export function bannedUses(row: LawRow): BannedUse[] {
  return row.prohibited
    .split(/\s*;\s*/)
    .filter(Boolean)
    .map((use) => {
      const known = USES.find(([words]) => words.test(use))
      if (!known) throw new Error(`${row.fact}: no product is known for "${use}"`)
      return { row, use, at: known[1], expected: known[2] }
    })
}

/** What is wrong with the judgement of a banned use at half of the limit. */
export function faultOfUse(world: World, { row, at, expected }: BannedUse): string | null {
  if (!at) return null
  const own = circumstancesOf(row)
  const here = { ...own, ...at, beside: { ...own.beside, ...at.beside } }
  const substance = here.substance ?? row.ids[0] ?? ''
  const limit_percent = row.max_percent_as_supplied ?? (row.max_percent ?? 0.2) / (here.factor ?? 1)
  const day = row.applies_from === '' ? undefined : row.applies_from
  const found = findingsOfEntry(world, row, formulaOf(row, here, { substance, share_percent: limit_percent / 2 }), day)
  if (expected === 'stop') return has(found, 'stop') || (own.named && has(found, 'unknown')) ? null : 'is not stopped'
  if (expected === 'asked') return has(found, 'unknown', 'stop') ? null : 'is not asked'
  return found.some(({ message }) => /spray|lungs/.test(message)) ? null : 'is not told'
}
