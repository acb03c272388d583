import { describe, expect, test } from 'vitest'
import { checkFormula, findSwaps } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import type { Swap, SwapsReply } from '#engine/model/swap.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { findingsOf, makeFormula, realWorld } from '../helpers.ts'

/** What a small maker knows without a printed source: common practice, here as facts that have to hold. */
const world = realWorld()
const MANY = 60
const ask = (formula: Formula, missing: string, limit = MANY): SwapsReply =>
  findSwaps(world, { formula, missing: [missing], limit })
const offer = (reply: SwapsReply, id: string): Swap | undefined =>
  reply.swaps.find(({ lines }) => lines.length === 1 && lines[0]!.ingredient === id)
const formulaNamed = (name: string): Formula => FORMULAS.find((one) => one.name === name)!.formula
const PRESERVED = { 'sodium-benzoate': 0.5, 'potassium-sorbate': 0.3, 'citric-acid': 0.8 }

describe('light carrier oils in an emulsified wash', () => {
  const OILS = [
    'prunus-amygdalus-dulcis-oil',
    'helianthus-annuus-seed-oil',
    'vitis-vinifera-seed-oil',
    'olea-europaea-fruit-oil',
  ]
  const NUT = 'prunus-amygdalus-dulcis-oil'
  const washWith = (oil: string): Formula => {
    const formula = formulaNamed('emulsified-wash')
    return {
      ...formula,
      lines: formula.lines.map((line) => (line.ingredient === NUT ? { ...line, ingredient: oil } : line)),
    }
  }
  const pairs = OILS.flatMap((missing) =>
    OILS.filter((other) => other !== missing).map((stand) => ({ missing, stand })),
  )

  test.each(pairs)('$stand stands in for $missing at 1:1', ({ missing, stand }) => {
    const swap = offer(ask(washWith(missing), missing), stand)
    expect(swap?.lines[0]?.share_percent).toBe(8)
  })

  test.each(OILS.filter((oil) => oil !== NUT))('the nut oil in place of %s is marked as such', (missing) => {
    const swap = offer(ask(washWith(missing), missing), NUT)
    expect(
      swap?.changes
        .filter(({ kind }) => kind === 'label')
        .map(({ text }) => text)
        .join(' '),
    ).toMatch(/tree nut/)
  })

  test('a mineral, a wax and a volatile oil are no carrier oils of the first choice', () => {
    const first = ask(washWith(NUT), NUT, 4).swaps.map(({ lines }) => lines[0]!.ingredient)
    for (const odd of ['cera-alba', 'lavandula-angustifolia-oil', 'cyclopentasiloxane'])
      expect(first).not.toContain(odd)
  })
})

describe('hydrosol and water', () => {
  const toner = (water: string): Formula =>
    makeFormula({ [water]: 89.9, glycerin: 5, propanediol: 3.5, ...PRESERVED }, { fill: null, ph: 4.6, hottest_c: 25 })
  const HYDROSOL = 'rosa-damascena-flower-water'

  test('the hydrosol stands in for water and brings its own load to preserve', () => {
    const swap = offer(ask(toner('aqua'), 'aqua'), HYDROSOL)
    expect(swap?.findings.map(({ rule }) => rule)).toContain('brings-germs')
  })

  test('water stands in for the hydrosol', () => {
    const swap = offer(ask(toner(HYDROSOL), HYDROSOL), 'aqua')
    expect(swap?.lines[0]?.share_percent).toBeCloseTo(89.9, 1)
    expect(swap?.findings.map(({ rule }) => rule)).not.toContain('brings-germs')
  })
})

describe('glucosides in a wash', () => {
  const wash = makeFormula(
    {
      'decyl-glucoside': 20,
      'coco-glucoside': 5,
      'cocamidopropyl-betaine': 8,
      glycerin: 3,
      'xanthan-gum': 0.8,
      ...PRESERVED,
    },
    { product: 'rinse-off', ph: 4.9, hottest_c: 25 },
  )
  const only = (glucoside: string): Formula => ({
    ...wash,
    lines: wash.lines
      .filter(({ ingredient }) => ingredient !== 'decyl-glucoside' && ingredient !== 'coco-glucoside')
      .concat({ ingredient: glucoside, share_percent: 20 }),
  })

  test.each([
    ['decyl-glucoside', 'coco-glucoside'],
    ['coco-glucoside', 'decyl-glucoside'],
  ])('%s is replaced by %s on active matter', (missing, stand) => {
    const active = (id: string): number => {
      const claim = world
        .find(id)!
        .facts.get('active_percent')!
        .find(({ used }) => used)!
      return claim.value ?? ((claim.min ?? 0) + (claim.max ?? 0)) / 2
    }
    const swap = offer(ask(only(missing), missing), stand)
    expect(swap?.lines[0]?.share_percent).toBeCloseTo((20 * active(missing)) / active(stand), 2)
  })

  test('beside a glucoside the betaine may be left out', () => {
    const { leaveOut } = ask(only('decyl-glucoside'), 'cocamidopropyl-betaine')
    expect(['fine', 'workable']).toContain(leaveOut.verdict)
  })

  test('the main surfactant of a wash may not be left out', () =>
    expect(ask(only('decyl-glucoside'), 'decyl-glucoside').leaveOut.verdict).not.toBe('fine'))
})

