import { describe, expect, test } from 'vitest'
import { makeFormula } from '../../helpers.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { isBefore, saysOf, sheetFor, sheetNamed, sheetOf, stepAdding, stepOf } from './sheet.ts'

const COMMON = ['clean', 'weigh', 'fill', 'mark', 'sample', 'watch', 'discard']
const sheetFormula = makeFormula({}, { hottest_c: 25 })
const work = (order: readonly string[]): string[] => order.filter((id) => !COMMON.includes(id))

describe('a gel without heat', () => {
  const sheet = sheetNamed('carbomer-gel')
  test('is strewn, dissolved, preserved, neutralised and measured, in this order', () =>
    expect(work(sheet.order)).toEqual(['strew-polymer', 'water-phase', 'cool-down', 'neutralise', 'ph']))
  test('is nowhere heated and has no phases to combine', () => {
    for (const step of sheet.steps) if (step.id !== 'watch') expect(step.temp_c).toBeUndefined()
    for (const id of ['combine', 'heat-water', 'oil-phase']) expect(sheet.order).not.toContain(id)
  })
  test('its title does not speak of heat where there is none', () =>
    expect(stepOf(sheet, 'cool-down').title).toBe('Add the preservative and the last lines'))
  test('with much alcohol takes it in before the base, which is flammable and said so', () => {
    const gel = sheetNamed('hand-gel-with-alcohol')
    expect(work(gel.order)).toEqual(['strew-polymer', 'water-phase', 'add-alcohol', 'neutralise', 'ph'])
    expect(stepOf(gel, 'add-alcohol').cautions.join()).toMatch(/catches fire/)
    expect(stepOf(gel, 'fill').cautions.join()).toMatch(/no flame/)
  })
})

describe('a jelly that dissolves hot', () => {
  const sheet = sheetFor(
    { 'gellan-gum': 0.5, glycerin: 5, 'calcium-chloride': 0.5, panthenol: 1, phenoxyethanol: 0.9 },
    { hottest_c: 85 },
  )
  test('is wetted, heated to what the gum needs, set by ions, cooled, and then takes what bears no heat', () =>
    expect(work(sheet.order)).toEqual(['wet-gum', 'dissolve-hot', 'add-ions', 'cool', 'top-up', 'cool-down', 'ph']))
  test('is heated by its claim', () => expect(stepOf(sheet, 'dissolve-hot').temp_c).toMatchObject({ min: 75, max: 85 }))
  test('takes its late lines while it still pours, under their limit', () => {
    expect(stepOf(sheet, 'cool').text).toMatch(/while it is still liquid/)
    expect(stepOf(sheet, 'cool-down').temp_c!.max).toBe(45)
  })
})

describe('a cellulose ether that is wetted hot', () => {
  const sheet = sheetFor({ 'hydroxypropyl-methylcellulose': 1.5, urea: 5, glycerin: 3 }, { hottest_c: 85 })
  test('gets a part of the water hot and the rest cold', () => {
    const [hot, cold] = sheet.lines.find(({ line }) => line === 'aqua')!.portions
    expect([hot!.step, cold!.step]).toEqual(['wet-hot', 'water-phase'])
    expect(hot!.weigh_g).toBeLessThan(cold!.weigh_g)
    expect(stepOf(sheet, 'wet-hot').temp_c!.min).toBe(80)
  })
  test('methylcellulose is wetted hot too: its record says so without a figure', () =>
    expect(sheetFor({ methylcellulose: 1.5, glycerin: 3 }, { hottest_c: 85 }).order).toContain('wet-hot'))
  test('keeps urea out of the hot water', () => expect(isBefore(sheet, 'cool', stepAdding(sheet, 'urea'))).toBe(true))
})

describe('what a record tells of one step', () => {
  const told = (sheet: ReturnType<typeof sheetFor>, step: string) => stepOf(sheet, step).because.map(({ fact }) => fact)
  test('how a salt of an acid dissolves is told where it is dissolved', () => {
    const sheet = sheetFor({ 'sodium-benzoate': 0.5, glycerin: 3 }, {})
    expect(told(sheet, 'water-phase').join()).toMatch(/dissolve fully before the acid goes in/)
    expect(told(sheet, 'water-phase').join()).not.toMatch(/does nothing at pH 6/)
  })
  test('that too much salt thins is told where the wash is thickened', () =>
    expect(told(sheetNamed('strong-shampoo'), 'thicken').join()).toMatch(/past the top of the salt curve/))
})

