import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { buildHoldsWith } from '#engine/graph/holds-with.ts'
import { rangeOfProperty } from '#engine/graph/subject.ts'
import { overlap } from '#engine/units/range.ts'
import { makeWorld, realWorld } from '../../helpers.ts'

const naive = (a: Parameters<typeof rangeOfProperty>[0], b: typeof a, property: string) => {
  const [x, y] = [rangeOfProperty(a, property), rangeOfProperty(b, property)]
  return x === undefined || y === undefined ? undefined : overlap(x, y)
}

const windows = fc.array(
  fc.option(fc.tuple(fc.integer({ min: 0, max: 14 }), fc.integer({ min: 0, max: 14 })), { nil: undefined }),
  { minLength: 2, maxLength: 10 },
)

describe('the edge between two ingredients', () => {
  test('is the overlap of their windows, for any windows', () =>
    fc.assert(
      fc.property(windows, (list) => {
        const ingredients = list.map((window, index) => ({
          id: `i${index}`,
          inci: `I${index}`,
          roles: [],
          facts: window ? { ph_stability: [Math.min(...window), Math.max(...window)] } : {},
        }))
        const { subjects } = makeWorld({ ingredients })
        const holds = buildHoldsWith(subjects)
        for (const a of subjects) {
          for (const b of subjects) expect(holds.between(a.id, b.id).ph).toEqual(naive(a, b, 'ph_stability'))
        }
      }),
      { numRuns: 40 },
    ))

  test('is the overlap of their windows, for the ingredients on record', () => {
    const { subjects, holdsWith } = realWorld()
    const some = subjects.filter((_, index) => index % 23 === 0)
    for (const a of some) {
      for (const b of some) {
        expect(holdsWith.between(a.id, b.id).ph).toEqual(naive(a, b, 'ph_stability'))
        expect(holdsWith.between(a.id, b.id)).toEqual(holdsWith.between(b.id, a.id))
      }
    }
  })

  test('holds heat up to the lower of both limits', () => {
    const at = (id: string, heat_max_c: number) => ({ id, inci: id.toUpperCase(), roles: [], facts: { heat_max_c } })
    const { holdsWith } = makeWorld({ ingredients: [at('a', 40), at('b', 80)] })
    expect(holdsWith.between('a', 'b').heat_c).toEqual({ max: 40 })
  })

  test('is not known where one of them states no window', () => {
    const { holdsWith } = makeWorld({ ingredients: [{ id: 'a', inci: 'A', roles: [] }] })
    expect(holdsWith.between('a', 'a')).toEqual({ ph: undefined, heat_c: undefined })
  })
})
