import { describe, expect, test } from 'vitest'
import { inVariety } from '#engine/swap/variety.ts'
import { realWorld } from '../../helpers.ts'

const world = realWorld()
const order = (ranks: Record<string, number>) =>
  inVariety(Object.entries(ranks), {
    world,
    subjectOf: ([id]) => world.find(id)!,
    rankOf: ([, rank]) => rank,
  }).map(([id]) => id)

describe('an order that offers a choice', () => {
  test('begins with the best', () =>
    expect(order({ 'sodium-laureth-sulfate': 0.8, 'ammonium-laureth-sulfate': 0.79, 'decyl-glucoside': 0.7 })[0]).toBe(
      'sodium-laureth-sulfate',
    ))
  test('lets another kind pass a near relative that is hardly better', () =>
    expect(order({ 'sodium-laureth-sulfate': 0.8, 'ammonium-laureth-sulfate': 0.79, 'decyl-glucoside': 0.77 })).toEqual(
      ['sodium-laureth-sulfate', 'decyl-glucoside', 'ammonium-laureth-sulfate'],
    ))
  test('keeps a near relative that is clearly better', () =>
    expect(order({ 'sodium-laureth-sulfate': 0.8, 'ammonium-laureth-sulfate': 0.79, 'decyl-glucoside': 0.6 })[1]).toBe(
      'ammonium-laureth-sulfate',
    ))
  test('takes a common counterion for no kinship', () =>
    expect(order({ 'sodium-laureth-sulfate': 0.8, 'sodium-benzoate': 0.79, 'decyl-glucoside': 0.77 })[1]).toBe(
      'sodium-benzoate',
    ))
})