describe('a wash', () => {
  const sheet = sheetNamed('strong-shampoo')
  test('takes surfactants late, gently, and salt last of all', () => {
    expect(work(sheet.order)).toEqual(['wet-gum', 'water-phase', 'surfactants', 'cool-down', 'ph', 'thicken'])
    expect(stepOf(sheet, 'surfactants').text).toMatch(/No blender/)
    expect(stepOf(sheet, 'thicken').adds).toEqual(['sodium-chloride'])
  })
  test('has its preservative salts dissolved before any acid', () => {
    const own = sheetNamed('gentle-shampoo')
    expect(stepAdding(own, 'sodium-benzoate')).toBe('water-phase')
    expect(isBefore(own, 'water-phase', 'ph')).toBe(true)
    expect(stepOf(own, 'water-phase').text).toMatch(/has to be gone before any acid/)
  })
  test('with an emulsion inside takes the surfactants in when it has cooled', () => {
    const own = sheetNamed('emulsified-wash')
    expect(isBefore(own, 'emulsify', 'cool') && isBefore(own, 'cool', 'surfactants')).toBe(true)
    expect(stepOf(own, 'top-up').holds_g).toBe(140.8)
  })
  test('with pearl wax melts it into a surfactant', () => {
    const own = sheetFor(
      { 'sodium-laureth-sulfate': 35, 'cocamidopropyl-betaine': 10, 'glycol-distearate': 1.5, phenoxyethanol: 0.9 },
      { product: 'rinse-off', form: 'wash' },
    )
    expect(stepOf(own, 'surfactants-hot').adds.sort()).toEqual(['glycol-distearate', 'sodium-laureth-sulfate'])
    expect(stepOf(own, 'surfactants').uses).toContain('surfactants-hot')
  })
})

describe('a clear water', () => {
  test('takes oils in through their solubiliser, with no water in the cup', () => {
    const sheet = sheetNamed('room-for-scent-mist')
    expect(stepOf(sheet, 'premix').adds.sort()).toEqual(['lavandula-angustifolia-oil', 'polysorbate-20'])
    expect(stepOf(sheet, 'cool-down').uses).toContain('premix')
  })
  test('is measured as it is', () =>
    expect(stepOf(sheetNamed('hydrosol-toner'), 'ph').text).toMatch(/^Measure it as it is/))
  test('of mostly alcohol and without a stated pH has none measured', () => {
    const mist = sheetFor({ 'alcohol-denat': 75, 'lavandula-angustifolia-oil': 1 }, { ph: null, hottest_c: 25 })
    expect(mist.order).not.toContain('ph')
    expect(saysOf(mist, 'ph-target-unknown')).toEqual([])
    expect(stepOf(mist, 'alcohol-cup').adds.sort()).toEqual(['alcohol-denat', 'lavandula-angustifolia-oil'])
  })
  test('that names no pH is told that the target is not known', () =>
    expect(saysOf(sheetNamed('nothing-is-known'), 'ph-target-unknown')).toHaveLength(1))
  test('has what water hardly dissolves taken up by a diol first', () => {
    const sheet = sheetNamed('vitamin-c-serum')
    expect(stepOf(sheet, 'dissolve-first').adds.sort()).toEqual(['ferulic-acid', 'propanediol'])
    expect(stepOf(sheet, 'wet-gum').adds.sort()).toEqual(['glycerin', 'hydroxyethylcellulose'])
  })
  test('without such a diol says so', () => {
    const sheet = sheetFor({ 'ferulic-acid': 0.5, glycerin: 3 }, { hottest_c: 25 })
    expect(saysOf(sheet, 'unknown-dissolving')[0]).toMatch(/Ferulic acid/)
  })
})

