import { describe, expect, test } from 'vitest'
import { chainInName } from '#engine/knowledge/chain-in-name.ts'
import { phaseOf } from '#engine/knowledge/phase-claims.ts'
import type { PhaseGrounds } from '#engine/knowledge/phase-claims.ts'
import { makeKnowledge, realWorld } from '../../helpers.ts'

describe('the chain that a name names', () => {
  // Carbon atoms of the acids and alcohols behind the stems: IUPAC names dodecanoic, tetradecanoic, hexadecanoic,
  // octadecanoic, octadecenoic, icosanoic, docosanoic acid (Gold Book, fatty acids).
  test.each([
    ['SODIUM LAURYL SULFATE', 12],
    ['LAURETH-4', 12],
    ['COCAMIDOPROPYL BETAINE', 12],
    ['SODIUM MYRETH SULFATE', 14],
    ['CETYL ALCOHOL', 16],
    ['CETETH-20', 16],
    ['SORBITAN PALMITATE', 16],
    ['STEARETH-21', 18],
    ['GLYCERYL OLEATE', 18],
    ['OLETH-10', 18],
    ['LINOLEIC ACID', 18],
    ['ARACHIDYL ALCOHOL', 20],
    ['BEHENTRIMONIUM CHLORIDE', 22],
    ['CAPRYLIC ACID', 8],
    ['CAPRIC ACID', 10],
    ['DECYL GLUCOSIDE', 10],
    ['UNDECYLENIC ACID', 11],
    ['TRIDECETH-9', 13],
  ])('%s: %d', (inci, carbons) => expect(chainInName(inci)).toEqual([carbons, carbons]))

  test.each([
    ['CETEARYL ALCOHOL', [16, 18]],
    ['CAPRYLYL/CAPRYL GLUCOSIDE', [8, 10]],
    ['SODIUM C14-16 OLEFIN SULFONATE', [14, 16]],
  ] as const)('%s is a cut', (inci, cut) => expect(chainInName(inci)).toEqual(cut))

  test('of an ester of two chains it is the longer', () =>
    expect(['STEARYL BEHENATE', 'CETYL STEARATE'].map(chainInName)).toEqual([
      [22, 22],
      [18, 18],
    ]))
  // 2 laurate, 4 palmitate, 6 stearate, 8 oleate; the second digit is the number of ester groups and of ethylene oxide.
  test('of a polysorbate it stands in the first digit', () =>
    expect(['POLYSORBATE 20', 'POLYSORBATE 40', 'POLYSORBATE 65', 'POLYSORBATE 80'].map(chainInName)).toEqual([
      [12, 12],
      [16, 16],
      [18, 18],
      [18, 18],
    ]))
  test.each(['PEG-8', 'ACETYLATED LANOLIN ALCOHOL', 'COCOA', 'SODIUM POLYACRYLATE', 'GLYCERIN', 'PCA', 'COLEUS OIL'])(
    '%s names none',
    (inci) => expect(chainInName(inci)).toBeNull(),
  )
})

describe('the phase', () => {
  const at = (grounds: Partial<PhaseGrounds>) =>
    phaseOf({ solubility: 'water', form: 'liquid', rolePhase: 'either', ...grounds })
  test('of the delicate is the cooled batch, whatever it dissolves in', () => {
    for (const solubility of ['water', 'both', 'oil']) expect(at({ solubility, heat_max_c: 40 })).toBe('cool-down')
    expect(at({ heat_max_c: 80 })).toBe('water')
  })
  test('of an oil is the oil, also where it bears little heat: it has nowhere else to go', () =>
    expect(at({ solubility: 'oil', rolePhase: 'oil', heat_max_c: 40 })).toBe('oil'))
  test('of scents is the cooled batch, of a preservative that is a powder the water', () => {
    expect(at({ solubility: 'oil', rolePhase: 'cool-down' })).toBe('cool-down')
    expect(at({ form: 'powder', rolePhase: 'cool-down' })).toBe('water')
    expect(at({ form: 'powder', rolePhase: 'cool-down', heat_max_c: 45 })).toBe('cool-down')
  })
  test('of what nothing dissolves is the powders', () =>
    expect(at({ solubility: 'insoluble', form: 'powder' })).toBe('powder'))
  test('of what dissolves in both is either', () => expect(at({ solubility: 'both' })).toBe('either'))
})

