import { describe, expect, test } from 'vitest'
import { findSwaps } from '#engine/index.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { realWorld } from '../../helpers.ts'

const world = realWorld()
const formula = FORMULAS.find(({ name }) => name === 'strong-shampoo')!.formula
const tiers = (alsoInventory: boolean) =>
  findSwaps(world, {
    formula,
    missing: ['cocamidopropyl-betaine'],
    wishes: { alsoInventory },
  }).swaps.map(({ lines }) => world.find(lines[0]!.ingredient)!.tier)

describe('names of which only functions and name are known', () => {
  test('are not proposed unasked', () => expect(tiers(false)).not.toContain('inventory'))
  test('are proposed when asked for, after all others', () => {
    expect(tiers(true)).toContain('inventory')
    const found = tiers(true)
    expect(found.slice(found.indexOf('inventory')).every((tier) => tier === 'inventory')).toBe(true)
  })
})
