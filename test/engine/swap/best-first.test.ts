import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bestFirst } from '#engine/swap/best-first.ts'

const list = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 })
  .map((worths) => worths.sort((a, b) => b - a).map((worth) => ({ worth })))

test('every combination comes once, the best mean first', () => {
  fc.assert(
    fc.property(fc.array(list, { minLength: 1, maxLength: 3 }), (lists) => {
      const all = [...bestFirst(lists)]
      const bounds = all.map(({ bound }) => bound)
      expect(all).toHaveLength(lists.reduce((product, { length }) => product * length, 1))
      expect(bounds).toEqual([...bounds].sort((a, b) => b - a))
      expect(new Set(all.map(({ chosen }) => chosen.map((one, at) => lists[at]!.indexOf(one)).join())).size).toBe(
        all.length,
      )
    }),
  )
})
test('a place without a choice leaves no combination', () => expect([...bestFirst([[{ worth: 1 }], []])]).toEqual([]))