describe('a record that states no phase or form', () => {
  const worldOf = (change: Record<string, unknown>) =>
    makeKnowledge({
      roles: { humectant: { label: 'Humectant', phase: 'water' }, wax: { label: 'Wax', phase: 'oil' } },
      properties: {
        melting_c: { kind: 'range', unit: 'C' },
        active_percent: { kind: 'range', unit: '%' },
        form: { kind: 'one-of', words: ['liquid', 'solid', 'powder'] },
        solubility: { kind: 'one-of', words: ['water', 'oil'] },
        phase: { kind: 'one-of', words: ['water', 'oil'] },
      },
      ingredients: [
        {
          id: 'urea',
          inci: 'UREA',
          seen: { source: 'memory', access: 'memory', date: '2026-01-31' },
          roles: [{ role: 'humectant' }],
          ...change,
        },
      ],
    }).ingredients.get('urea')!
  const formOf = (change: Record<string, unknown>) =>
    worldOf(change)
      .facts.get('form')
      ?.find(({ used }) => used)?.is

  test('gets a phase, marked derived, that says from what', () => {
    const [claim] = worldOf({ solubility: 'water', form: 'powder' }).facts.get('phase')!
    expect(claim).toMatchObject({
      is: 'water',
      kind: 'derived',
      access: 'memory',
      used: true,
      id: 'urea#phase/derived',
    })
    expect(claim!.locator).toBe('worked out from solubility (water), form (powder) and role (humectant)')
  })
  test('gets none where it is not known where it dissolves', () =>
    expect(worldOf({ form: 'powder' }).facts.has('phase')).toBe(false))
  test('keeps its own', () =>
    expect(worldOf({ phase: 'oil', solubility: 'water', form: 'liquid' }).facts.get('phase')).toHaveLength(1))
  test('is liquid below its melting point, a fat above it solid, crystals powder', () => {
    expect(formOf({ facts: { melting_c: -10 } })).toBe('liquid')
    expect(formOf({ solubility: 'oil', facts: { melting_c: [62, 65] } })).toBe('solid')
    expect(formOf({ solubility: 'water', facts: { melting_c: 133 } })).toBe('powder')
  })
  test('has no form near room temperature, and none where it is sold dissolved', () => {
    expect(formOf({ solubility: 'oil', facts: { melting_c: [20, 25] } })).toBeUndefined()
    expect(formOf({ facts: { melting_c: 133, active_percent: 50 } })).toBeUndefined()
  })
})

test('every record of the graph has phase, solubility and form, its own or one that follows', () => {
  const bare = [...realWorld().knowledge.ingredients.values()].filter((one) =>
    ['phase', 'solubility', 'form'].some((property) => !one.facts.get(property)?.some(({ used }) => used)),
  )
  expect(bare.map(({ id }) => id)).toEqual([])
})

describe('what is dosed by equivalents and states none', () => {
  const { knowledge } = realWorld()
  const given = (id: string) =>
    knowledge.ingredients
      .get(id)!
      .facts.get('equivalents')!
      .find(({ used }) => used)!
  // Formic acid, pKa 3.75, and glycolic acid, 3.83 (any table): 1 / (1 + 10^(3.75 - 5)) = 0.95 of the protons are off at pH 5.
  // Citric acid, 3.13, 4.76, 6.40: 0.99 + 0.64 + 0.04 = 1.66, of which its monosodium salt has given off one.
  test.each([
    ['formic-acid', 0.95],
    ['glycolic-acid', 0.94],
    ['monosodium-citrate', 0.66],
  ])('%s gives off %d at pH 5', (id, value) => {
    expect(given(id)).toMatchObject({ value, kind: 'derived', id: `${id}#equivalents/derived` })
  })
  test('a salt takes up what its acid keeps there', () => {
    expect(given('sodium-citrate').value! + given('citric-acid').value!).toBeCloseTo(3, 1)
  })
})
