import { describe, expect, test } from 'vitest'
import { realWorld } from '../../helpers.ts'

const { knowledge, find, subjects } = realWorld()
const compositions = [...knowledge.compositions.values()]

describe('compositions of natural scents', () => {
  test('are of ingredients that are known', () =>
    expect(compositions.filter(({ ingredient }) => !find(ingredient)).map(({ ingredient }) => ingredient)).toEqual([]))

  test('name only what the law names', () => {
    const named = new Set([
      ...knowledge.allergens.flatMap(({ members }) => members),
      ...knowledge.limits.flatMap(({ members }) => Object.keys(members)),
    ])
    const odd = compositions.flatMap(({ ingredient, parts }) =>
      parts.filter(({ substance }) => !named.has(substance)).map(({ substance }) => `${ingredient}: ${substance}`),
    )
    expect(odd).toEqual([])
  })

  test('are ranges in order, and their lower ends leave room', () => {
    for (const { ingredient, parts } of compositions) {
      const least = parts.reduce((sum, { min_percent }) => sum + min_percent, 0)
      expect([ingredient, least <= 100]).toEqual([ingredient, true])
      for (const { substance, min_percent, max_percent } of parts)
        expect([ingredient, substance, 0 <= min_percent && min_percent <= max_percent && max_percent <= 100]).toEqual([
          ingredient,
          substance,
          true,
        ])
    }
  })

  test('say that they are remembered, so that they never stop anything', () =>
    expect(compositions.filter(({ seen }) => seen.access !== 'memory' || seen.kind !== 'rule-of-thumb')).toEqual([]))

  test('are on record for nearly all recorded essential oils', () => {
    const oils = subjects.filter(
      ({ roles, classes }) => roles[0]?.role === 'essential-oil' && classes.has('fragrance-allergen-source'),
    )
    const open = oils.filter(({ id }) => !knowledge.compositions.has(id)).map(({ id }) => id)
    expect(oils.length).toBeGreaterThan(100)
    expect(open.length).toBeLessThan(8)
  })
})

describe('declared allergens', () => {
  const live = knowledge.allergens.filter(({ banned_by }) => banned_by === undefined)
  test('are the 81 live entries of the export of 9 September 2026, and the two that are banned', () => {
    expect(live).toHaveLength(81)
    expect(knowledge.allergens).toHaveLength(83)
  })
  test('57 of them came in 2023 and bind from 1 August 2026, older stock until 31 July 2028', () => {
    const added = live.filter(({ applies_from }) => applies_from !== undefined)
    expect(added).toHaveLength(57)
    expect(new Set(added.map(({ applies_from, older_stock_until }) => `${applies_from} ${older_stock_until}`))).toEqual(
      new Set(['2026-08-01 2028-07-31']),
    )
  })
  test('have the two thresholds of the law', () =>
    expect(
      new Set(live.map(({ leave_on_percent, rinse_off_percent }) => `${leave_on_percent} ${rinse_off_percent}`)),
    ).toEqual(new Set(['0.001 0.01'])))
})
