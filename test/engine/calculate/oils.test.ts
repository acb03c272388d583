import { describe, expect, test } from 'vitest'
import { NEAR } from '#engine/calculate/profile-distance.ts'
import { profileDistance } from '#engine/chemistry/profile-distance.ts'
import { usedClaim } from '#engine/graph/subject.ts'
import { calculate } from '#engine/index.ts'
import { realWorld } from '../../helpers.ts'

const world = realWorld()
const iodine = (ingredient: string) => calculate(world, 'iodine-value', { ingredient })
const saponification = (ingredient: string) => calculate(world, 'saponification-value', { ingredient })
const acids = (...shares: [string, number][]) => shares.map(([acid, share_percent]) => ({ acid, share_percent }))

describe('an oil of the records', () => {
  // Ranges of CXS 210, CXS 33 and pharmacopoeias as in graph-data/tables/oil-constants.tsv; 3 and 2 units of scatter.
  test.each([
    ['cocos-nucifera-oil', [6.3, 10.6], [248, 265]],
    ['elaeis-guineensis-oil', [50, 55], [190, 209]],
    ['olea-europaea-fruit-oil', [75, 94], [184, 196]],
    ['prunus-amygdalus-dulcis-oil', [95, 109], [190, 195]],
    ['linum-usitatissimum-seed-oil', [170, 211], [185, 197]],
    ['theobroma-cacao-seed-butter', [34, 38], [188, 198]],
    ['butyrospermum-parkii-butter', [30, 75], [160, 195]],
  ] as const)('%s comes to its printed constants', (id, [iLow, iHigh], [sLow, sHigh]) => {
    const [iv, sv] = [iodine(id).values['iodine_value']!, saponification(id).values['saponification_value']!]
    expect(iv).toBeGreaterThan(iLow - 3)
    expect(iv).toBeLessThan(iHigh + 3)
    expect(sv).toBeGreaterThan(sLow - 2)
    expect(sv).toBeLessThan(sHigh + 2)
  })
  test('is shown beside what is printed of it', () => {
    const { steps, sources } = iodine('olea-europaea-fruit-oil')
    expect(steps.at(-1)).toMatchObject({
      text: expect.stringContaining('as printed') as string,
      expression: '75 to 94 g/100 g (codex-cxs33-mem, memory)',
    })
    expect(sources).toContain('codex-cxs33-mem')
  })
  test('with ricinoleic acid carries the note that it reads low', () => {
    expect(iodine('ricinus-communis-seed-oil').range).toContain('Ricinoleic acid')
    expect(iodine('olea-europaea-fruit-oil').range).not.toContain('Ricinoleic acid')
  })
})

describe('what is no triglyceride', () => {
  // jojoba-index: mean ester 606 g/mol, 92.2 mg KOH/g.
  test('a wax ester binds one KOH a molecule', () => {
    const jojoba = saponification('simmondsia-chinensis-seed-oil').values['saponification_value']!
    expect(Math.abs(jojoba - 92.2)).toBeLessThan(1)
  })
  test('a hydrocarbon binds none', () => expect(saponification('squalane').values).toEqual({ saponification_value: 0 }))
  test('is refused by the relation for triglycerides, with what its record states', () => {
    expect(() => iodine('simmondsia-chinensis-seed-oil')).toThrow(
      /^ingredient: expected a triglyceride.*80 to 100 g\/100 g/,
    )
    expect(() => saponification('isopropyl-myristate')).toThrow(/^ingredient: expected a triglyceride.*202 to 212/)
    expect(() => iodine('squalane')).toThrow(RangeError)
    expect(() => iodine('glycerin')).toThrow(RangeError)
  })
  test('an id that nobody knows comes with the nearest', () =>
    expect(() => iodine('olea-europea-fruit-oil')).toThrow(
      /^ingredient: no ingredient has the id.*olea-europaea-fruit-oil/,
    ))
})

