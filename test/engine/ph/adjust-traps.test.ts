import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { adjustPh } from '#engine/index.ts'
import type { AdjustAsked } from '#engine/ph/adjust-types.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const WASH = makeFormula({ 'decyl-glucoside': 15, 'cocamidopropyl-betaine': 15, glycerin: 3 }, { ph: null })
const adjust = (asked: Partial<AdjustAsked>) =>
  adjustPh(world, { formula: WASH, batch_g: 500, target_ph: 4.5, ...asked })

describe('traps', () => {
  const warned = (asked: Partial<AdjustAsked>) => adjust(asked).warnings.join(' ')
  const base = { measured: [{ added_g: 0, ph: 7 }], target_ph: 5 }
  test.each([
    [
      'citrate read in a dilution',
      { formula: makeFormula({ 'sodium-citrate': 1 }), diluted: 10 },
      /Citrate and phosphate read 0.2/,
    ],
    ['gluconolactone', { with: 'gluconolactone' }, /Gluconolactone .* next day/],
    ['urea', { formula: makeFormula({ urea: 10 }) }, /Urea gives off ammonia/],
    ['bicarbonate', { formula: makeFormula({ 'sodium-bicarbonate': 0.3 }) }, /bicarbonate give off gas/],
    ['amine oxides', { formula: makeFormula({ 'lauramine-oxide': 5 }) }, /amine oxides take up acid .* turn cationic/],
    ['alkaline glucosides', { formula: WASH }, /comes at pH 11.5/],
    ['soap', { formula: makeFormula({ 'sodium-cocoate': 10 }) }, /soap cannot be brought to skin pH/],
    ['strips', { meter: 'strips' as const }, /coloured or cloudy products/],
    ['acid sold as a solution', { with: 'lactic-acid' }, /usually sold as 80 to 90 %/],
  ])('%s', (_, asked, says) => {
    expect(warned({ ...base, ...asked })).toMatch(says)
    expect(warned({ formula: makeFormula({ glycerin: 3 }), ...base })).not.toMatch(says)
  })
})

describe('cautions', () => {
  const cautions = (id: string, measured: { added_g: number; ph: number }[], target_ph: number) =>
    adjust({ formula: makeFormula({ glycerin: 3 }, { ph: null }), with: id, measured, target_ph }).cautions.join(' ')
  test('lye goes into water, behind goggles', () => {
    expect(cautions('sodium-hydroxide', [{ added_g: 0, ph: 4 }], 5)).toMatch(
      /goggles and gloves, lye into cold water and never water into lye/,
    )
  })
  test('acid goes into water, behind goggles', () => {
    expect(cautions('citric-acid', [{ added_g: 0, ph: 7 }], 5)).toMatch(/goggles and gloves, acid into water/)
  })
  test('no pH says that a product is preserved', () => {
    expect(cautions('citric-acid', [{ added_g: 0, ph: 7 }], 5)).toMatch(/only a challenge test/)
  })
})

test('a formula with hardly any water gets no dose', () => {
  const balm = makeFormula({ 'caprylic-capric-triglyceride': 95, aqua: 5 }, { fill: null, ph: 7 })
  expect(adjust({ formula: balm, target_ph: 5 }).ways[0]).toMatchObject({ verdict: 'not-known', dose_g: null })
})

test('no recipe, batch or target brings a fault other than a named one', () => {
  const ids = [
    'citric-acid',
    'sodium-lactate',
    'sodium-benzoate',
    'decyl-glucoside',
    'sodium-hydroxide',
    'arginine',
    'carbomer',
    'glycerin',
    'disodium-edta',
    'phytic-acid',
    'cetyl-alcohol',
  ]
  fc.assert(
    fc.property(
      fc.dictionary(fc.constantFrom(...ids), fc.double({ min: 0.01, max: 8, noNaN: true }), { maxKeys: 6 }),
      fc.record({
        ph: fc.option(fc.double({ min: -1, max: 15, noNaN: true })),
        target_ph: fc.double({ min: 0, max: 14, noNaN: true }),
        batch_g: fc.double({ min: 0.001, max: 1e6, noNaN: true }),
        with: fc.option(fc.constantFrom('citric-acid', 'sodium-hydroxide', 'arginine', 'sodium-bicarbonate'), {
          nil: undefined,
        }),
        first: fc.option(fc.double({ min: 0, max: 14, noNaN: true }), { nil: undefined }),
        second: fc.option(fc.double({ min: 0, max: 14, noNaN: true }), { nil: undefined }),
        meter: fc.constantFrom('meter', 'strips'),
        diluted: fc.option(fc.double({ min: 0.1, max: 100, noNaN: true }), { nil: undefined }),
      }),
      (shares, { first, second, ph, with: chosen, diluted, ...rest }) => {
        const measured = [first, second].flatMap((one, n) =>
          one === undefined ? [] : [{ added_g: first === undefined ? 0 : n * 0.1, ph: one }],
        )
        const asked: AdjustAsked = {
          formula: makeFormula(shares, { ph }),
          ...rest,
          ...(chosen !== undefined && { with: chosen }),
          ...(diluted !== undefined && { diluted }),
          ...(measured.length > 0 && { measured }),
        }
        try {
          const reply = adjustPh(world, asked)
          for (const way of reply.ways) {
            if (way.dose_g === null) expect(way.verdict).toBe('not-known')
            else expect(way.dose_g.min <= way.dose_g.max && Number.isFinite(way.dose_g.max)).toBe(true)
            way.steps.slice(1).forEach(({ add_g }, n) => expect(add_g).toBeLessThanOrEqual(way.steps[n]!.add_g))
            for (const { add_g } of way.steps) expect(add_g).toBeGreaterThan(0)
          }
        } catch (error) {
          if (!(error instanceof RangeError)) throw error
          expect(error.message).toMatch(/^(with|target_ph|measured\/\d\/(added_g|ph)): /)
        }
      },
    ),
    { numRuns: 300 },
  )
})