describe('a balm', () => {
  const sheet = sheetNamed('nut-body-butter')
  test('melts the wax, then takes soft fats off the heat, then what bears no heat', () => {
    expect(work(sheet.order)).toEqual(['melt', 'butters', 'cool-down', 'set'])
    expect(stepOf(sheet, 'melt').adds).toContain('cera-alba')
    expect(stepOf(sheet, 'butters').adds.sort()).toEqual(['butyrospermum-parkii-butter', 'cocos-nucifera-oil'])
  })
  test('has no water, no pH, no emulsifying', () => {
    for (const id of ['ph', 'combine', 'emulsify', 'water-phase']) expect(sheet.order).not.toContain(id)
    expect(stepOf(sheet, 'clean').text).toMatch(/has to be dry/)
  })
  test('wax that has no oil beside it takes soft fat along, or it sets at once', () =>
    expect(stepOf(sheetNamed('deodorant-stick'), 'melt').adds.sort()).toEqual(['cera-alba', 'cocos-nucifera-oil']))
  test('takes bicarbonate in below its limit', () =>
    expect(stepOf(sheetNamed('deodorant-stick'), 'add-powder').temp_c!.max).toBe(50))
  test('grinds pigment into an oil first', () => {
    const own = sheetNamed('lipstick')
    expect(stepOf(own, 'wet-pigment').adds.sort()).toEqual(['ci-77491', 'octyldodecanol', 'titanium-dioxide'])
    expect(stepOf(own, 'wet-pigment').cautions.join()).toMatch(/do not breathe the dust/)
  })
  test('that sets before it is cool enough for retinol is told so', () => {
    const stick = sheetFor({ squalane: 70, 'cera-alba': 29.7, retinol: 0.3 }, { fill: null, ph: null })
    expect(saysOf(stick, 'too-hot-to-pour')[0]).toMatch(/29.7 % wax .* Retinol/)
  })
  test('of liquid oils only is mixed cold', () => {
    const serum = sheetFor(
      { squalane: 70, 'simmondsia-chinensis-seed-oil': 29.7, retinol: 0.3 },
      { fill: null, ph: null },
    )
    expect(work(serum.order)).toEqual(['melt', 'cool-down'])
    expect(stepOf(serum, 'melt').title).toBe('Mix the oils')
    expect(stepOf(serum, 'melt').temp_c).toBeUndefined()
  })
})

describe('a powder', () => {
  test('is sieved, with a dust mask, and says that it has to be dry', () => {
    const sheet = sheetNamed('body-powder')
    expect(work(sheet.order)).toEqual(['sieve', 'shape'])
    expect(stepOf(sheet, 'sieve').cautions.join()).toMatch(/mask/)
  })
  test('that fizzes is kept from water, pressed and dried', () => {
    const sheet = sheetNamed('bath-ball')
    expect(work(sheet.order)).toEqual(['sieve', 'bind', 'shape'])
    expect(stepOf(sheet, 'sieve').text).toMatch(/one drop starts the fizz/)
    expect(stepOf(sheet, 'shape').cautions.join()).toMatch(/gas bursts jars/)
  })
})

describe('soap', () => {
  const sheet = sheetNamed('olive-soap')
  test('takes lye into water, then lye into fat, then time', () =>
    expect(work(sheet.order)).toEqual(['lye', 'melt', 'combine', 'trace', 'mould', 'cure', 'ph']))
  test('never has water on lye, and goggles from the first step on', () => {
    expect(stepOf(sheet, 'lye').text).toMatch(/Lye into water, never water onto lye/)
    expect(stepOf(sheet, 'clean').title).toMatch(/goggles and gloves/)
    for (const id of ['lye', 'combine', 'trace']) expect(stepOf(sheet, id).cautions.join()).toMatch(/[Gg]oggles/)
  })
  test('all water goes to the lye', () =>
    expect(sheet.lines.find(({ line }) => line === 'aqua')!.portions).toEqual([{ step: 'lye', weigh_g: 40.6 }]))
  test('a cream with a little alkali is no soap', () => expect(sheetNamed('cold-cream-gel').process).toBe('emulsion'))
})

describe('a bar of dry surfactants', () => {
  const sheet = sheetNamed('synthetic-bar')
  test('is melted and kneaded with a mask, pressed and dried', () => {
    expect(work(sheet.order)).toEqual(['melt', 'work-in', 'press'])
    expect(stepOf(sheet, 'work-in').cautions.join()).toMatch(/dust mask/)
  })
})

