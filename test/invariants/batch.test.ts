import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { batchSheet, checkFormula } from '#engine/index.ts'
import type { BatchSheet } from '#engine/model/batch.ts'
import type { Form, Formula } from '#engine/model/formula.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { realWorld } from '../helpers.ts'

const world = realWorld()
const one = fc.constantFrom(...FORMULAS)
const step = fc.constantFrom(0.01, 0.1, 1)
const batch = fc.double({ min: 5, max: 50_000, noNaN: true })
const FORMS: Form[] = ['oil-in-water', 'water-in-oil', 'anhydrous', 'gel', 'wash', 'bar', 'powder', 'solution']

/** A formula, called what it is not, with any ingredient on record put in. */
const strange = fc
  .tuple(one, fc.option(fc.constantFrom(...FORMS), { nil: undefined }), fc.option(fc.constantFrom(...world.subjects)))
  .map(([{ formula }, form, guest]): Formula => {
    const most = Math.max(...formula.lines.map(({ share_percent }) => share_percent ?? 0))
    const room = (share_percent: number): number => (share_percent === most ? share_percent - 2 : share_percent)
    const lines = formula.lines.map((line) => ({ ...line, share_percent: room(line.share_percent ?? 0) }))
    const full = guest === null ? formula.lines : [...lines, { ingredient: guest.id, share_percent: 2 }]
    return { ...formula, ...(form && { form }), lines: full }
  })

/** Sums of decimal fractions are compared as whole numbers of scale steps. */
const inSteps = (mass_g: number, step_g: number): number => {
  const units = mass_g / step_g
  expect(Math.abs(units - Math.round(units))).toBeLessThan(1e-6)
  return Math.round(units)
}
const sumInSteps = (masses: readonly number[], step_g: number): number =>
  masses.reduce((sum, mass_g) => sum + inSteps(mass_g, step_g), 0)

/** Steps that come before a step, by following the edges back. */
function before(sheet: BatchSheet, id: string): Set<string> {
  const seen = new Set<string>()
  const open = [id]
  for (let at = open.pop(); at !== undefined; at = open.pop())
    for (const { from, to } of sheet.edges)
      if (to === at && !seen.has(from)) {
        seen.add(from)
        open.push(from)
      }
  return seen
}

describe('the grams', () => {
  test('add up to the batch to the step, and none is negative', () =>
    fc.assert(
      fc.property(one, batch, step, ({ formula }, batch_g, step_g) => {
        const sheet = batchSheet(world, { formula, batch_g, step_g })
        expect(inSteps(sheet.weighed_g, step_g)).toBe(Math.round(batch_g / step_g))
        expect(
          sumInSteps(
            sheet.lines.map(({ weigh_g }) => weigh_g),
            step_g,
          ),
        ).toBe(inSteps(sheet.weighed_g, step_g))
        for (const { weigh_g } of sheet.lines) expect(weigh_g).toBeGreaterThanOrEqual(0)
      }),
      { numRuns: 150 },
    ))

  test('are off by less than one step from the share', () =>
    fc.assert(
      fc.property(one, batch, step, ({ formula }, batch_g, step_g) => {
        const sheet = batchSheet(world, { formula, batch_g, step_g })
        for (const { weigh_g, share_percent } of sheet.lines)
          expect(Math.abs(weigh_g - (sheet.weighed_g * share_percent) / 100)).toBeLessThan(step_g * (1 + 1e-6))
      }),
      { numRuns: 60 },
    ))

  test('of the phases and of the portions are those of the lines', () =>
    fc.assert(
      fc.property(one, batch, step, ({ formula }, batch_g, step_g) => {
        const sheet = batchSheet(world, { formula, batch_g, step_g })
        const whole = inSteps(sheet.weighed_g, step_g)
        expect(
          sumInSteps(
            sheet.phases.map(({ weigh_g }) => weigh_g),
            step_g,
          ),
        ).toBe(whole)
        for (const { weigh_g, portions } of sheet.lines) {
          for (const portion of portions) expect(portion.weigh_g).toBeGreaterThanOrEqual(0)
          expect(
            sumInSteps(
              portions.map((portion) => portion.weigh_g),
              step_g,
            ),
          ).toBe(inSteps(weigh_g, step_g))
        }
      }),
      { numRuns: 100 },
    ))

  test('take the overage on top', () =>
    fc.assert(
      fc.property(one, batch, fc.double({ min: 0, max: 100, noNaN: true }), ({ formula }, batch_g, overage_percent) => {
        const sheet = batchSheet(world, { formula, batch_g, overage_percent, step_g: 0.1 })
        expect(Math.abs(sheet.weighed_g - batch_g * (1 + overage_percent / 100))).toBeLessThanOrEqual(0.05 + 1e-9)
      }),
      { numRuns: 50 },
    ))

  test('of a batch that is no whole number of steps are said to differ, and only then', () =>
    fc.assert(
      fc.property(one, batch, step, ({ formula }, batch_g, step_g) => {
        const sheet = batchSheet(world, { formula, batch_g, step_g })
        const said = sheet.remarks.some(({ kind }) => kind === 'batch-rounded')
        expect(said).toBe(Math.abs(batch_g - sheet.weighed_g) > 1e-9 * Math.max(1, batch_g))
      }),
      { numRuns: 60 },
    ))

  test('never fall to nothing, nor to a few steps, in silence', () =>
    fc.assert(
      fc.property(one, fc.double({ min: 5, max: 500, noNaN: true }), step, ({ formula }, batch_g, step_g) => {
        const sheet = batchSheet(world, { formula, batch_g, step_g })
        const warned = new Map(
          sheet.remarks.flatMap(({ kind, lines }) => lines.map((line) => [`${kind} ${line}`, kind])),
        )
        for (const { line, weigh_g } of sheet.lines) {
          const units = inSteps(weigh_g, step_g)
          if (units === 0) expect(warned.has(`line-is-zero ${line}`)).toBe(true)
          else if (units < 10) expect(warned.has(`line-too-small ${line}`)).toBe(true)
          else expect(warned.has(`line-too-small ${line}`)).toBe(false)
        }
      }),
      { numRuns: 100 },
    ))
})

