import { describe, expect, test } from 'vitest'
import { askedBy, lacks, tierOf } from '#engine/knowledge/tier.ts'
import { realWorld } from '../../helpers.ts'

const { knowledge, subjects } = realWorld()
const record = (id: string) => knowledge.ingredients.get(id)!
const without = (id: string, ...properties: string[]) => {
  const one = record(id)
  return { ...one, facts: new Map([...one.facts].filter(([property]) => !properties.includes(property))) }
}

describe('a record', () => {
  test('of what makers use daily is full', () => {
    for (const id of [
      'glycerin',
      'cetearyl-alcohol',
      'xanthan-gum',
      'polysorbate-80',
      'potassium-sorbate',
      'citric-acid',
    ])
      expect(`${id} ${record(id).tier}`).toBe(`${id} full`)
  })
  test('that lacks two of what its role ranks and doses by is short', () => {
    const asked = askedBy(knowledge.roles.get('oleic-oil')!)
    expect(asked).toEqual(expect.arrayContaining(['fatty_acids', 'iodine_value', 'melting_c']))
    expect(tierOf({ ...without('olea-europaea-fruit-oil', 'fatty_acids', 'iodine_value') }, knowledge.roles)).toBe(
      'short',
    )
  })
  test('of which little is known beside its role is short', () => {
    const bare = { ...record('glycerin'), facts: new Map(), clashes: [], needs: [], standsFor: [], notFor: [] }
    expect(tierOf({ ...bare, boostedBy: [], inactivatedBy: [] }, knowledge.roles)).toBe('short')
  })
  test('that calls itself short stays short', () => {
    expect(tierOf({ ...record('glycerin'), tier: 'short' }, knowledge.roles)).toBe('short')
  })
  test('that is full lacks at most one of what its first role asks', () => {
    const wrong = subjects.filter((one) => {
      const role = knowledge.roles.get(one.roles[0]!.role)!
      return one.tier === 'full' && askedBy(role).filter((property) => lacks(one, role.id, property)).length > 1
    })
    expect(wrong.map(({ id }) => id)).toEqual([])
  })
})

test('there are at least 550 full records and 600 short ones, with at least 9,000 claims in the full', () => {
  const full = subjects.filter(({ tier }) => tier === 'full')
  expect(full.length).toBeGreaterThanOrEqual(550)
  expect(subjects.filter(({ tier }) => tier === 'short').length).toBeGreaterThanOrEqual(600)
  expect(full.flatMap(({ facts }) => [...facts.values()].flat()).length).toBeGreaterThanOrEqual(9000)
})
