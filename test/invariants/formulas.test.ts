import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkFormula, faultsOf, findSwaps } from '#engine/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula, Line } from '#engine/model/formula.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { realWorld } from '../helpers.ts'

const world = realWorld()
const check = (formula: Formula) => checkFormula(world, formula)
const brief = (findings: readonly Finding[]) =>
  findings.map(({ rule, severity, about }) => `${severity} ${rule} ${about.join(' ')}`)
const one = fc.constantFrom(...FORMULAS)
const shuffled = (formula: Formula, seed: number): Formula => ({
  ...formula,
  lines: [...formula.lines]
    .map((line, index) => ({ line, key: Math.sin(seed * 97 + index * 13) }))
    .sort((a, b) => a.key - b.key)
    .map(({ line }) => line),
})

describe('the formulas of this folder', () => {
  test('are at least 25, each with its reason, and none is impossible', () => {
    expect(FORMULAS.length).toBeGreaterThanOrEqual(25)
    for (const { why, formula } of FORMULAS) {
      expect(why.length).toBeGreaterThan(9)
      expect(faultsOf(formula, world)).toEqual([])
    }
  })
  test('have a line each that is on record', () => {
    for (const { formula } of FORMULAS)
      for (const { ingredient } of formula.lines)
        expect([ingredient, world.find(ingredient)?.tier]).not.toContain('inventory')
  })
})

describe('the order of lines', () => {
  test('changes no finding', () =>
    fc.assert(
      fc.property(one, fc.nat(1000), ({ formula }, seed) => {
        const [before, after] = [check(formula), check(shuffled(formula, seed))]
        expect(after.findings).toEqual(before.findings)
        expect([after.verdict, after.form, after.common_ph]).toEqual([before.verdict, before.form, before.common_ph])
      }),
      { numRuns: 60 },
    ))

  test('changes no offer and no refusal', () => {
    FORMULAS.filter((_, index) => index % 3 === 0).forEach(({ formula }, index) => {
      const missing = formula.lines[formula.lines.length >> 1]!.ingredient
      const ask = (asked: Formula) => {
        const { swaps, refused, outcome, leaveOut } = findSwaps(world, { formula: asked, missing: [missing] })
        return [
          outcome,
          leaveOut,
          swaps.map(({ lines }) => lines),
          refused.map(({ lines, message }) => [lines, message]),
        ]
      }
      expect(ask(shuffled(formula, index))).toEqual(ask(formula))
    })
  })
})

describe('writing the same formula otherwise', () => {
  test('a line that fills up says the same as its share', () => {
    for (const { formula } of FORMULAS) {
      const [first, ...rest] = formula.lines
      const filled: Line = { ...first!, fills: true }
      delete filled.share_percent
      expect(brief(check({ ...formula, lines: [filled, ...rest] }).findings)).toEqual(brief(check(formula).findings))
    }
  })

  test('a line split in two changes no finding', () => {
    const wrong = FORMULAS.flatMap(({ name, formula }) =>
      formula.lines.flatMap((line, at) => {
        const half = { ...line, share_percent: (line.share_percent ?? 0) / 2 }
        const lines = [...formula.lines.slice(0, at), half, half, ...formula.lines.slice(at + 1)]
        const [before, after] = [brief(check(formula).findings), brief(check({ ...formula, lines }).findings)]
        return JSON.stringify(before) === JSON.stringify(after) ? [] : [`${name}: ${line.ingredient}`]
      }),
    )
    expect(wrong).toEqual([])
  })

  test('a blend with its parts in another order is the same blend', () => {
    const { formula } = FORMULAS.find(({ name }) => name === 'light-face-cream')!
    const turned = formula.lines.map((line) =>
      line.ingredient === 'cetearyl-olivate-and-sorbitan-olivate'
        ? { ...line, ingredient: 'sorbitan-olivate-and-cetearyl-olivate' }
        : line,
    )
    expect(check({ ...formula, lines: turned }).findings).toEqual(check(formula).findings)
    const ask = (lines: readonly Line[]) =>
      findSwaps(world, { formula: { ...formula, lines: [...lines] }, missing: ['glycerin'] })
    expect(ask(turned).swaps.map(({ lines }) => lines)).toEqual(ask(formula.lines).swaps.map(({ lines }) => lines))
  })

  test('an alias says the same as the id of its record, as a line and as the missing one', () => {
    for (const [alias, id] of world.knowledge.aliases) {
      const formula = (ingredient: string): Formula => ({
        market: 'eu',
        product: 'leave-on',
        ph: 5.5,
        hottest_c: 40,
        lines: [
          { ingredient: 'glycerin', share_percent: 96 },
          { ingredient, share_percent: 1 },
          { ingredient: 'panthenol', share_percent: 3 },
        ],
      })
      expect(check(formula(alias)).findings).toEqual(check(formula(id)).findings)
      const [a, b] = [alias, id].map((name) => findSwaps(world, { formula: formula(name), missing: [name], limit: 3 }))
      expect(a!.swaps.map(({ lines }) => lines)).toEqual(b!.swaps.map(({ lines }) => lines))
    }
  })

  test('two runs are equal', () => {
    for (const { formula } of FORMULAS) expect(check(formula)).toEqual(check(formula))
  })
})

describe('what is not known', () => {
  const forgetting: [string, (formula: Formula) => Formula][] = [
    ['the pH', (formula) => ({ ...formula, ph: null })],
    ['the areas of use', ({ areas: _areas, ...formula }) => formula],
    ['which areas, with an empty list', (formula) => ({ ...formula, areas: [] })],
  ]
  test.each(forgetting)('forgetting %s clears nobody', (_name, forget) => {
    const cleared = FORMULAS.filter(({ formula }) => {
      const [before, after] = [check(formula).verdict, check(forget(formula)).verdict]
      return before !== 'clear' && after === 'clear'
    }).map(({ name }) => name)
    expect(cleared).toEqual([])
  })

  test('a formula with water and an acid preservative is not known without its pH', () => {
    for (const { formula } of FORMULAS) {
      if (formula.lines.some(({ ingredient }) => ingredient === 'sodium-benzoate'))
        expect(check({ ...formula, ph: null }).verdict).toBe('not-known')
    }
  })

  test('an ingredient known by name only is never clear', () => {
    for (const { formula } of FORMULAS) {
      const lines = [
        ...formula.lines.slice(0, -1),
        { ...formula.lines.at(-1)!, ingredient: 'artemisia-montana-leaf-extract' },
      ]
      expect(check({ ...formula, lines }).verdict).not.toBe('clear')
    }
  })
})
