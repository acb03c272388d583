import { describe, expect, test } from 'vitest'
import { buildContext } from '#engine/formula/build-context.ts'
import { compositionOf } from '#engine/ph/composition.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const SKIN = { min: 5, max: 7 }
const of = (shares: Record<string, number>, range = SKIN) =>
  compositionOf(buildContext(makeFormula(shares), realWorld()), 25, range)

test('an acid, a salt and a base are counted by strength, per litre of the water', () => {
  const { lines, water_share, mixture } = of({
    'lactic-acid': 1,
    'sodium-benzoate': 0.5,
    'caprylic-capric-triglyceride': 20,
  })
  expect(water_share).toBeGreaterThan(0.75)
  expect(water_share).toBeLessThan(0.8)
  const [lactic, benzoate] = lines
  // 1 % of an 85 % acid of 90.08 g/mol is 94 mmol/kg; in 0.78 L of water that is 0.12 mol/L
  expect(lactic!.mol_per_l * water_share).toBeCloseTo(0.0944, 3)
  expect(benzoate!.mol_per_l * water_share).toBeCloseTo(0.0347, 3)
  expect(mixture.ions).toEqual([{ charge: 1, mol_per_l: benzoate!.mol_per_l }])
})

test('a blend is taken apart', () => {
  const { lines } = of({ 'benzyl-alcohol-and-dehydroacetic-acid': 1 })
  expect(lines.map(({ ingredient }) => ingredient)).toEqual(['dehydroacetic-acid'])
})

describe('lines', () => {
  test('that hold nothing are no gap', () => {
    const shares = {
      glycerin: 5,
      'sodium-laureth-sulfate': 20,
      'cocamidopropyl-betaine': 10,
      phenoxyethanol: 0.9,
      panthenol: 0.5,
      'cetyl-alcohol': 2,
    }
    expect(of(shares).unknown).toEqual([])
  })
  test.each([
    ['decyl-glucoside', /11.5 to 12.5.*not known/],
    ['sodium-cocoyl-glutamate', /carboxyl/],
    ['hydrolyzed-wheat-protein', /amino acids/],
    ['aloe-barbadensis-leaf-juice', /plant acids/],
    ['bentonite', /clay/],
  ])('such as %s are named as not known', (id, says) => {
    const { unknown, hidden_most_mol_per_l } = of({ [id]: 2 })
    expect(unknown.map(({ ingredient }) => ingredient)).toEqual([id])
    expect(unknown[0]!.says).toMatch(says)
    expect(hidden_most_mol_per_l).toBeNull()
  })
  test('with a known number of acid groups get a bound', () => {
    const { unknown, hidden_most_mol_per_l, water_share } = of({ carbomer: 0.3 })
    expect(unknown).toHaveLength(1)
    expect(hidden_most_mol_per_l! * water_share).toBeCloseTo(3 / 72, 4)
  })
  test('of gums and fatty acids count only where they titrate', () => {
    expect(of({ 'xanthan-gum': 0.3 }).unknown).toEqual([])
    expect(of({ 'xanthan-gum': 0.3 }, { min: 3.5, max: 5 }).unknown).toHaveLength(1)
    expect(of({ 'stearic-acid': 3 }, { min: 4, max: 5.5 }).unknown).toEqual([])
    expect(of({ 'stearic-acid': 3 }, { min: 5, max: 8 }).unknown).toHaveLength(1)
  })
  test('of lye and fat make soap: what the lye still does is not known', () => {
    const { unknown } = of({ 'olea-europaea-fruit-oil': 60, 'sodium-hydroxide': 8 }, { min: 9, max: 11 })
    expect(unknown.map(({ ingredient }) => ingredient)).toContain('sodium-hydroxide')
  })
})
