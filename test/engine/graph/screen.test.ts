import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { buildScreen, fits } from '#engine/graph/screen.ts'
import type { ScreenEntry, ScreenQuestion } from '#engine/graph/screen.ts'

const entry = (keys: string[], windows: ScreenEntry['windows'] = {}): ScreenEntry => ({ keys: new Set(keys), windows })

describe('a screen', () => {
  const entries = [
    entry(['gum', 'anionic'], { ph: { min: 3, max: 12 } }),
    entry(['gum'], { ph: { min: 4.3 } }),
    entry(['gum', 'anionic']),
    entry(['wax'], { ph: { max: 4 } }),
  ]
  const { find } = buildScreen(entries)
  test('keeps what has one word of each list', () => {
    expect(find({ all: [['gum', 'wax']] })).toEqual([0, 1, 2, 3])
    expect(find({ all: [['gum'], ['anionic']] })).toEqual([0, 2])
    expect(find({ all: [['unheard of']] })).toEqual([])
  })
  test('leaves out what has a word that is not wanted', () => {
    expect(find({ none: ['anionic', 'unheard of'] })).toEqual([1, 3])
  })
  test('takes a window with its ends, and what states none only when asked to', () => {
    const within = (value: number, unknown: boolean) => find({ within: [{ window: 'ph', value, unknown }] })
    expect(within(4, false)).toEqual([0, 3])
    expect(within(4.3, false)).toEqual([0, 1])
    expect(within(12, true)).toEqual([0, 1, 2])
  })
  test('puts what has more of the ranking words first and keeps the order of equals', () => {
    expect(find({ rankBy: ['gum', 'anionic'] })).toEqual([0, 2, 1, 3])
  })
  test('is empty over nothing', () => {
    expect(buildScreen([]).find({ all: [['gum']] })).toEqual([])
  })
})

test('the index answers what the plain reading of a question answers, one by one', () => {
  const word = fc.constantFrom('a', 'b', 'c', 'd', 'e')
  const end = fc.option(fc.integer({ min: 0, max: 9 }), { nil: undefined })
  const range = fc
    .tuple(end, end)
    .map(([min, max]) => ({ ...(min !== undefined && { min }), ...(max !== undefined && { max }) }))
  const windows = fc.record({ x: range, y: range }, { requiredKeys: [] })
  const entries = fc.array(
    fc.tuple(fc.uniqueArray(word), windows).map(([keys, own]) => entry(keys, own)),
    { maxLength: 80 },
  )
  const within = fc.record({
    window: fc.constantFrom('x', 'y', 'z'),
    value: fc.integer({ min: 0, max: 9 }),
    unknown: fc.boolean(),
  })
  const question: fc.Arbitrary<ScreenQuestion> = fc.record({
    all: fc.array(fc.array(word, { maxLength: 3 }), { maxLength: 2 }),
    none: fc.array(word, { maxLength: 2 }),
    within: fc.array(within, { maxLength: 2 }),
  })
  fc.assert(
    fc.property(entries, question, (list, asked) => {
      const plain = list.flatMap((one, place) => (fits(one, asked) ? [place] : []))
      expect(buildScreen(list).find(asked)).toEqual(plain)
    }),
    { numRuns: 500 },
  )
})
