import { describe, expect, test } from 'vitest'
import { coldProcess } from '#engine/graph/cold-process.ts'
import { findIngredients } from '#engine/graph/find-ingredients.ts'
import type { IngredientQuery } from '#engine/graph/find-ingredients.ts'
import { rangeOfProperty } from '#engine/graph/subject.ts'
import { usedClaim } from '#engine/knowledge/used-claim.ts'
import { makeWorld, realWorld } from '../../helpers.ts'

const GUMS = ['anionic-gum', 'nonionic-gum']
const ids = (query: IngredientQuery): string[] =>
  findIngredients(realWorld(), { limit: 200, ...query }).ingredients.map(({ id }) => id)
const subject = (id: string) => realWorld().find(id)!

describe('gums for a cold process at pH 4', () => {
  const found = ids({ roles: GUMS, ph: 4, cold: true })
  // The windows table of structure formers: xanthan keeps at pH 2 to 12 in hot or cold water (whw-poly, read).
  test('xanthan and hydroxyethylcellulose are among them', () => {
    expect(found).toContain('xanthan-gum')
    expect(found).toContain('hydroxyethylcellulose')
  })
  // Gellan hydrates at 75 to 90 C (sup-gellan2, read), carrageenan above 70 C (hc-compare, read).
  test('gums that hydrate hot are not', () => {
    expect(found).not.toContain('gellan-gum')
    expect(found).not.toContain('carrageenan')
    expect(ids({ roles: GUMS, ph: 4 })).toContain('gellan-gum')
  })
  // Carboxymethylcellulose keeps at pH 2 to 10 and works at 7 to 9 (dict-cmc, read; hpe-mem, memory).
  test('one that keeps there and works elsewhere is not', () => {
    expect(rangeOfProperty(subject('cellulose-gum'), 'ph_stability')).toEqual({ min: 2, max: 10 })
    expect(found).not.toContain('cellulose-gum')
    expect(ids({ roles: GUMS, ph: 8, cold: true })).toContain('cellulose-gum')
  })
  test('one of which it is not known is counted, and shown when asked for', () => {
    expect(coldProcess(subject('astragalus-gummifer-gum'))).toBeNull()
    expect(found).not.toContain('astragalus-gummifer-gum')
    const query = { roles: GUMS, ph: 4, cold: true as const, limit: 200 }
    const { total, notKnown } = findIngredients(realWorld(), query)
    const open = findIngredients(realWorld(), { ...query, unknown: 'include' })
    expect(open.ingredients.map(({ id }) => id)).toContain('astragalus-gummifer-gum')
    expect(open.total).toBe(total + notKnown!)
    expect(open).not.toHaveProperty('notKnown')
  })
})

describe('traits', () => {
  test('every find has a window that holds the pH', () => {
    for (const id of ids({ ph: 3.5 })) {
      const { min = -Infinity, max = Infinity } = rangeOfProperty(subject(id), 'ph_stability')!
      expect(min <= 3.5 && max >= 3.5, id).toBe(true)
    }
  })
  test('heat is borne up to the stated end, and no end is no yes', () => {
    const hot = ids({ roles: ['preservative'], heat_c: 80 })
    expect(hot.length).toBeGreaterThan(3)
    for (const id of hot) expect(rangeOfProperty(subject(id), 'heat_max_c')!.max, id).toBeGreaterThanOrEqual(80)
  })
  test('charge, class, tier and solubility narrow the list', () => {
    const cationic = ids({ charge: 'cationic', solubility: 'water', tier: 'full' })
    expect(cationic.length).toBeGreaterThan(5)
    expect(cationic.every((id) => subject(id).classes.has('cationic') && subject(id).tier === 'full')).toBe(true)
    expect(ids({ roles: ['carrier-oil'], solubility: 'water' })).toEqual([])
  })
  test('what dissolves in both fits water and oil', () => {
    const both = ids({ solubility: 'both' })
    expect(both.length).toBeGreaterThan(0)
    const inOil = findIngredients(realWorld(), { solubility: 'oil', limit: 1 }).total
    const onlyOil = realWorld().subjects.filter((one) => usedClaim(one, 'solubility')?.is === 'oil').length
    expect(inOil).toBe(onlyOil + findIngredients(realWorld(), { solubility: 'both', limit: 1 }).total)
  })
  test('a cationic does not stand beside an anionic gum', () => {
    const beside = { roles: ['cationic-conditioner'], beside: [subject('xanthan-gum')] }
    expect(ids(beside)).not.toContain('cetrimonium-chloride')
    expect(ids({ roles: ['cationic-conditioner'] })).toContain('cetrimonium-chloride')
  })
})

describe('a text', () => {
  test('is narrowed by traits as well', () => {
    const gums = ids({ text: 'gum', ph: 4, cold: true })
    expect(gums).toContain('xanthan-gum')
    expect(gums).not.toContain('gellan-gum')
  })
  test('that no name holds finds what is near, the likest first', () => {
    expect(ids({ text: 'xantan gum' })[0]).toBe('xanthan-gum')
    expect(ids({ text: 'sqalane' })[0]).toBe('squalane')
  })
  test('like nothing finds nothing', () => {
    expect(ids({ text: 'qqqqxxwwjj' })).toEqual([])
  })
})

describe('no need of heat', () => {
  const made = (facts: Record<string, unknown>, words: Record<string, string>) => {
    const ingredients = [{ id: 'urea', inci: 'UREA', ...words, facts }]
    return coldProcess(makeWorld({ ingredients }).find('urea')!)
  }
  test('is read from the least heat, the melting point, the solubility or the form', () => {
    expect(made({ heat_min_c: 70 }, { form: 'powder' })).toMatchObject({ cold: false })
    expect(made({ heat_min_c: 15 }, { form: 'powder' })).toMatchObject({ cold: true })
    expect(made({ melting_c: [50, 60] }, { form: 'solid', solubility: 'oil' })).toMatchObject({ cold: false })
    expect(made({ melting_c: [24, 26] }, { form: 'solid', solubility: 'oil' })).toMatchObject({ cold: true })
    expect(made({ water_solubility_percent: 50 }, { form: 'powder', solubility: 'water' })).toMatchObject({
      cold: true,
    })
    expect(made({}, { form: 'liquid' })).toMatchObject({ cold: true })
    expect(made({}, { form: 'powder', solubility: 'insoluble' })).toMatchObject({ cold: true })
  })
  test('is not known of a powder or wax of which nothing is stated', () => {
    expect(made({}, { form: 'powder', solubility: 'water' })).toBeNull()
    expect(made({}, { form: 'solid', solubility: 'oil' })).toBeNull()
  })
})
