import { describe, expect, test } from 'vitest'
import { makeFormula, realWorld } from '../../helpers.ts'
import { isBefore, saysOf, sheetFor, sheetNamed, sheetOf, stepAdding, stepOf } from './sheet.ts'

describe('an oil-in-water cream', () => {
  const sheet = sheetNamed('light-face-cream')
  test('has this order of work', () =>
    expect(sheet.order).toEqual([
      ...['clean', 'weigh', 'wet-gum', 'water-phase', 'oil-phase', 'heat-water', 'combine', 'emulsify', 'cool'],
      ...['top-up', 'cool-down', 'ph', 'fill', 'mark', 'sample', 'watch', 'discard'],
    ]))
  test('lets water and oil be made side by side: neither waits for the other', () => {
    const edges = sheet.edges.map(({ from, to }) => `${from}>${to}`)
    expect(edges).toContain('weigh>oil-phase')
    expect(edges).toContain('oil-phase>combine')
    expect(edges).toContain('heat-water>combine')
    expect(edges.some((edge) => /(water|gum).*>oil-phase|oil-phase>.*(water|gum)/.test(edge))).toBe(false)
  })
  test('wets the gum in the glycerin before it meets water', () => {
    expect(stepOf(sheet, 'wet-gum').adds.sort()).toEqual(['glycerin', 'xanthan-gum'])
    expect(stepOf(sheet, 'water-phase').uses).toEqual(['wet-gum'])
  })
  test('heats both phases to the same heat, at least what the emulsifier needs and at most what the recipe states', () => {
    const heat = stepOf(sheet, 'oil-phase').temp_c
    expect(heat).toMatchObject({ min: 70, max: 75 })
    expect(stepOf(sheet, 'heat-water').temp_c).toEqual(heat)
    // the figure of the emulsifier that decides, whether the record states it or a table
    const used = realWorld()
      .knowledge.ingredients.get('cetearyl-olivate-and-sorbitan-olivate')!
      .facts.get('heat_min_c')!
    expect(heat!.because[0]!.claim).toBe(used.find(({ used: decides }) => decides)!.id)
  })
  test('takes preservative, vitamin and panthenol in below the lowest limit of them, and not above 40 °C', () => {
    expect(stepOf(sheet, 'cool-down').adds.sort()).toEqual([
      ...['ethylhexylglycerin', 'panthenol', 'phenoxyethanol', 'tocopherol'],
    ])
    expect(stepOf(sheet, 'cool-down').temp_c!.max).toBe(40)
  })
  test('is topped up to what it weighs without the lines that are still to come', () =>
    expect(stepOf(sheet, 'top-up').holds_g).toBe(196))
  test('is emulsified by shear and poured oil into water', () => {
    expect(stepOf(sheet, 'combine').text).toMatch(/^Pour the oil phase into the water phase/)
    expect(stepOf(sheet, 'emulsify').text).toMatch(/blender/)
  })
})

describe('a water-in-oil cream', () => {
  const sheet = sheetNamed('water-in-oil-baby-cream')
  test('takes the water into the oil, slowly', () =>
    expect(stepOf(sheet, 'combine').text).toMatch(/let the water phase run in, in drops/))
  test('has the pH of its water phase measured before it goes in: the cream itself has none', () => {
    expect(isBefore(sheet, 'ph', 'combine')).toBe(true)
    expect(stepOf(sheet, 'ph').title).toMatch(/water phase/)
  })
  test('has its lost water replaced before the phases meet', () => {
    expect(stepOf(sheet, 'heat-water').holds_g).toBe(98)
    expect(sheet.order).not.toContain('top-up')
  })
  test('has no gum step without a gum', () => expect(sheet.order.filter((id) => /gum/.test(id))).toEqual([]))
  test('melts above the wax', () => expect(stepOf(sheet, 'oil-phase').temp_c!.min).toBeGreaterThanOrEqual(66))
  test('takes a water-soluble preservative that bears the heat into the water phase: later it reaches no droplet', () => {
    const own = sheetFor(
      {
        'sodium-benzoate': 0.5,
        'polyglyceryl-3-diisostearate': 4,
        'cera-alba': 4,
        'helianthus-annuus-seed-oil': 40,
        panthenol: 1,
      },
      { form: 'water-in-oil' },
    )
    expect(stepAdding(own, 'sodium-benzoate')).toBe('water-phase')
    expect(stepAdding(own, 'panthenol')).toBe('cool-down') // bears 45 °C
  })
})

