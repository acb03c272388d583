import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { preservationOf } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Agent, PreservationReport } from '#engine/model/preservation.ts'
import { findingsOf, makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const ask = (formula: Formula): PreservationReport => preservationOf(world, formula)
const agent = (report: PreservationReport, id: string): Agent =>
  report.agents.find(({ ingredient }) => ingredient === id)!
const rules = ({ findings }: PreservationReport): string[] => findings.map(({ rule }) => rule)
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('methylparaben', () => {
  const level = (shares: Record<string, number>, ph = 5.5) =>
    agent(ask(makeFormula({ ...shares, methylparaben: 0.2 }, { ph })), 'methylparaben')

  test('is all free in plain water', () => {
    const { free_percent, takenBy } = level({ glycerin: 3 })
    expect(free_percent!.min).toBeCloseTo(0.2, 3)
    expect(takenBy).toEqual([])
  })

  test('is free more in the water beside liquid paraffin than beside soya oil', () => {
    const paraffin = level({ 'paraffinum-liquidum': 30 }).free_percent!
    const soya = level({ 'glycine-soja-oil': 30 }).free_percent!
    expect(paraffin.min).toBeGreaterThan(0.2)
    expect(soya.max).toBeLessThan(0.1)
  })

  // BEAN1972: K 7.5 in soya oil, read; 6.1 from memory. 30 parts of oil, 69.8 of water: phi 0.43.
  test('in soya oil has the range of the two ratios that are known', () => {
    const { free_percent } = level({ 'glycine-soja-oil': 30 })
    const total = 0.2 / 0.7
    expect(free_percent!.min).toBeCloseTo(total / (1 + 7.5 * (30 / 70)), 3)
    expect(free_percent!.max).toBeCloseTo(total / (1 + 6.1 * (30 / 70)), 3)
  })

  test('more polysorbate never leaves more of it free', () =>
    fc.assert(
      fc.property(between(0.5, 8), between(0.1, 5), (some, more) => {
        const free = (share: number) => level({ 'polysorbate-80': share }).free_percent!.max
        expect(free(some + more)).toBeLessThan(free(some))
      }),
      { numRuns: 30 },
    ))

  test('more fatty oil never leaves more of it free', () =>
    fc.assert(
      fc.property(between(1, 40), between(0.5, 20), (some, more) => {
        const free = (share: number) => level({ 'helianthus-annuus-seed-oil': share }).free_percent!.max
        expect(free(some + more)).toBeLessThanOrEqual(free(some))
      }),
      { numRuns: 30 },
    ))

  test('names who takes it, the micelles by their surfactant', () => {
    const { takenBy } = level({ 'polysorbate-80': 5, 'glycine-soja-oil': 10 })
    expect(takenBy.map(({ by, ingredient }) => `${by} ${ingredient ?? ''}`)).toEqual([
      'micelles polysorbate-80',
      'oil glycine-soja-oil',
    ])
  })

  test('with a surfactant whose hold is not known may be free from nothing on, and that is said', () => {
    const report = ask(makeFormula({ 'ceteareth-20': 4, 'cetearyl-alcohol': 4, methylparaben: 0.2 }))
    expect(agent(report, 'methylparaben').free_percent!.min).toBe(0)
    expect(report.findings.filter(({ severity }) => severity === 'unknown').map(({ about }) => about)).toContainEqual([
      'ceteareth-20',
      'methylparaben',
    ])
  })
})

describe('sorbic and benzoic acid', () => {
  const toner = (ph: number | null) =>
    ask(makeFormula({ glycerin: 4, 'sodium-benzoate': 0.5, 'potassium-sorbate': 0.3 }, { ph, hottest_c: 25 }))

  // pKa 4.19 to 4.2 and 4.76 to 4.8; 0.8475 g of benzoic acid in 1 g of its sodium salt.
  test('are undissociated as their constants say', () => {
    const { undissociated_percent } = agent(toner(4.2), 'sodium-benzoate')
    expect(undissociated_percent!.max).toBeCloseTo((0.5 * 0.8475) / 2, 3)
  })

  test('a higher pH never leaves more of them undissociated', () =>
    fc.assert(
      fc.property(between(3, 8), between(0.05, 1), (ph, more) => {
        for (const id of ['sodium-benzoate', 'potassium-sorbate']) {
          const at = (here: number) => agent(toner(here), id).undissociated_percent!.max
          expect(at(ph + more)).toBeLessThanOrEqual(at(ph))
        }
      }),
      { numRuns: 40 },
    ))

  test('hold well inside their windows', () => expect(toner(4.5).verdict).toBe('plausible'))

  test.each([6, 6.5, 7])('do not count as full agents at pH %f', (ph) => {
    const report = toner(ph)
    expect(report.verdict).toBe('fails')
    if (ph > 6) expect(rules(report)).toContain('water-without-preservative')
    expect(report.agents.map(({ window }) => window)).toEqual(['outside', 'outside'])
  })

  test('at the end of a window are said to stand there, with what a drift leaves', () => {
    const report = ask(makeFormula({ glycerin: 4, 'potassium-sorbate': 0.3, phenoxyethanol: 0.8 }, { ph: 5.5 }))
    expect(agent(report, 'potassium-sorbate').window).toBe('edge')
    expect(report.findings.find(({ rule }) => rule === 'preservative-at-window-end')?.message).toMatch(
      /16 % .* 8\.\d %/,
    )
  })

  test('the way back is a pH with what it would free', () => {
    const remedy = toner(6).findings.find(
      ({ rule, about }) => rule === 'preservation-remedy' && about.includes('sodium-benzoate'),
    )
    expect(remedy?.message).toMatch(/^At pH 4\.7 or below 24 % of the benzoic acid/)
  })

  test('are not known where the pH is not', () => {
    const report = toner(null)
    expect(report.verdict).toBe('not-known')
    expect(report.agents.map(({ undissociated_percent }) => undissociated_percent)).toEqual([null, null])
    expect(report.findings.find(({ rule }) => rule === 'preservation-unknown')?.message).toMatch(/pH/)
  })
})

describe('the rules', () => {
  const inactivated = (shares: Record<string, number>) => findingsOf('inactivated', makeFormula(shares))

  test('say in numbers what micelles take, and warn where it is most of an agent', () => {
    const [finding] = inactivated({ 'polysorbate-80': 5, methylparaben: 0.2 })
    expect(finding).toMatchObject({ severity: 'warn', about: ['methylparaben', 'polysorbate-80'] })
    // R = 1 + 0.71 · 5 / 0.998 (all of the formula is water phase): 78 % bound.
    expect(finding!.message).toMatch(/about 78 % of the methylparaben sits in its micelles/)
  })

  test('leave it at a note where less than half is taken', () =>
    expect(inactivated({ 'polysorbate-80': 0.8, methylparaben: 0.2 })[0]?.severity).toBe('note'))

  test('leave it at a note where a test found the agent less affected', () =>
    expect(inactivated({ 'polysorbate-80': 5, phenoxyethanol: 0.9 })[0]).toMatchObject({
      severity: 'note',
      message: expect.stringMatching(/less affected/),
    }))
})