describe('a stock for what the scale cannot show', () => {
  test('is made of weights that the scale shows, carries the line, and takes no more of its carrier than there is', () =>
    fc.assert(
      fc.property(one, fc.double({ min: 20, max: 500, noNaN: true }), step, ({ formula }, batch_g, step_g) => {
        const sheet = batchSheet(world, { formula, batch_g, step_g })
        for (const { dilution, lines } of sheet.remarks) {
          if (!dilution) continue
          const line = sheet.lines.find((other) => other.line === lines[0])!
          const carrier = sheet.lines.find((other) => other.line === dilution.carrier)!
          const carried_g = (dilution.take_g * dilution.pure_g) / (dilution.pure_g + dilution.carrier_g)
          const wanted_g = (sheet.weighed_g * line.share_percent) / 100
          // The line itself by weight would be off by up to half a step; through the stock it is nearer.
          expect(Math.abs(carried_g - wanted_g)).toBeLessThanOrEqual(step_g * 0.75)
          expect(inSteps(dilution.pure_g, step_g)).toBeGreaterThanOrEqual(10)
          expect(inSteps(dilution.take_g, step_g)).toBeGreaterThanOrEqual(10)
          expect(dilution.less_carrier_g).toBeLessThanOrEqual(carrier.weigh_g + 1e-9)
          expect(carrier.line).not.toBe(line.line)
        }
      }),
      { numRuns: 100 },
    ))
})

