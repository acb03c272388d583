import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { entriesOf } from '#engine/checks/law-entries.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { checkFormula } from '#engine/index.ts'
import { USES } from '#engine/model/formula.ts'
import type { Area, Dispensing, Formula, Use } from '#engine/model/formula.ts'
import { makeFormula, realWorld } from '../helpers.ts'

const world = realWorld()
const LIMITED = world.subjects.filter(({ limits }) => limits.length > 0)
const BLENDS = world.subjects.filter(
  ({ madeOf, parts, tier }) =>
    madeOf.length > 0 && tier !== 'inventory' && parts.some((one) => one.subject.limits.length > 0),
)
const AREAS: Area[] = ['face', 'eye', 'lip', 'hair', 'hand', 'body', 'deodorant', 'nail', 'under-3']

const share = fc.double({ min: 0.001, max: 20, noNaN: true })
const limited = fc.constantFrom(...LIMITED.map(({ id }) => id))
const product = fc.constantFrom('leave-on' as const, 'rinse-off' as const)
const anyFormula = fc
  .tuple(
    fc.dictionary(limited, share, { minKeys: 1, maxKeys: 3 }),
    product,
    fc.constantFrom(...AREAS),
    fc.constantFrom('eu' as const, 'us' as const),
  )
  .map(([shares, kind, area, market]) => makeFormula(shares, { product: kind, areas: [area], market }))

/** Amount that each entry counts, by its id. */
const counts = (formula: Formula): Map<string, number> =>
  new Map(entriesOf(buildContext(formula, world)).map(({ limit, counted_percent }) => [limit.id, counted_percent]))

describe('what the law counts', () => {
  test('is the same for a blend and for its parts weighed one by one', () => {
    let compared = 0
    fc.assert(
      fc.property(fc.constantFrom(...BLENDS), share, (blend, share_percent) => {
        const whole = makeFormula({ [blend.id]: share_percent }, { areas: ['body'] })
        const parts = blend.parts.map((part) => ({
          ...{ ingredient: part.subject.id, share_percent: share_percent * part.share, strength_percent: 100 },
        }))
        const apart: Formula = {
          ...whole,
          lines: [{ ingredient: 'caprylic-capric-triglyceride', fills: true }, ...parts],
        }
        const [a, b] = [counts(whole), counts(apart)]
        for (const [id, counted_percent] of a) if (b.has(id)) expect(b.get(id)).toBeCloseTo(counted_percent, 9)
        compared += [...b.keys()].filter((id) => a.has(id)).length
      }),
      { numRuns: 80 },
    )
    expect(compared).toBeGreaterThan(20)
  })

  test('grows with the dose: more of an ingredient is never judged more mildly by the percentage', () =>
    fc.assert(
      fc.property(limited, fc.double({ min: 0.01, max: 5, noNaN: true }), product, (id, less, kind) => {
        const stops = (share_percent: number) =>
          checkFormula(world, makeFormula({ [id]: share_percent }, { product: kind, areas: ['hand'] }))
            .findings.filter(({ rule, severity }) => rule === 'limit-by-law' && severity === 'stop')
            .map(({ because }) => because[0]?.fact)
        const more = stops(less * 4)
        for (const fact of stops(less)) expect(more).toContain(fact)
      }),
      { numRuns: 80 },
    ))
})

describe('what is stated', () => {
  const stated = fc.tuple(
    fc.constantFrom<Dispensing>('aerosol', 'pump-spray', 'other'),
    fc.boolean(),
    fc.uniqueArray(fc.constantFrom<Use>(...USES), { maxLength: 3 }),
  )
  test('is asked no more', () =>
    fc.assert(
      fc.property(anyFormula, stated, (formula, [dispensing, professional, uses]) => {
        const { findings } = checkFormula(world, { ...formula, dispensing, professional, uses })
        const asked = findings
          .filter(({ rule }) => rule.startsWith('limit') || rule === 'law-ph')
          .map(({ remedy }) => remedy ?? '')
        expect(asked.join(' ')).not.toMatch(/sold as a spray|meant as|professional use only/)
      }),
      { numRuns: 120 },
    ))
  test('does not hang on the order in which uses are named', () =>
    fc.assert(
      fc.property(
        anyFormula,
        fc.uniqueArray(fc.constantFrom<Use>(...USES), { minLength: 2, maxLength: 4 }),
        (formula, uses) => {
          const [a, b] = [uses, [...uses].reverse()].map(
            (named) => checkFormula(world, { ...formula, uses: named }).findings,
          )
          expect(a).toEqual(b)
        },
      ),
      { numRuns: 40 },
    ))
})

test('a row that is only remembered never stops', () => {
  const remembered = world.knowledge.limits.filter(
    ({ kind, rows }) => kind === 'law' && rows.every(({ access }) => access === 'memory'),
  )
  expect(remembered.length).toBeGreaterThan(10)
  for (const { market, members, id } of remembered) {
    for (const member of Object.keys(members).filter((one) => world.find(one))) {
      const { findings } = checkFormula(
        world,
        makeFormula({ [member]: 60 }, { market, areas: ['face'], dispensing: 'aerosol' }),
      )
      const entry = world.knowledge.limits.find((limit) => limit.id === id)?.entry ?? ''
      const stops = findings.filter(
        ({ severity, message }) => severity === 'stop' && message.includes(`entry ${entry},`),
      )
      expect([id, stops.map(({ message }) => message)]).toEqual([id, []])
    }
  }
})
