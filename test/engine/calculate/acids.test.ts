import { describe, expect, test } from 'vitest'
import { calculate } from '#engine/index.ts'
import { realWorld } from '../../helpers.ts'

const world = realWorld()
const CITRATE = {
  systems: [{ acid: 'citric acid', mol_per_l: 0.05 }],
  ions: [{ charge: 1, mol_per_l: 0.05 }],
  temp_c: 25,
}
const ALKALI = { systems: [], ions: [{ charge: 1, mol_per_l: 0.005 }], temp_c: 25 }

test('the share of undissociated acid is one half where pH equals pKa, with the working', () => {
  expect(calculate(world, 'undissociated-share', { ph: 4.2, pka: 4.2 })).toEqual({
    values: { share: 0.5 },
    steps: [
      { text: 'Ions for each undissociated molecule', expression: '10^(4.2 - 4.2)', value: 1, unit: '' },
      { text: 'Undissociated share', expression: '1 / (1 + 1)', value: 0.5, unit: '' },
    ],
    range: expect.stringMatching(/One step of one acid/),
    sources: ['ANDERSON1967'],
  })
})

describe('a mixture by names', () => {
  // NBS standard: 0.05 mol/kg KH2 citrate, pH 3.776 at 25 °C. J. Res. NBS 73A (1969) 37, abstract.
  test('is solved, step by step to the pH', () => {
    const { values, steps, sources } = calculate(world, 'buffer-ph', CITRATE)
    expect(Object.keys(values)).toEqual(['ph', 'ionic_strength'])
    expect(values['ph']).toBeCloseTo(3.776, 1)
    expect(steps.at(-1)?.value).toBe(values['ph'])
    expect(steps.map(({ text }) => text)).toContain('pKa of citric acid, step 3, at 25 °C without salt')
    expect(sources).toEqual(['BENEZETH1995', 'MALMBERG1956', 'PHREEQC-MINTEQ'])
  })
  test('takes short names, ids of records and any case', () => {
    const ph = (acid: string) =>
      calculate(world, 'buffer-ph', { ...CITRATE, systems: [{ acid, mol_per_l: 0.05 }] }).values
    expect(ph('citric')).toEqual(ph('Citric Acid'))
    expect(ph('citric-acid')).toEqual(ph('citric acid'))
  })
  test('a salt brings its counter-ions, a strong acid its own', () => {
    const salt = calculate(world, 'buffer-ph', {
      systems: [{ acid: 'sodium benzoate', mol_per_l: 0.03 }],
      ions: [],
      temp_c: 25,
    })
    const parts = calculate(world, 'buffer-ph', {
      systems: [{ acid: 'benzoic acid', mol_per_l: 0.03 }],
      ions: [{ charge: 1, mol_per_l: 0.03 }],
      temp_c: 25,
    })
    expect(salt.values).toEqual(parts.values)
    const hcl = calculate(world, 'buffer-ph', {
      systems: [{ acid: 'hydrochloric acid', mol_per_l: 0.001 }],
      ions: [],
      temp_c: 25,
    })
    expect(hcl.values['ph']).toBeCloseTo(3.015, 2)
  })
  test('an unknown name is refused with the names that exist', () => {
    const unknown = { ...CITRATE, systems: [...CITRATE.systems, { acid: 'unicorn acid', mol_per_l: 0.1 }] }
    expect(() => calculate(world, 'buffer-ph', unknown)).toThrow(RangeError)
    expect(() => calculate(world, 'buffer-ph', unknown)).toThrow(
      /^systems\/1\/acid: .*unicorn acid.*citric acid.*lactic acid/,
    )
  })
})

describe('the range of a result says what is doubtful in this very mixture', () => {
  const range = (input: Parameters<typeof calculate<'buffer-ph'>>[2]) => calculate(world, 'buffer-ph', input).range
  test('much salt', () => {
    const salty = { ...CITRATE, ions: [...CITRATE.ions, { charge: 1, mol_per_l: 1 }, { charge: -1, mol_per_l: 1 }] }
    expect(range(salty)).toMatch(/above 0.5: the figure is a guide/)
    expect(range(CITRATE)).not.toMatch(/guide/)
  })
  test('a constant whose heat is not known, away from room temperature', () => {
    const sorbic = { systems: [{ acid: 'sorbic acid', mol_per_l: 0.01 }], ions: [], temp_c: 60 }
    expect(range(sorbic)).toMatch(/Not known how the constant of sorbic acid moves with temperature/)
    expect(range({ ...sorbic, temp_c: 25 })).not.toMatch(/Not known/)
  })
  test('a contested constant', () => {
    expect(range({ systems: [{ acid: 'kojic acid', mol_per_l: 0.01 }], ions: [], temp_c: 25 })).toMatch(/contested/)
  })
})

