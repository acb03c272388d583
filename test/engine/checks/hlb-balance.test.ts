import { describe, expect, test } from 'vitest'
import { hlbSystem } from '#engine/checks/hlb-balance.ts'
import { buildContext } from '#engine/formula/build-context.ts'
import { findingsOf, makeFormula, realWorld } from '../../helpers.ts'

const PAIR = { 'polysorbate-80': 4, 'sorbitan-oleate': 0.3 }
const cream = (shares: Record<string, number>) => makeFormula(shares, { form: 'oil-in-water' })
const off = (shares: Record<string, number>) => findingsOf('hlb-off-balance', cream(shares))
const system = (shares: Record<string, number>) => hlbSystem(buildContext(cream(shares), realWorld()))

describe('balance of a nonionic pair', () => {
  test('is told with its number, that of the oils and every stated value of each oil', () => {
    const [finding] = off({ ...PAIR, 'paraffinum-liquidum': 20 })
    expect(finding).toMatchObject({ severity: 'note', about: ['polysorbate-80', 'sorbitan-oleate'] })
    expect(finding!.message).toMatch(/HLB of 14\.3, the oils ask for about 10 to 12 \(Paraffinum liquidum 10 to 12\)/)
    expect(finding!.sources).toEqual(expect.arrayContaining(['griffin1949-p317', 'hlb-exercise-a']))
  })
  test('is a mean by mass', () => {
    const { span } = system({ ...PAIR, 'paraffinum-liquidum': 20 })!
    expect(span!.min).toBeCloseTo((4 * 15 + 0.3 * 4.3) / 4.3, 9)
  })
  test('with glyceryl stearate is told with and without it', () => {
    const { span } = system({
      'polysorbate-60': 2,
      'sorbitan-stearate': 2,
      'glyceryl-stearate': 4,
      'paraffinum-liquidum': 15,
    })!
    expect(span!.min).toBeCloseTo((2 * 14.9 + 2 * 4.7 + 4 * 3.8) / 8, 9)
    expect(span!.max).toBeCloseTo((14.9 + 4.7) / 2, 9)
  })
  test('is not known where nobody has published what the oils ask for', () => {
    const [finding] = off({ 'polysorbate-60': 2, 'sorbitan-stearate': 2, 'coco-caprylate': 20 })
    expect(finding).toMatchObject({ severity: 'unknown', about: ['coco-caprylate'] })
    expect(finding!.message).toContain('required HLB of Coco-caprylate is not known')
  })
  test('is not known with an emulsifier of unknown HLB', () => {
    const [finding] = off({
      'polysorbate-60': 2,
      'inulin-lauryl-carbamate': 1,
      'paraffinum-liquidum': 15,
    })
    expect(finding).toMatchObject({ severity: 'unknown', about: ['inulin-lauryl-carbamate'] })
  })
})

describe('HLB says nothing of', () => {
  const oil = { 'ricinus-communis-seed-oil': 15 }
  test.each([
    ['a lactylate', { 'sodium-stearoyl-lactylate': 1.5, 'glyceryl-stearate': 3 }],
    ['a phosphate', { 'potassium-cetyl-phosphate': 1.5, 'glyceryl-stearate': 3 }],
    ['lecithin', { 'hydrogenated-lecithin': 2, 'sorbitan-stearate': 1 }],
    ['a quat', { 'polysorbate-60': 2, 'behentrimonium-chloride': 2 }],
    ['a polymer', { 'acrylates-c10-30-alkyl-acrylate-crosspolymer': 0.3, 'polysorbate-60': 1 }],
    ['soap in the making', { 'stearic-acid': 5, triethanolamine: 1, 'sorbitan-stearate': 2, 'polysorbate-60': 1 }],
    ['a complete emulsifier', { 'cetearyl-olivate-and-sorbitan-olivate': 4 }],
    ['a liquid-crystal former', { 'cetearyl-glucoside': 3, 'sorbitan-stearate': 1 }],
  ] as const)('%s', (_what, emulsifiers) => expect(system({ ...emulsifiers, ...oil })).toBeNull())
})
