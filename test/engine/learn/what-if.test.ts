import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkFormula, whatIfOf } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { RecipeChange } from '#engine/model/lesson-recipe.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const { practice } = world.knowledge
const toner = makeFormula({ 'rosa-damascena-flower-water': 40, glycerin: 3, 'sodium-benzoate': 0.5 }, { ph: 4.5 })
const rulesOf = (formula: Formula) => new Set(checkFormula(world, formula).findings.map(({ rule }) => rule))

describe('what a change does', () => {
  test('a benzoate loses its acid form when the pH goes up', () => {
    const { right, news, after } = whatIfOf(world, toner, { ph: 7 })
    expect(after.ph).toBe(7)
    expect(right).toContain('preservative-window')
    expect(news.map(({ rule }) => rule)).toContain('preservative-window')
  })
  test('what it mends is told as gone', () => {
    const spoilt = { ...toner, ph: 7 }
    expect(whatIfOf(world, spoilt, { ph: 4.5 }).gone.map(({ rule }) => rule)).toContain('preservative-window')
  })
  test('a dull one brings nothing new, and that is the right choice', () => {
    expect(whatIfOf(world, toner, { level: { ingredient: 'glycerin', share_percent: 3.1 } }).right).toEqual([
      'nothing-new',
    ])
  })
  test('water takes up the rest where every share is stated', () => {
    const stated = {
      ...toner,
      lines: toner.lines.map(({ fills, ...line }) => (fills ? { ...line, share_percent: 56.5 } : line)),
    }
    const { after } = whatIfOf(world, stated, { level: { ingredient: 'glycerin', share_percent: 10 } })
    expect(after.lines.find(({ ingredient }) => ingredient === 'aqua')).toEqual({ ingredient: 'aqua', fills: true })
  })
  test('about something that is not there is refused by name', () => {
    expect(() => whatIfOf(world, toner, { remove: 'xanthan-gum' })).toThrow(/holds no xanthan-gum/)
  })
})

const change = (formula: Formula): fc.Arbitrary<RecipeChange> => {
  const ids = formula.lines.filter(({ fills }) => !fills).map(({ ingredient }) => ingredient)
  return fc.oneof(
    fc.integer({ min: 20, max: 110 }).map((tenths) => ({ ph: tenths / 10 })),
    fc.integer({ min: 20, max: 95 }).map((hottest_c) => ({ hottest_c })),
    fc.constantFrom(...ids).map((remove) => ({ remove })),
    fc.tuple(fc.constantFrom(...ids), fc.integer({ min: 1, max: 40 })).map(([ingredient, share]) => ({
      level: { ingredient, share_percent: share / 10 },
    })),
  )
}

test('every right choice speaks after the change, every wrong one is silent, whatever is changed', () => {
  const asked = fc.constantFrom(...practice).chain(({ formula }) => change(formula).map((one) => ({ formula, one })))
  fc.assert(
    fc.property(asked, ({ formula, one }) => {
      const { after, choices, right } = whatIfOf(world, formula, one)
      const now = rulesOf(after)
      const nothing = right.includes('nothing-new')
      expect(right.length).toBeGreaterThan(0)
      expect(nothing && right.length > 1).toBe(false)
      for (const { id } of choices) if (id !== 'nothing-new') expect(now.has(id)).toBe(right.includes(id))
    }),
    { numRuns: 60 },
  )
}, 60_000)
