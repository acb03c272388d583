import { describe, expect, test } from 'vitest'
import type { Claim } from '#engine/model/records.ts'
import { makeKnowledge, realWorld } from '../../helpers.ts'
import type { Parts } from '../../helpers.ts'

const PKA = { path: 'tables/pka.tsv' }
const COMPOUNDS = { path: 'tables/pka-compounds.tsv' }
const step = (acid: string, n: string, pka: string, temp_c = '25', charge = '0') => ({
  acid,
  charge,
  step: n,
  pka,
  temp_c,
  source_id: 'S-1',
  locator: 'table 1',
  access: 'read',
})
const compound = (name: string, ingredient: string, acids_per_mol: string, ions_per_mol = '') => ({
  name,
  ingredient,
  acids_per_mol,
  ions_per_mol,
})
const claimsOf = (id: string, pka: Record<string, string>[], compounds: Record<string, string>[]): Claim[] => {
  const tables = [
    { ...PKA, rows: pka },
    { ...COMPOUNDS, rows: compounds },
  ] as Parts['tables']
  const knowledge = makeKnowledge({ ingredients: [{ id, inci: id.toUpperCase(), roles: [] }], tables: tables! })
  return [...knowledge.ingredients.get(id)!.facts.values()].flat()
}
const short = ({ property, value, conditions, used }: Claim) => [property, value, conditions, used]

describe('constants of the table of acids', () => {
  const CITRIC = [step('citric acid', '1', '3.13'), step('citric acid', '2', '4.76')]

  test('the first step of a free acid decides, the further ones are to be read', () => {
    const claims = claimsOf('citric-acid', CITRIC, [compound('citric acid', 'citric-acid', 'citric acid*1')])
    expect(claims.map(short)).toEqual([
      ['acid_pka', 3.13, undefined, true],
      ['acid_constant', 4.76, 'citric acid, step 2, 25 C', false],
    ])
  })
  test('those of a salt never decide: its record says which step bears on it', () => {
    const claims = claimsOf('sodium-citrate', CITRIC, [
      compound('sodium citrate', 'sodium-citrate', 'citric acid*1', '1*3'),
    ])
    expect(claims.map(({ property }) => property)).toEqual(['acid_constant', 'acid_constant'])
  })
  test('an amino acid has no first step to go by, and a constant far from room temperature is left out', () => {
    const arginine = [step('arginine', '1', '1.8', '25', '2'), step('arginine', '2', '9', '25', '2')]
    expect(
      claimsOf('arginine', arginine, [compound('arginine', 'arginine', 'arginine*1')]).map(({ property }) => property),
    ).toEqual(['acid_constant', 'acid_constant'])
    expect(
      claimsOf('citric-acid', [step('citric acid', '1', '3.2', '5')], [compound('c', 'citric-acid', 'citric acid*1')]),
    ).toEqual([])
  })
})

