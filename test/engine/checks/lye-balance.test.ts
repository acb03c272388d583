import { describe, expect, test } from 'vitest'
import { lyeBalance } from '#engine/checks/lye-balance.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { findingsOf, makeFormula, realWorld } from '../../helpers.ts'

const formula = (shares: Record<string, number>, ph: number | null = 10) =>
  makeFormula(shares, { product: 'rinse-off', ph })
const severities = (shares: Record<string, number>, ph: number | null = 10) =>
  findingsOf('lye-balance', formula(shares, ph)).map(({ severity }) => severity)
const balance = (shares: Record<string, number>) => lyeBalance(buildContext(formula(shares), realWorld()))

const OLIVE = 'olea-europaea-fruit-oil'

describe('free lye', () => {
  test('stops when no lot of these fats can bind it', () =>
    expect(severities({ [OLIVE]: 60, 'sodium-hydroxide': 10 })).toEqual(['stop']))
  test('warns when the usual lot cannot and the strongest could', () => {
    const { bound_g, most_g } = balance({ [OLIVE]: 60 })
    const between_g = (bound_g + most_g) / 2
    const active = balance({ [OLIVE]: 60, 'sodium-hydroxide': 1 }).given_g
    expect(severities({ [OLIVE]: 60, 'sodium-hydroxide': between_g / active })).toEqual(['warn'])
  })
  test('is found in a shaving cream too, whatever little fat is in it', () =>
    expect(severities({ 'stearic-acid': 8, 'potassium-hydroxide': 3, glycerin: 10 }, null)).toEqual(['stop']))
})

describe('fat that stays unbound', () => {
  test('makes a soft bar of triglycerides', () =>
    expect(severities({ [OLIVE]: 70, 'sodium-hydroxide': 7 })).toEqual(['warn']))
  test('is meant in a cream of partly neutralised stearic acid', () => {
    expect(severities({ 'stearic-acid': 25, 'potassium-hydroxide': 2, glycerin: 10 }, 9)).toEqual([])
    expect(severities({ 'stearic-acid': 45, 'potassium-hydroxide': 3, glycerin: 10 }, 9)).toEqual([])
  })
})

// 192.12 g of citric acid take three KOH of 56.106 g: 0.876 g a gram.
test('citric acid binds three protons of lye a molecule', () => {
  const [without, with1] = [balance({ [OLIVE]: 60 }), balance({ [OLIVE]: 60, 'citric-acid': 1 })]
  expect(with1.bound_g - without.bound_g).toBeCloseTo((3 * 56.106) / 192.12, 2)
})
test('a salt whose acid is neutral already binds none', () =>
  expect(balance({ [OLIVE]: 60, 'sodium-lactate': 3 }).bound_g).toBeCloseTo(balance({ [OLIVE]: 60 }).bound_g, 9))
