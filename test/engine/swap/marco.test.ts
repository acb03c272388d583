import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { minimalSet, minimalSets } from '#engine/swap/marco.ts'

/** A fault that arises from any of these sets of parts. */
const arisesFrom = (sets: readonly (readonly number[])[]) => (parts: readonly number[]) =>
  sets.some((set) => set.every((part) => parts.includes(part)))

const PARTS = [0, 1, 2, 3, 4, 5, 6]
const someSets = fc.array(fc.uniqueArray(fc.constantFrom(...PARTS), { minLength: 1, maxLength: 4 }), {
  minLength: 1,
  maxLength: 3,
})
const isPartOf = (a: readonly number[], b: readonly number[]) => a.every((part) => b.includes(part))
/** Sets of which no other is a part, each once. */
const smallest = (sets: readonly (readonly number[])[]) =>
  [...new Map(sets.map((set) => [[...set].sort().join(), set])).values()].filter(
    (set) => !sets.some((other) => other.length < set.length && isPartOf(other, set)),
  )
const sorted = (sets: readonly (readonly number[])[]) => sets.map((set) => [...set].sort().join()).sort()

describe('a minimal set', () => {
  test('makes the fault arise, and does not when any one part is taken away', () => {
    fc.assert(
      fc.property(someSets, (sets) => {
        const fires = arisesFrom(sets)
        const set = minimalSet(PARTS, fires)
        return fires(set) && set.every((part) => !fires(set.filter((other) => other !== part)))
      }),
    )
  })
})

describe('all minimal sets', () => {
  test('are found, each once, when more are asked for than there are', () => {
    fc.assert(
      fc.property(someSets, (sets) => {
        expect(sorted(minimalSets(PARTS, arisesFrom(sets), 9))).toEqual(sorted(smallest(sets)))
      }),
    )
  })
  test('end at the number asked for', () =>
    expect(minimalSets(PARTS, arisesFrom([[0], [1], [2, 3]]), 2)).toHaveLength(2))
  test('are none where nothing is at fault', () => expect(minimalSets(PARTS, () => false, 3)).toEqual([]))
})
