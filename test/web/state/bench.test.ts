import { describe, expect, test } from 'vitest'
import type { Bench } from '#web/state/bench.ts'
import { editLine, letFill, scaleTo100, setShare, toggleMissing } from '#web/state/edit.ts'
import { addText, benchFromText, rereadLine } from '#web/state/from-text.ts'
import { gramsOf, shareOf, sumShares } from '#web/state/shares.ts'
import { takeFormula, toFormula } from '#web/state/to-formula.ts'

const idOf = ({ chosen, name }: Bench['lines'][number]) => chosen ?? name.toLowerCase().replaceAll(' ', '-')
const CREAM = 'aqua to 100\nglycerin 4\nalmond oil 12\npH 5.5\nHeat to 75 C'

describe('shares', () => {
  test('the filling line comes to what is left', () => {
    const { lines } = benchFromText(CREAM)
    const sum = sumShares(lines)
    expect(sum).toEqual({ stated_percent: 16, filler_percent: 84, state: 'adds-up' })
    expect(lines.map((line) => shareOf(line, sum))).toEqual([84, 4, 12])
  })
  test.each([
    ['oil 60\nwax 39.97', 'adds-up'],
    ['oil 60\nwax 39', 'short'],
    ['oil 60\nwax 41', 'over'],
    ['oil 60\nwax 40\nwater to 100', 'no-room'],
    ['oil 60\nwax', 'open'],
  ])('%j is %s', (typed, state) => expect(sumShares(benchFromText(typed).lines).state).toBe(state))
  test('grams need a share and a batch', () => {
    expect(gramsOf(4, 250)).toBe(10)
    expect(gramsOf(null, 250)).toBeNull()
    expect(gramsOf(4, null)).toBeNull()
  })
  test('scaling brings the sum to 100', () =>
    expect(scaleTo100(benchFromText('oil 60\nwax 20')).lines.map((line) => line.share_percent)).toEqual([75, 25]))
})

describe('edits', () => {
  test('a typed share ends filling up', () =>
    expect(setShare(benchFromText(CREAM), 'l1', 80).lines[0]).toMatchObject({ share_percent: 80, fills: false }))
  test('only one line fills up at a time', () => {
    const bench = letFill(benchFromText(CREAM), 'l2', 84)
    expect(bench.lines.map(({ fills }) => fills)).toEqual([false, true, false])
    expect(bench.lines[0]?.share_percent).toBe(84)
  })
  test('a fourth mark of missing changes nothing', () => {
    const bench = benchFromText('a1 oil 1\nb1 oil 1\nc1 oil 1\nd1 oil 1')
    const marked = ['l1', 'l2', 'l3', 'l4'].reduce(toggleMissing, bench)
    expect(marked.lines.map(({ missing }) => missing)).toEqual([true, true, true, false])
    expect(toggleMissing(marked, 'l1').lines[0]?.missing).toBe(false)
  })
  test('a corrected name keeps the share it had', () =>
    expect(rereadLine(benchFromText('glycerin 4'), 'l1', 'glycerol').lines[0]).toMatchObject({
      name: 'glycerol',
      share_percent: 4,
    }))
  test('a correction with an amount brings its own', () =>
    expect(rereadLine(benchFromText('glycerin 4'), 'l1', 'glycerol 5 %').lines[0]).toMatchObject({ share_percent: 5 }))
  test('an unread line becomes an ingredient when it is corrected', () =>
    expect(rereadLine(benchFromText('???'), 'l1', 'glycerin 3').lines[0]).toMatchObject({
      kind: 'ingredient',
      name: 'glycerin',
      share_percent: 3,
    }))
  test('added lines get keys of their own', () => {
    const bench = addText(benchFromText('oil 50\nwax 50'), 'dye 1\n// remark')
    expect(bench.lines.map(({ key }) => key)).toEqual(['l1', 'l2', 'l3'])
    expect(bench.notes).toBe('// remark')
  })
})

describe('the formula asked about', () => {
  test('carries settings, shares and phases', () =>
    expect(toFormula(benchFromText(CREAM), idOf)).toEqual({
      aside_percent: 0,
      formula: {
        market: 'eu',
        product: 'leave-on',
        ph: 5.5,
        hottest_c: 75,
        lines: [
          { ingredient: 'aqua', fills: true },
          { ingredient: 'glycerin', share_percent: 4 },
          { ingredient: 'almond-oil', share_percent: 12 },
        ],
      },
    }))
  test.each([
    ['', 'no-lines'],
    ['???', 'unread'],
    ['oil 60\nwax', 'shares'],
    ['oil 60', 'sum'],
  ])('waits for what %j lacks', (typed, lacking) => expect(toFormula(benchFromText(typed), idOf)).toEqual({ lacking }))
  test('waits for a name that is not settled', () =>
    expect(toFormula(benchFromText(CREAM), () => null)).toEqual({ lacking: 'names' }))
  test('leaves out a line put aside and scales the others', () => {
    const bench = editLine(benchFromText('oil 72\nwax 18\nmystery 10'), 'l3', { aside: true })
    expect(toFormula(bench, idOf)).toMatchObject({
      aside_percent: 10,
      formula: { lines: [{ share_percent: 80 }, { share_percent: 20 }] },
    })
  })
})

describe('taking a stand-in', () => {
  const formula = {
    market: 'eu' as const,
    product: 'leave-on' as const,
    ph: 5,
    hottest_c: 75,
    lines: [
      { ingredient: 'aqua', share_percent: 84 },
      { ingredient: 'glycerin', share_percent: 4 },
      { ingredient: 'olea-europaea-fruit-oil', share_percent: 12, phase: 'oil' as const },
    ],
  }
  test('puts the whole new recipe on the bench and unmarks', () => {
    const bench = takeFormula(toggleMissing(benchFromText(CREAM), 'l3'), formula, idOf)
    expect(bench.lines.map(({ key, name, share_percent, missing }) => [key, name, share_percent, missing])).toEqual([
      ['l1', 'aqua', 84, false],
      ['l2', 'glycerin', 4, false],
      ['l4', 'olea europaea fruit oil', 12, false],
    ])
    expect(bench.settings.ph).toBe(5)
  })
  test('keeps lines put aside and makes room for them', () => {
    const before = editLine(benchFromText('aqua to 100\nglycerin 4\nmystery 10'), 'l3', { aside: true })
    const bench = takeFormula(before, formula, idOf)
    expect(bench.lines.at(-1)).toMatchObject({ name: 'mystery', share_percent: 10, aside: true })
    expect(sumShares(bench.lines).state).toBe('adds-up')
  })
})
