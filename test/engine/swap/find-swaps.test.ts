import { describe, expect, test } from 'vitest'
import { checkFormula, findSwaps } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { deepFrozen, makeFormula, makeWorld, realWorld } from '../../helpers.ts'

const world = realWorld()
const named = (name: string): Formula => FORMULAS.find((one) => one.name === name)!.formula
const idsOf = (reply: ReturnType<typeof findSwaps>) =>
  reply.swaps.map(({ lines }) => lines.map(({ ingredient }) => ingredient))

describe('several missing at once', () => {
  const missing = ['decyl-glucoside', 'coco-glucoside']
  const formula: Formula = { ...named('gentle-shampoo'), form: 'wash' }
  const reply = findSwaps(world, { formula, missing })

  test('none of the missing is offered for another', () => {
    expect(reply.swaps.length).toBeGreaterThan(0)
    expect(
      idsOf(reply)
        .flat()
        .filter((id) => missing.some((one) => id.split('-and-').includes(one))),
    ).toEqual([])
  })
  test('all of them are out of the new formula, which adds up', () => {
    for (const { formula: fresh, replaces } of reply.swaps) {
      expect([...replaces].sort()).toEqual([...missing].sort())
      expect(fresh!.lines.map(({ ingredient }) => ingredient)).not.toEqual(expect.arrayContaining([missing[0]]))
      expect(fresh!.lines.reduce((sum, line) => sum + (line.share_percent ?? 0), 0)).toBeCloseTo(100, 6)
    }
  })
  test('the stated form is kept', () =>
    expect(reply.swaps.map((swap) => swap.formula?.form)).toEqual(reply.swaps.map(() => 'wash')))
})

describe('wishes', () => {
  test('only what is on the shelf is offered, and nothing else is added', () => {
    const gel = named('cold-cream-gel')
    const only = ['xanthan-gum', 'carbomer', 'hydroxyethylcellulose']
    const shelf = new Set([...only, ...gel.lines.map(({ ingredient }) => ingredient)])
    const { swaps } = findSwaps(world, { formula: gel, missing: ['glycerin'], wishes: { only: [...only, 'sorbitol'] } })
    expect(swaps.map(({ lines }) => lines[0]!.ingredient)).toEqual(['sorbitol'])
    const toner = makeFormula(
      { 'xanthan-gum': 0.4, glycerin: 5, phenoxyethanol: 0.9, ethylhexylglycerin: 0.1 },
      { ph: 6, hottest_c: 25 },
    )
    for (const swap of findSwaps(world, { formula: toner, missing: ['xanthan-gum'], wishes: { only } }).swaps) {
      const added = swap.formula!.lines.map(({ ingredient }) => ingredient).filter((id) => !shelf.has(id))
      expect(added).toEqual([])
    }
  })

  test('what is not wanted is not offered, by class', () => {
    const { swaps } = findSwaps(world, {
      formula: named('light-face-cream'),
      missing: ['cetyl-alcohol'],
      wishes: { without: ['palm-linked'] },
    })
    for (const { lines } of swaps) expect(world.find(lines[0]!.ingredient)!.classes.has('palm-linked')).toBe(false)
  })

  test('a pH that is to stay stays', () => {
    for (const name of ['gentle-shampoo', 'hydrosol-toner']) {
      const formula = named(name)
      for (const { ingredient } of formula.lines) {
        const { swaps } = findSwaps(world, { formula, missing: [ingredient], wishes: { keepPh: true }, limit: 4 })
        expect(swaps.map((swap) => swap.formula!.ph)).toEqual(swaps.map(() => formula.ph))
      }
    }
  })

  test('a cold process stays cold', () => {
    const formula = named('cold-cream-gel')
    for (const { ingredient } of formula.lines) {
      const { swaps } = findSwaps(world, { formula, missing: [ingredient], wishes: { hottest_c: 40 }, limit: 4 })
      for (const swap of swaps) {
        expect(swap.formula!.hottest_c).toBe(25)
        expect(swap.findings.map(({ rule }) => rule)).not.toContain('heat-too-low')
      }
    }
  })
})

describe('the limits of the question', () => {
  test('no more are offered than were asked for, and asking for more keeps the first', () => {
    const ask = (limit: number) =>
      idsOf(findSwaps(world, { formula: named('light-face-cream'), missing: ['glycerin'], limit }))
    expect(ask(3)).toEqual(ask(12).slice(0, 3))
  })

  test('an ingredient of which no role is known is said to be not known', () => {
    const reply = findSwaps(world, { formula: makeFormula({ glycerin: 3 }), missing: ['unobtainium'] })
    expect([reply.outcome, reply.swaps]).toEqual(['not-known', []])
  })

  test('the formula asked about is not written to', () => {
    const formula = deepFrozen(
      makeFormula({ glycerin: 5, 'xanthan-gum': 0.4, phenoxyethanol: 0.9, ethylhexylglycerin: 0.1 }),
    )
    expect(() => findSwaps(world, { formula, missing: ['glycerin', 'xanthan-gum'] })).not.toThrow()
  })

  test('a swap put back with the first formula gives the first answer', () => {
    const formula = named('light-face-cream')
    const first = checkFormula(world, formula)
    const swapped = findSwaps(world, { formula, missing: ['glycerin'] }).swaps[0]!.formula!
    expect(checkFormula(world, swapped)).not.toEqual(first)
    expect(checkFormula(world, formula)).toEqual(first)
  })

  test('a stop that was there before is not passed on as an offer', () => {
    const formula = makeFormula({ phenoxyethanol: 1.5, glycerin: 5, 'xanthan-gum': 0.4 }, { hottest_c: 25 })
    const { swaps } = findSwaps(world, { formula, missing: ['glycerin'] })
    expect(swaps.flatMap(({ findings }) => findings.filter(({ severity }) => severity === 'stop'))).toEqual([])
  })
})

describe('adding a fact', () => {
  const WATER = {
    id: 'aqua',
    inci: 'AQUA',
    roles: [{ role: 'water-phase' }],
    solubility: 'water',
    form: 'liquid',
  }
  const build = (facts: Record<string, unknown>) =>
    makeWorld({
      roles: { 'water-phase': { label: 'Water phase' }, active: { label: 'Active' } },
      rules: [
        { id: 'ph-keeps', severity: 'warn' },
        { id: 'ph-unknown', severity: 'unknown' },
        { id: 'water-without-preservative', severity: 'note' },
      ],
      ingredients: [WATER, { id: 'active', inci: 'ACTIVE', roles: [{ role: 'active' }], facts }],
    })
  const verdictAt = (facts: Record<string, unknown>, ph: number | null) =>
    checkFormula(build(facts), makeFormula({ active: 5 }, { ph })).verdict

  test('a window that the pH misses never clears', () => {
    expect(verdictAt({ ph_stability: [3, 4] }, 7)).toBe('attention')
    expect(verdictAt({ ph_stability: [3, 4] }, null)).toBe('not-known')
  })
  test('of another kind leaves an unknown pH unknown', () =>
    expect(verdictAt({ ph_stability: [3, 4], heat_max_c: 90 }, null)).toBe('not-known'))
  test('a window that holds the pH says nothing', () => expect(verdictAt({ ph_stability: [3, 8] }, 7)).toBe('clear'))
})