describe('the dose to a pH', () => {
  test('is given in moles and in per cent of the pure dry substance', () => {
    const { values, steps } = calculate(world, 'acid-dose', { ...ALKALI, add: 'citric acid', target_ph: 5.5 })
    expect(Object.keys(values)).toEqual(['dose_mmol_per_l', 'dose_percent'])
    expect(values['dose_percent']).toBeCloseTo((values['dose_mmol_per_l']! * 192.123) / 10_000, 6)
    expect(steps.at(-1)).toMatchObject({ text: 'pH with this dose, solved again', unit: 'pH' })
    expect(steps.at(-1)?.value).toBeCloseTo(5.5, 6)
  })
  test('of a hydrate is more by its water', () => {
    const dose = (add: string) =>
      calculate(world, 'acid-dose', { ...ALKALI, add, target_ph: 5.5 }).values['dose_percent']!
    expect(dose('citric acid monohydrate') / dose('citric acid')).toBeCloseTo(1.094, 3)
  })
  test.each([
    [
      'sodium hydroxide',
      5.5,
      /^target_ph: 5.5 lies below pH 11.66 of the mixture and asks for an acid, which sodium hydroxide is not/,
    ],
    ['citric acid', 12.5, /^target_ph: 12.5 lies above pH 11.66 .* asks for a base, which citric acid is not/],
    ['citric acid', 0.1, /^target_ph: .*not even 10 mol\/L of citric acid/],
    ['unicorn', 5, /^add: no acid or base is called unicorn/],
    ['cocamidopropyl betaine carboxyl', 5, /^add: .* has no molar mass/],
  ])('%s to pH %f is refused by name', (add, target_ph, says) => {
    expect(() => calculate(world, 'acid-dose', { ...ALKALI, add, target_ph })).toThrow(says)
  })
})

test('ten times thinner, a citrate buffer reads about 0.2 higher and says so', () => {
  const { values, steps } = calculate(world, 'dilution-ph', {
    ...CITRATE,
    ions: [{ charge: 1, mol_per_l: 0.1 }],
    product_g: 10,
    water_g: 90,
  })
  expect(Object.keys(values)).toEqual(['ph', 'ph_diluted'])
  const shift = values['ph_diluted']! - values['ph']!
  expect(shift).toBeGreaterThan(0.15)
  expect(shift).toBeLessThan(0.3)
  expect(steps.at(-1)?.value).toBeCloseTo(shift, 12)
})

test('every source of a constant is in a list of sources', () => {
  for (const { acids } of world.knowledge.acids.compounds.values())
    for (const { acid } of acids)
      for (const { source } of acid.steps) expect(world.knowledge.sources.has(source), source).toBe(true)
})

test('molar masses are those of the records', () => {
  const apart = [...world.knowledge.acids.byIngredient].flatMap(([id, { molar_mass }]) => {
    const stated = world
      .find(id)
      ?.facts.get('molar_mass')
      ?.find(({ used }) => used)?.value
    return stated === undefined || molar_mass === undefined || Math.abs(stated / molar_mass - 1) < 0.005 ? [] : [id]
  })
  expect(apart).toEqual([])
})

test('constants are those of the records, but for the step that a salt lives by', () => {
  const apart = [...world.knowledge.acids.byIngredient].flatMap(([id, { acids }]) => {
    const stated = world
      .find(id)
      ?.facts.get('acid_pka')
      ?.find(({ used }) => used)?.value
    const steps = acids.flatMap(({ acid }) => acid.steps.map(({ pka }) => pka))
    return stated === undefined || steps.length === 0 || steps.some((pka) => Math.abs(pka - stated) <= 0.12)
      ? []
      : [`${id} ${stated}`]
  })
  expect(apart).toEqual([])
})

test('what never takes part leaves water as it is', () => {
  const input = { systems: [{ acid: 'caffeine', mol_per_l: 0.01 }], ions: [], temp_c: 25 }
  expect(calculate(world, 'buffer-ph', input).values['ph']).toBeCloseTo(7, 2)
})