describe('what is worked in where it is not at home', () => {
  const cream = { 'cetearyl-olivate-and-sorbitan-olivate': 5, 'caprylic-capric-triglyceride': 12, phenoxyethanol: 0.9 }
  test('a little surfactant in a cream goes in after the shear, or the cream foams', () => {
    const sheet = sheetFor({ ...cream, 'cocamidopropyl-betaine': 3 })
    expect(isBefore(sheet, 'emulsify', stepAdding(sheet, 'cocamidopropyl-betaine'))).toBe(true)
  })
  test('a dry surfactant in a cream wash is melted into a liquid one, without one into hot water', () => {
    const both = { 'cocamidopropyl-betaine': 10, 'sodium-cocoyl-isethionate': 5 }
    expect(stepAdding(sheetFor({ ...cream, ...both }), 'sodium-cocoyl-isethionate')).toBe('surfactants-hot')
    const alone = sheetFor({ ...cream, 'sodium-cocoyl-isethionate': 5 })
    expect(stepAdding(alone, 'sodium-cocoyl-isethionate')).toBe('dissolve-hot')
  })
  test('a solid emulsifier in a gel is dissolved with heat', () =>
    expect(
      stepAdding(sheetFor({ 'xanthan-gum': 0.5, glycerin: 5, 'arachidyl-glucoside': 2 }), 'arachidyl-glucoside'),
    ).toBe('dissolve-hot'))
  test('seeds do not dissolve: they are stirred in', () =>
    expect(stepAdding(sheetFor({ 'xanthan-gum': 0.5, 'papaver-somniferum-seed': 2 }), 'papaver-somniferum-seed')).toBe(
      'add-powder',
    ))
  test('a strong acid solution is handled with gloves and goggles, a weak one without alarm', () => {
    const acid = (strength_percent: number) => {
      const formula = {
        ...sheetFormula,
        lines: [
          { ingredient: 'aqua', fills: true as const },
          { ingredient: 'glycolic-acid', share_percent: 6, strength_percent },
        ],
      }
      return stepOf(sheetOf(formula), 'weigh').cautions.join()
    }
    expect(acid(70)).toMatch(/Glycolic acid: burns eyes and skin undiluted/)
    expect(acid(10)).toBe('')
  })
})

describe('every sheet', () => {
  const sheets = FORMULAS.map(({ name, formula }) => ({ name, sheet: sheetOf(formula) }))
  test.each(sheets)('$name: promises nothing that nobody can know', ({ sheet }) =>
    expect(JSON.stringify([sheet.steps, sheet.remarks, sheet.looks])).not.toMatch(
      /\bsafe\b|certif|complian|guarantee|undefined|NaN|\bis preserved\b/i,
    ),
  )
  test.each(sheets)('$name: asks for a challenge test where there is water', ({ sheet }) => {
    if (sheet.process === 'emulsion' || sheet.process === 'one-phase')
      expect(stepOf(sheet, 'discard').text).toMatch(/challenge test/)
  })
  test.each(sheets)('$name: warns of lye, dust and fire wherever such a line is handled', ({ sheet }) => {
    const weigh = stepOf(sheet, 'weigh').cautions.join()
    const has = (id: string) => sheet.lines.some(({ ingredient }) => ingredient === id)
    if (has('sodium-hydroxide')) expect(weigh).toMatch(/Sodium hydroxide.*Gloves and goggles/)
    if (has('carbomer') || has('kaolin')) expect(weigh).toMatch(/do not breathe the dust/)
    if (has('alcohol')) expect(weigh).toMatch(/catches fire/)
  })
  test.each(sheets)('$name: no surfactant meets a blender', ({ sheet }) => {
    for (const { adds, text } of sheet.steps)
      if (/with the stick blender/.test(text))
        expect(adds.filter((id) => /glucoside|betaine|laureth-sulfate|sarcosinate|isethionate/.test(id))).toEqual([])
    if (sheet.order.includes('surfactants') && sheet.order.includes('emulsify'))
      expect(isBefore(sheet, 'emulsify', 'surfactants')).toBe(true)
  })
  test('without a preservative in water says that nothing keeps germs down', () => {
    const bare = sheetFor({ glycerin: 3 }, { hottest_c: 25 })
    expect(stepOf(bare, 'discard').text).toMatch(/Nothing in it keeps germs down/)
    expect(stepOf(bare, 'fill').text).toMatch(/refrigerator/)
  })
})