describe('a cream without heat', () => {
  const sheet = sheetNamed('cold-cream-gel')
  test('is not heated, cooled or topped up', () => {
    for (const id of ['heat-water', 'cool', 'top-up']) expect(sheet.order).not.toContain(id)
    for (const step of sheet.steps.filter(({ id }) => id !== 'watch')) expect(step.temp_c).toBeUndefined()
  })
  test('is neutralised after the oil is in, and before the pH is measured', () => {
    expect(stepAdding(sheet, 'sodium-hydroxide')).toBe('neutralise')
    expect(isBefore(sheet, 'emulsify', 'neutralise') && isBefore(sheet, 'neutralise', 'ph')).toBe(true)
  })
  test('has its polymer strewn on the water, not stirred in', () =>
    expect(stepOf(sheet, 'strew-polymer').text).toMatch(/do not stir until it has sunk/))
})

describe('a conditioner', () => {
  test('is stirred, not sheared', () => {
    const { text } = stepOf(sheetNamed('rinse-off-conditioner'), 'emulsify')
    expect(text).not.toMatch(/blender/)
    expect(text).toMatch(/without whipping air/)
  })
  test('takes the acid into the water phase where an amine needs it, else at the end', () => {
    expect(stepAdding(sheetNamed('amidoamine-conditioner'), 'lactic-acid')).toBe('water-phase')
    expect(stepAdding(sheetNamed('rinse-off-conditioner'), 'lactic-acid')).toBe('ph')
  })
})

const BASE = { 'cetearyl-olivate-and-sorbitan-olivate': 5, 'caprylic-capric-triglyceride': 12 }

/** The cream with one more line, its phase as the recipe writes it. */
const written = (ingredient: string, share_percent: number, phase: 'water' | 'oil' | 'cool-down') => {
  const formula = makeFormula(BASE)
  return sheetOf({ ...formula, lines: [...formula.lines, { ingredient, share_percent, phase }] })
}

describe('what the recipe writes and what the work does', () => {
  test('where both agree, nothing is said', () => {
    const sheet = sheetNamed('light-face-cream')
    expect(sheet.remarks.filter(({ kind }) => kind === 'moved')).toEqual([])
  })
  test('a preservative written into the hot water phase goes in after the heat, and that is said', () => {
    const sheet = written('phenoxyethanol', 0.9, 'water')
    expect(stepAdding(sheet, 'phenoxyethanol')).toBe('cool-down')
    expect(saysOf(sheet, 'moved')[0]).toMatch(
      /Phenoxyethanol stands in the water phase of the recipe and goes in after/,
    )
  })
  test('a sensitive line written into the hot phase goes in after it, with its limit as reason', () => {
    const sheet = written('panthenol', 2, 'water')
    expect(stepAdding(sheet, 'panthenol')).toBe('cool-down')
    expect(sheet.lines.find(({ line }) => line === 'panthenol')!.reasons[0]).toEqual({
      fact: 'bears up to 45 °C',
      claim: 'panthenol#heat_max_c/0',
    })
    expect(saysOf(sheet, 'moved')).toHaveLength(1)
  })
  test('wax written into the cool-down phase is melted all the same, and that is said', () => {
    const sheet = written('cera-alba', 2, 'cool-down')
    expect(stepAdding(sheet, 'cera-alba')).toBe('oil-phase')
    expect(saysOf(sheet, 'moved')[0]).toMatch(/is melted here: cold it stays as grains/)
  })
  test('a recipe that stops below the melting point of its wax is told so, and the wax wins', () => {
    const sheet = sheetFor(BASE, { hottest_c: 50 })
    expect(stepOf(sheet, 'oil-phase').temp_c!.min).toBe(70)
    expect(saysOf(sheet, 'heat-differs')[0]).toMatch(/stops at 50 °C; its lines need at least 70 °C/)
  })
  test('an extract of which nothing is on record goes in after the heat and is named as unknown', () => {
    const sheet = sheetFor({
      'cetearyl-olivate-and-sorbitan-olivate': 5,
      'caprylic-capric-triglyceride': 12,
      'artemisia-montana-leaf-extract': 3,
    })
    expect(stepAdding(sheet, 'artemisia-montana-leaf-extract')).toBe('cool-down')
    const unknown = sheet.remarks.filter(({ severity }) => severity === 'unknown')
    const about = unknown
      .filter(({ lines }) => lines.includes('artemisia-montana-leaf-extract'))
      .map(({ kind }) => kind)
    expect(about.sort()).toEqual(['unknown-phase', 'unknown-strength'])
  })
})