describe('the order of work', () => {
  const sheets = FORMULAS.map(({ name, formula }) => ({ name, sheet: batchSheet(world, { formula, batch_g: 200 }) }))

  test.each(sheets)('$name: every edge goes forward in the linear order, so there is no circle', ({ sheet }) => {
    const at = (id: string): number => sheet.order.indexOf(id)
    expect([...sheet.order].sort()).toEqual(sheet.steps.map(({ id }) => id).sort())
    expect(new Set(sheet.order).size).toBe(sheet.order.length)
    for (const { from, to } of sheet.edges) {
      expect(at(from)).toBeGreaterThanOrEqual(0)
      expect(at(from)).toBeLessThan(at(to))
    }
  })

  test.each(sheets)('$name: an edge that follows from others is left out', ({ sheet }) => {
    for (const { from, to } of sheet.edges) {
      const others = { ...sheet, edges: sheet.edges.filter((edge) => edge.from !== from || edge.to !== to) }
      expect(before(others, to).has(from)).toBe(false)
    }
  })

  test.each(sheets)('$name: all is clean and weighed before, and all ends in the throwing away', ({ sheet }) => {
    const work = sheet.steps.map(({ id }) => id).filter((id) => id !== 'clean' && id !== 'weigh')
    for (const id of work) expect([...before(sheet, id)]).toEqual(expect.arrayContaining(['clean', 'weigh']))
    expect(before(sheet, 'discard').size).toBe(sheet.steps.length - 1)
  })

  test('every line is added in exactly one step, or split as stated, whatever is in it and whatever the form is called', () =>
    fc.assert(
      fc.property(strange, (formula) => {
        const sheet = batchSheet(world, { formula, batch_g: 200 })
        expect(new Set(sheet.lines.map(({ ingredient }) => ingredient))).toEqual(
          new Set(formula.lines.map(({ ingredient }) => world.find(ingredient)!.id)),
        )
        for (const { line, portions } of sheet.lines) {
          const adding = sheet.steps.filter(({ adds }) => adds.includes(line)).map(({ id }) => id)
          expect([line, adding.length > 0]).toEqual([line, true])
          expect(portions.map((portion) => portion.step).sort()).toEqual(adding.sort())
          expect(sheet.steps.flatMap(({ adds }) => adds.filter((key) => key === line))).toHaveLength(adding.length)
        }
      }),
      { numRuns: 400 },
    ))

  test('all that was added is in the vessel that is filled', () =>
    fc.assert(
      fc.property(strange, (formula) => {
        const sheet = batchSheet(world, { formula, batch_g: 200 })
        const inside = (id: string): string[] => {
          const found = sheet.steps.find((other) => other.id === id)!
          return [...found.adds, ...found.uses.flatMap(inside)]
        }
        expect(inside('fill').sort()).toEqual(sheet.steps.flatMap(({ adds }) => adds).sort())
      }),
      { numRuns: 400 },
    ))

  test('nothing is used twice', () => {
    for (const { sheet } of sheets) {
      const used = sheet.steps.flatMap(({ uses }) => uses)
      expect(new Set(used).size).toBe(used.length)
    }
  })
})

describe('the batch', () => {
  test('changes no finding, no verdict, no place and no step', () =>
    fc.assert(
      fc.property(one, batch, batch, ({ formula }, a, b) => {
        const [small, large] = [a, b].map((batch_g) => batchSheet(world, { formula, batch_g, step_g: 0.01 }))
        const { findings, verdict, form } = checkFormula(world, formula)
        for (const sheet of [small!, large!]) {
          expect(sheet.findings).toEqual(findings)
          expect([sheet.verdict, sheet.form]).toEqual([verdict, form])
        }
        const places = (sheet: BatchSheet) => sheet.lines.map(({ line, portions }) => [line, portions[0]?.step])
        expect(places(large!).sort()).toEqual(places(small!).sort())
        expect(large!.order).toEqual(small!.order)
      }),
      { numRuns: 40 },
    ))

  test('is the same whatever the order in which the recipe is written', () =>
    fc.assert(
      fc.property(one, fc.nat(1000), ({ formula }, seed) => {
        const lines = formula.lines
          .map((line, index) => ({ line, key: Math.sin(seed * 97 + index * 13) }))
          .sort((a, b) => a.key - b.key)
          .map(({ line }) => line)
        expect(batchSheet(world, { formula: { ...formula, lines }, batch_g: 200 })).toEqual(
          batchSheet(world, { formula, batch_g: 200 }),
        )
      }),
      { numRuns: 60 },
    ))

  test('costs ten times as much when it is ten times as large', () =>
    fc.assert(
      fc.property(one, ({ formula }) => {
        const prices_per_kg = Object.fromEntries(formula.lines.map(({ ingredient }, at) => [ingredient, 3 + at]))
        const cost = (batch_g: number) => batchSheet(world, { formula, batch_g, step_g: 0.001, prices_per_kg }).cost!
        expect(cost(5000).total! / cost(500).total!).toBeCloseTo(10, 3)
        expect(cost(5000).missing).toEqual([])
      }),
      { numRuns: 27 },
    ))
})
