import { describe, expect, test } from 'vitest'
import { examples } from '../score/chemistry/preservation.ts'

const all = examples()

describe.each(all.filter(({ flagged }) => !flagged))('$id: $topic', (one) => {
  test(`${one.expected}`, () => expect(one).toMatchObject({ within: true }))
})

test('what is printed and known to disagree, or cannot be worked out, is listed with both values', () => {
  const apart = all.filter(({ flagged, within }) => flagged && !within)
  expect(apart.map(({ id }) => id)).toEqual([
    ...['pres-022', 'pres-034', 'pres-113'],
    ...['pres-126', 'pres-128', 'pres-130', 'pres-132', 'pres-134', 'pres-136', 'pres-138'],
  ])
  for (const { expected, got } of apart) expect([expected, got].every((text) => text.length > 0)).toBe(true)
})