describe('a gum without a liquid that wets it', () => {
  const cream = { 'xanthan-gum': 0.5, 'caprylic-capric-triglyceride': 12, 'glyceryl-stearate-and-peg-100-stearate': 5 }
  test('goes through the oil in an oil-in-water cream', () => {
    const sheet = sheetFor(cream)
    expect(stepAdding(sheet, 'xanthan-gum')).toBe('gum-into-oil')
    expect(stepOf(sheet, 'combine').uses.sort()).toEqual(['gum-into-oil', 'heat-water'])
  })
  test('is strewn into moving water where there is no oil', () =>
    expect(stepAdding(sheetFor({ 'xanthan-gum': 0.5, phenoxyethanol: 0.9 }, { hottest_c: 25 }), 'xanthan-gum')).toBe(
      'strew-gum',
    ))
  test('a drop of glycerin does not count as one', () =>
    expect(stepAdding(sheetFor({ ...cream, glycerin: 0.6 }), 'xanthan-gum')).toBe('gum-into-oil'))
})

describe('water kept back', () => {
  const sheet = sheetNamed('urea-foot-cream')
  test('dissolves much urea that goes in late, and both parts add up', () => {
    const water = sheet.lines.find(({ line }) => line === 'aqua')!
    expect(water.portions.map(({ step }) => step)).toEqual(['water-phase', 'cool-down'])
    expect(water.portions.reduce((sum, { weigh_g }) => sum + weigh_g, 0)).toBeCloseTo(water.weigh_g, 9)
    expect(stepOf(sheet, 'cool-down').text).toMatch(/^First dissolve Urea in the water kept back/)
  })
  test('is not heated, so the beaker is topped up without it', () =>
    expect(stepOf(sheet, 'top-up').holds_g).toBe(146.4))
  test('is enough for the urea: 52 g dissolve in 100 g of solution', () => {
    const kept = sheet.lines.find(({ line }) => line === 'aqua')!.portions[1]!.weigh_g
    expect(20 / (20 + kept)).toBeLessThan(0.52)
  })
})

describe('soap as the emulsifier', () => {
  const sheet = sheetFor(
    { 'stearic-acid': 6, triethanolamine: 1, 'cetyl-alcohol': 2, 'paraffinum-liquidum': 10, phenoxyethanol: 0.9 },
    { form: 'oil-in-water', ph: 7.5 },
  )
  test('needs its alkali in the hot water, not at the end', () =>
    expect(stepAdding(sheet, 'triethanolamine')).toBe('water-phase'))
  test('is not undone by acid at the end', () => expect(stepOf(sheet, 'ph').text).toMatch(/acid would undo it/))
})