describe('fatty acids as typed', () => {
  const of = (fatty_acids: { acid: string; share_percent: number }[]) =>
    calculate(world, 'iodine-value', { fatty_acids })
  test('are scaled to 100 %, which is said', () => {
    const short = of(acids(['C18:1', 72], ['C16:0', 18]))
    expect(short.values['iodine_value']).toBeCloseTo(of(acids(['C18:1', 80], ['C16:0', 20])).values['iodine_value']!, 9)
    expect(short.steps[0]!.text).toContain('90 % scaled to 100 %')
  })
  test('that name too little of an oil are refused', () => {
    expect(() => of(acids(['C18:1', 60]))).toThrow(/^fatty_acids: expected shares that add up to 80 to 120 %, got 60 %/)
    expect(() => of(acids(['C18:1', 0.7], ['C16:0', 0.3]))).toThrow(/^fatty_acids/)
  })
  test('or an ingredient: one of the two, not both and not neither', () => {
    expect(() => calculate(world, 'iodine-value', {})).toThrow(
      /^ingredient: expected an ingredient or fatty_acids, got neither/,
    )
    const both = { ingredient: 'olea-europaea-fruit-oil', fatty_acids: acids(['C18:1', 100]) }
    expect(() => calculate(world, 'saponification-value', both)).toThrow(/^ingredient: expected either.*got both/)
  })
})

describe('distance of two oils', () => {
  test('is nothing to itself, and both figures call it near', () => {
    const { values, steps } = calculate(world, 'profile-distance', {
      from: 'olea-europaea-fruit-oil',
      to: 'olea-europaea-fruit-oil',
    })
    expect(values['cosine']).toBeCloseTo(0, 12)
    expect(values['aitchison']).toBe(0)
    expect(steps.at(-1)!.text).toMatch(/^Both call the oils near/)
  })
  test('of two high-oleic oils, one with erucic-type acids: the two figures disagree, and that is said', () => {
    const { steps, values } = calculate(world, 'profile-distance', {
      from: 'moringa-oleifera-seed-oil',
      to: 'olea-europaea-fruit-oil',
    })
    expect(values['cosine']).toBeLessThan(NEAR.cosine)
    expect(values['aitchison']).toBeGreaterThan(NEAR.aitchison)
    expect(steps.at(-1)!.text).toMatch(/^They disagree: alike in the main acids/)
  })
  test('names the end that has no profile', () => {
    expect(() => calculate(world, 'profile-distance', { from: 'squalane', to: 'olea-europaea-fruit-oil' })).toThrow(
      /^from/,
    )
    expect(() => calculate(world, 'profile-distance', { from: 'olea-europaea-fruit-oil', to: 'aqua' })).toThrow(/^to/)
  })
  test('calls about the nearest tenth of all pairs near', () => {
    const profiles = world.subjects.flatMap((one) => {
      const shares = usedClaim(one, 'fatty_acids')?.shares
      return one.classes.has('triglyceride') && shares ? [shares] : []
    })
    const pairs = profiles.flatMap((a, at) => profiles.slice(0, at).map((b) => profileDistance(a, b)))
    const near = (figure: 'cosine' | 'aitchison') =>
      pairs.filter((one) => one[figure] <= NEAR[figure]).length / pairs.length
    for (const figure of ['cosine', 'aitchison'] as const) {
      expect(near(figure)).toBeGreaterThan(0.05)
      expect(near(figure)).toBeLessThan(0.15)
    }
  })
})

describe('oxidizability', () => {
  const of = (ingredient: string) => calculate(world, 'oxidizability', { ingredient }).values['oxidizability']!
  test('puts flaxseed above sunflower above olive above coconut', () => {
    const order = [
      'linum-usitatissimum-seed-oil',
      'helianthus-annuus-seed-oil',
      'olea-europaea-fruit-oil',
      'cocos-nucifera-oil',
    ].map(of)
    expect(order).toEqual(order.toSorted((a, b) => b - a))
    expect(order[0]! / order[2]!).toBeGreaterThan(5)
  })
  test('is not told for oils whose acids have no weight', () => {
    expect(() => of('limnanthes-alba-seed-oil')).toThrow(/^ingredient: .*C20:1/)
    expect(() => of('ricinus-communis-seed-oil')).toThrow(/^ingredient: .*C18:1-OH/)
  })
})
