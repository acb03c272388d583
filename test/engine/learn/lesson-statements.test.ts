import { describe, expect, test } from 'vitest'
import { agrees } from '#engine/knowledge/lints/lesson-facts.ts'
import { judgeStatement } from '#engine/learn/lesson-statements.ts'
import type { Statement } from '#engine/model/lesson.ts'
import { realWorld } from '../../helpers.ts'

const holds = (statement: Omit<Statement, 'says'>): boolean =>
  judgeStatement(realWorld(), { says: 'A sentence.', ...statement }).holds

describe('a figure', () => {
  test('agrees at the decimals at which it is stated', () => {
    expect([agrees(4.2, 4.204), agrees(4.2, 4.26), agrees(4, 4.4), agrees(4, undefined)]).toEqual([
      true,
      false,
      true,
      false,
    ])
  })
})

const PAIRS: [string, Omit<Statement, 'says'>, Omit<Statement, 'says'>][] = [
  [
    'plays',
    { plays: { ingredient: 'sodium-laureth-sulfate', role: 'surfactant' } },
    { plays: { ingredient: 'sodium-laureth-sulfate', role: 'wax' } },
  ],
  [
    'not_plays',
    { not_plays: { ingredient: 'glycerin', role: 'preservative' } },
    { not_plays: { ingredient: 'glycerin', role: 'preserver' } },
  ],
  [
    'in_class',
    { in_class: { ingredient: 'cetrimonium-chloride', class: 'cationic' } },
    { in_class: { ingredient: 'cetrimonium-chloride', class: 'anionic' } },
  ],
  [
    'claim of a profile',
    { claim: { ingredient: 'olea-europaea-fruit-oil', property: 'fatty_acids', of: 'C18:1', at_least: 55 } },
    { claim: { ingredient: 'olea-europaea-fruit-oil', property: 'fatty_acids', of: 'C18:9', at_least: 0 } },
  ],
  [
    'holds_at',
    { holds_at: { ingredient: 'sodium-benzoate', ph: 4, holds: 'yes', window: 'works' } },
    { holds_at: { ingredient: 'sodium-benzoate', ph: 7, holds: 'yes', window: 'works' } },
  ],
  [
    'holds_at without a window on record',
    { holds_at: { ingredient: 'sodium-benzoate', ph: 7, holds: 'no' } },
    { holds_at: { ingredient: 'glycerin', ph: 7, holds: 'no' } },
  ],
  ['clash', { clash: { between: ['cetrimonium-chloride', 'carbomer'] } }, { clash: { between: ['glycerin', 'aqua'] } }],
  [
    'finding',
    { finding: { recipe: 'hydrosol-toner', change: { ph: 7 }, brings: 'preservative-window' } },
    { finding: { recipe: 'hydrosol-toner', change: { ph: 4.5 }, brings: 'preservative-window' } },
  ],
  [
    'no_finding',
    { no_finding: { recipe: 'hydrosol-toner', rule: 'preservative-window' } },
    { no_finding: { recipe: 'hydrosol-toner', change: { ph: 7 }, rule: 'preservative-window' } },
  ],
  [
    'swap',
    { swap: { recipe: 'light-face-cream', missing: 'glycerin', offered: 'propanediol', outcome: 'swaps' } },
    { swap: { recipe: 'light-face-cream', missing: 'glycerin', refused: 'propanediol' } },
  ],
  [
    'calculates',
    {
      calculates: { name: 'undissociated-share', inputs: { ph: 4, pka: 4 }, value: 'share', equals: 0.5, tolerance: 0 },
    },
    { calculates: { name: 'undissociated-share', inputs: { ph: 4 }, value: 'share', equals: 0.5, tolerance: 0 } },
  ],
]
test.each(PAIRS)('%s: what is so holds, what is not does not', (_kind, isSo, isNot) => {
  expect([holds(isSo), holds(isNot)]).toEqual([true, false])
})

test('an ingredient that nobody knows makes every statement false', () => {
  expect(holds({ not_plays: { ingredient: 'moonstone-water', role: 'humectant' } })).toBe(false)
  expect(holds({ holds_at: { ingredient: 'moonstone-water', ph: 5, holds: 'no' } })).toBe(false)
})