describe('figures of a blend from its parts', () => {
  const seen = { source: 'practice', access: 'common-practice', date: '2026-01-31' }
  const roles = {
    emulsifier: { label: 'Emulsifier' },
    surfactant: { label: 'Surfactant', swap: { dose: 'active-matter' } },
  }
  const properties = {
    hlb: { kind: 'range', unit: '1' },
    active_percent: { kind: 'range', unit: '%' },
  }
  const part = (id: string, role: string, more: object = {}) => ({
    id,
    inci: id.toUpperCase(),
    seen,
    roles: [{ role }],
    ...more,
  })
  const blendOf = (role: string, shares: Record<string, number>, parts: object[], more: object = {}) =>
    makeKnowledge({
      roles,
      properties,
      classes: Object.fromEntries(['nonionic', 'anionic', 'fatty-alcohol'].map((id) => [id, { group: 'charge' }])),
      ingredients: [
        ...(parts as Record<string, unknown>[]),
        {
          ...part('blend', role),
          made_of: Object.entries(shares).map(([ingredient, share_percent]) => ({ ingredient, share_percent })),
          ...more,
        },
      ],
    }).ingredients.get('blend')!
  const low = part('low', 'emulsifier', { classes: ['nonionic'], facts: { hlb: 4 } })
  const high = part('high', 'emulsifier', { classes: ['nonionic'], facts: { hlb: 16 } })
  const wash = part('wash', 'surfactant', { classes: ['anionic'] })
  const aqua = part('aqua', 'water')

  test('the HLB is the mean by mass of its emulsifiers', () => {
    // (75 x 4 + 25 x 16) / 100
    const claim = blendOf('emulsifier', { low: 75, high: 25 }, [low, high]).facts.get('hlb')![0]!
    expect(claim).toMatchObject({ value: 7, kind: 'derived', used: true, access: 'common-practice' })
    expect(claim.locator).toBe('worked out by mass from low (4), high (16)')
  })
  test('fatty alcohol counts for nothing in it', () => {
    const alcohol = part('alcohol', 'emulsifier', { classes: ['fatty-alcohol', 'nonionic'], facts: { hlb: 1 } })
    expect(
      blendOf('emulsifier', { low: 30, high: 10, alcohol: 60 }, [low, high, alcohol]).facts.get('hlb')![0]!.value,
    ).toBe(7)
  })
  test('an unknown or charged emulsifier leaves it unknown', () => {
    const unknown = part('high', 'emulsifier', { classes: ['nonionic'] })
    const charged = part('high', 'emulsifier', { classes: ['anionic'], facts: { hlb: 16 } })
    for (const other of [unknown, charged])
      expect(blendOf('emulsifier', { low: 75, high: 25 }, [low, other]).facts.has('hlb')).toBe(false)
  })
  test('a stated value stays alone', () => {
    const facts = blendOf('emulsifier', { low: 75, high: 25 }, [low, high], { facts: { hlb: 9 } }).facts
    expect(facts.get('hlb')!.map(({ value }) => value)).toEqual([9])
  })
  test('active matter is what does the job, beside water', () => {
    const claim = blendOf('surfactant', { wash: 30, aqua: 70 }, [wash, aqua]).facts.get('active_percent')![0]!
    expect(claim).toMatchObject({ value: 30, kind: 'derived', used: true })
  })
  test('shares of actives alone do not say how much water there is', () => {
    const other = part('other', 'surfactant')
    expect(blendOf('surfactant', { wash: 60, other: 40 }, [wash, other]).facts.has('active_percent')).toBe(false)
  })
  test('the charge is that of its parts, where it states none', () => {
    expect([...blendOf('surfactant', { wash: 30, aqua: 70 }, [wash, aqua]).classes]).toEqual(['anionic'])
    expect([...blendOf('emulsifier', { low: 75, high: 25 }, [low, high]).classes]).toEqual(['nonionic'])
    expect([...blendOf('surfactant', { wash: 5, aqua: 95 }, [wash, aqua]).classes]).toEqual([])
  })
  test('a share that is none is left to the lints', () => {
    expect(blendOf('emulsifier', { low: 0, high: 100 }, [low, high]).facts.has('hlb')).toBe(false)
  })
})

test('no derived value of the real data is better known than what it rests on', () => {
  const ORDER = ['read', 'secondary', 'memory', 'common-practice']
  const derived = [...realWorld().knowledge.ingredients.values()].flatMap((one) =>
    one.madeOf.length === 0
      ? []
      : [...one.facts.values()]
          .flat()
          .filter(({ id }) => id.endsWith('/derived'))
          .map((claim) => ({ one, claim })),
  )
  expect(derived.length).toBeGreaterThan(0)
  expect(
    derived
      .filter(({ one, claim }) => ORDER.indexOf(claim.access) < ORDER.indexOf(one.classProvenance.access))
      .map(({ one }) => one.id),
  ).toEqual([])
})
