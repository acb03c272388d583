import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { buildLabel } from '#engine/index.ts'
import { partsOf } from '#engine/label/label-parts.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import type { Formula, Line } from '#engine/model/formula.ts'
import type { Label } from '#engine/model/label.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { realWorld } from '../helpers.ts'

const world = realWorld()
const pure = world.subjects.filter(({ madeOf, facts }) => madeOf.length === 0 && !facts.has('active_percent'))
const blends = world.subjects.filter(({ madeOf }) => madeOf.length > 1)

const lines = (some: readonly (readonly [string, number])[]): Line[] => {
  const total = some.reduce((sum, [, weight]) => sum + weight, 0)
  return some.map(([ingredient, weight]) => ({ ingredient, share_percent: (weight / total) * 100 }))
}
const weight = fc.double({ min: 0.01, max: 40, noNaN: true })
const formulaOf = (some: readonly (readonly [string, number])[], rest: Partial<Formula>): Formula => ({
  market: 'eu',
  product: 'leave-on',
  ph: 5.5,
  hottest_c: 40,
  ...rest,
  lines: lines(some),
})
const circumstances = fc.record({
  market: fc.constantFrom('eu' as const, 'us' as const),
  product: fc.constantFrom('leave-on' as const, 'rinse-off' as const),
})
const pick = (from: typeof pure) => fc.constantFrom(...from.map(({ id }) => id))
const someLines = fc.uniqueArray(fc.tuple(pick([...pure, ...blends]), weight), {
  minLength: 2,
  maxLength: 14,
  selector: ([id]) => id,
})
const anyFormula = fc.tuple(someLines, circumstances).map(([some, rest]) => formulaOf(some, rest))

const CLOSE = 1e-6
const middle = ({ percent }: Label['positions'][number]): number => (percent.min + percent.max) / 2
const sums = ({ positions }: Label) =>
  new Map(positions.filter(({ group }) => group !== 'allergen').map(({ name, percent }) => [name, percent.max]))

/** Sums that agree but for the last bits. */
function expectSameSums(a: Label, b: Label): void {
  const [one, other] = [sums(a), sums(b)]
  expect([...one.keys()].sort()).toEqual([...other.keys()].sort())
  for (const [name, max] of one) expect(Math.abs(max - (other.get(name) ?? NaN))).toBeLessThan(CLOSE)
}

describe('the label of any formula', () => {
  test('lists what is in the order by falling mass', () =>
    fc.assert(
      fc.property(anyFormula, (formula) => {
        const ordered = buildLabel(world, formula).positions.filter(({ group }) => group === 'ordered')
        ordered.slice(1).forEach((one, at) => expect(middle(one)).toBeLessThanOrEqual(middle(ordered[at]!) + CLOSE))
      }),
      { numRuns: 60 },
    ))

  test('names every part once, and nothing else but allergens named out of scents', () =>
    fc.assert(
      fc.property(anyFormula, (formula) => {
        const { positions, list } = buildLabel(world, formula)
        expect(new Set(list).size).toBe(list.length)
        const parts = partsOf(buildContext(formula, world))
        const named = positions.filter(({ group }) => group !== 'allergen')
        expect(new Set(named.flatMap(({ from }) => from))).toEqual(
          new Set(formula.lines.map(({ ingredient }) => ingredient)),
        )
        expect(named.length).toBeLessThanOrEqual(parts.length)
        const total = named.reduce((sum, { percent }) => sum + percent.max, 0)
        expect(Math.abs(total - 100)).toBeLessThan(1e-3)
      }),
      { numRuns: 60 },
    ))

  test('puts what is ordered first, what is free behind it, colours last', () =>
    fc.assert(
      fc.property(anyFormula, (formula) => {
        const order = ['ordered', 'free', 'allergen', 'colour']
        const places = buildLabel(world, formula).positions.map(({ group }) => order.indexOf(group))
        expect(places).toEqual([...places].sort((a, b) => a - b))
      }),
      { numRuns: 40 },
    ))

  test('does not depend on the order of lines', () =>
    fc.assert(
      fc.property(anyFormula, (formula) => {
        const turned = { ...formula, lines: [...formula.lines].reverse() }
        expect(buildLabel(world, turned)).toEqual(buildLabel(world, formula))
      }),
      { numRuns: 30 },
    ))

  test('is that of the parts weighed one by one', () =>
    fc.assert(
      fc.property(fc.tuple(pick(pure), weight), fc.constantFrom(...blends), weight, (base, blend, blendWeight) => {
        const whole = formulaOf([base, [blend.id, blendWeight]], {})
        const apart = formulaOf(
          [base, ...blend.parts.map((part) => [part.subject.id, blendWeight * part.share] as const)],
          {},
        )
        // A part weighed alone is what the record calls pure: solutions are written at full strength.
        apart.lines = apart.lines.map((line) => ({ ...line, strength_percent: 100 }))
        expectSameSums(buildLabel(world, whole), buildLabel(world, apart))
      }),
      { numRuns: 60 },
    ))

  test('sums an allergen from below to above, whatever brings it', () =>
    fc.assert(
      fc.property(anyFormula, (formula) => {
        for (const { percent, from } of buildLabel(world, formula).allergens) {
          expect(percent.min).toBeLessThanOrEqual(percent.max)
          expect(percent.max).toBeLessThanOrEqual(100 + CLOSE)
          expect(from.length).toBeGreaterThan(0)
        }
      }),
      { numRuns: 40 },
    ))
})

describe('the formulas of the folder', () => {
  test.each(FORMULAS)('$name: two runs are equal, every line has a place', ({ formula }) => {
    const label = buildLabel(world, formula)
    expect(buildLabel(world, formula)).toEqual(label)
    expect(new Set(label.positions.filter(({ group }) => group !== 'allergen').flatMap(({ from }) => from))).toEqual(
      new Set(formula.lines.map(({ ingredient }) => world.find(ingredient)!.id)),
    )
    expect(label.text).toBe(`Ingredients: ${label.list.join(', ')}`)
  })
})