describe('an ester pair that is emulsifier and structure of a wash in one', () => {
  const PAIR = 'cetearyl-olivate-and-sorbitan-olivate'
  const reply = ask(formulaNamed('emulsified-wash'), PAIR)

  test('is not replaced', () => expect([reply.outcome, reply.swaps]).toEqual(['no-safe-swap', []]))
  test('is not left out', () => expect(reply.leaveOut.verdict).toBe('no'))
  test('the reply says what would have to be designed anew', () => expect(reply.why).toMatch(/emulsifier/))

  test('is replaced in a cream that has a thickener beside it', () =>
    expect(ask(formulaNamed('light-face-cream'), PAIR).outcome).toBe('swaps'))
})

describe('a preservative blend', () => {
  const BLEND = 'benzyl-alcohol-and-dehydroacetic-acid'
  const cream = makeFormula(
    {
      'cetearyl-olivate-and-sorbitan-olivate': 5,
      'caprylic-capric-triglyceride': 12,
      glycerin: 4,
      'xanthan-gum': 0.3,
      [BLEND]: 1,
    },
    { ph: 5, hottest_c: 75, areas: ['body'] },
  )
  const { swaps } = ask(cream, BLEND)

  test('has stand-ins', () => expect(swaps.length).toBeGreaterThan(0))

  test('is replaced at the dose of the stand-in, whatever its own was', () => {
    for (const { lines } of swaps) {
      const [line] = lines
      const claim = world.find(line!.ingredient)!.roles.find(({ role }) => role.startsWith('preservative'))
      const { min = 0, max = 100 } = claim?.level_percent ?? {}
      expect([line!.ingredient, line!.share_percent >= min * 0.99 && line!.share_percent <= max * 1.01]).toEqual([
        line!.ingredient,
        true,
      ])
    }
  })

  test('is replaced only where the stand-in is at work at the pH of the new formula', () => {
    for (const swap of swaps) expect(swap.findings.map(({ rule }) => rule)).not.toContain('preservative-window')
  })

  test('an acid preservative is not offered at pH 7 unless the pH moves', () => {
    const neutral = {
      ...cream,
      ph: 7,
      lines: cream.lines.map((line) =>
        line.ingredient === BLEND ? { ingredient: 'phenoxyethanol', share_percent: 0.9 } : line,
      ),
    }
    const offered = findSwaps(world, {
      formula: neutral,
      missing: ['phenoxyethanol'],
      wishes: { keepPh: true },
      limit: MANY,
    })
    for (const acid of ['sodium-benzoate', 'potassium-sorbate', 'sorbic-acid', BLEND])
      expect(offer(offered, acid)).toBeUndefined()
  })
})

describe('the order of work', () => {
  test('a gum is wetted before it meets water', () => {
    const gel = makeFormula(
      { hydroxyethylcellulose: 0.8, glycerin: 4, phenoxyethanol: 0.9, ethylhexylglycerin: 0.1 },
      { ph: 5.5, hottest_c: 25 },
    )
    const swap = offer(ask(gel, 'hydroxyethylcellulose'), 'xanthan-gum')
    expect(
      swap?.changes
        .filter(({ kind }) => kind === 'order')
        .map(({ text }) => text)
        .join(' '),
    ).toMatch(/glycerin|wet/i)
  })

  test('what does not bear the heat goes into the cool-down phase', () => {
    const cream = makeFormula(
      {
        'cetearyl-olivate-and-sorbitan-olivate': 5,
        'caprylic-capric-triglyceride': 12,
        methylparaben: 0.2,
        propylparaben: 0.1,
        glycerin: 4,
      },
      { ph: 5.5, hottest_c: 80 },
    )
    const late = ask(cream, 'methylparaben').swaps.filter(({ lines }) => lines[0]!.ingredient === 'phenoxyethanol')
    for (const swap of late) expect(swap.lines[0]!.phase).toBe('cool-down')
  })
})

test('a usual mild shampoo has nothing against it', () => {
  expect(checkFormula(world, formulaNamed('gentle-shampoo')).verdict).toBe('clear')
  expect(findingsOf('charge-clash', formulaNamed('strong-shampoo'))).toEqual([])
})
