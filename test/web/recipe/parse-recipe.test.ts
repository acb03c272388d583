import { describe, expect, test } from 'vitest'
import { parseRecipe } from '#web/recipe/parse-recipe.ts'

const one = (text: string) => parseRecipe(text).lines[0]!
const brief = (text: string) =>
  parseRecipe(text).lines.map((line) => [line.name, line.fills ? 'fills' : line.share_percent])

describe('one line', () => {
  test.each([
    ['3 % glycerin', 'glycerin', 3],
    ['3% glycerin', 'glycerin', 3],
    ['Glycerin ... 3.0', 'Glycerin', 3],
    ['Glycerin......3,0 %', 'Glycerin', 3],
    ['Glycerin 3', 'Glycerin', 3],
    ['3 Glycerin', 'Glycerin', 3],
    ['xanthan gum 0,5%', 'xanthan gum', 0.5],
    ['xanthan gum, 0,5 %', 'xanthan gum', 0.5],
    ['Glycerin,3', 'Glycerin', 3],
    ['Glycerin: 3 %', 'Glycerin', 3],
    ['Glycerin - 3%', 'Glycerin', 3],
    ['Glycerin – 3 %', 'Glycerin', 3],
    ['Glycerin = 3', 'Glycerin', 3],
    ['Glycerin (3 %)', 'Glycerin', 3],
    ['Glycerin (3)', 'Glycerin', 3],
    ['(3 %) Glycerin', 'Glycerin', 3],
    ['• Glycerin 3 %', 'Glycerin', 3],
    ['- 3 % Glycerin', 'Glycerin', 3],
    ['* Glycerin\t3', 'Glycerin', 3],
    ['[ ] Glycerin 3', 'Glycerin', 3],
    ['1. Glycerin 3', 'Glycerin', 3],
    ['2) Glycerin 3 %', 'Glycerin', 3],
    ['**Glycerin** 3 %', 'Glycerin', 3],
    ['Glycerin\u00a03\u00a0%', 'Glycerin', 3],
    ['Glycerin 3 % w/w', 'Glycerin', 3],
    ['Glycerin 3 Prozent', 'Glycerin', 3],
    ['0.5 % of xanthan gum', 'xanthan gum', 0.5],
    ['Add 3 % glycerin', 'glycerin', 3],
    ['.5 % xanthan gum', 'xanthan gum', 0.5],
    ['Polysorbate 20 3 %', 'Polysorbate 20', 3],
    ['3 Polysorbate 20', 'Polysorbate 20', 3],
    ['Polysorbate 80 5', 'Polysorbate 80', 5],
    ['PEG-40 hydrogenated castor oil 2', 'PEG-40 hydrogenated castor oil', 2],
    ['Ceteareth-25 - 2%', 'Ceteareth-25', 2],
    ['CI 77891 0.5', 'CI 77891', 0.5],
    ['CI 77891 - 2 %', 'CI 77891', 2],
    ['C12-15 alkyl benzoate 4 %', 'C12-15 alkyl benzoate', 4],
    ['1,2-hexanediol 2 %', '1,2-hexanediol', 2],
    ['2 % 1,2-hexanediol', '1,2-hexanediol', 2],
    ['Polyquaternium-10 0,3', 'Polyquaternium-10', 0.3],
    ['Vitamin E 0.5', 'Vitamin E', 0.5],
    ['Vitamin B5 2 %', 'Vitamin B5', 2],
    ['Caprylic/Capric Triglyceride 5', 'Caprylic/Capric Triglyceride', 5],
    ['Shea butter (Butyrospermum parkii) 5 %', 'Shea butter (Butyrospermum parkii)', 5],
    ['Preservative 1 % (below 40 C)', 'Preservative (below 40 C)', 1],
    ['| Glycerin | 3 % | humectant |', 'Glycerin', 3],
    ['Glycerin;3,0', 'Glycerin', 3],
    ['Glycerin      3.0', 'Glycerin', 3],
    ['A\tGlycerin\t3', 'Glycerin', 3],
    ['Glycerin\t3 %\t30 g', 'Glycerin', 3],
    ['Sodium benzoate 0.50 %.', 'Sodium benzoate', 0.5],
    ['D-Panthenol 2', 'D-Panthenol', 2],
  ])('reads %s', (text, name, share) =>
    expect(one(text)).toMatchObject({ kind: 'ingredient', name, share_percent: share }),
  )

  test.each([
    ['water q.s. to 100', 'water'],
    ['Wasser ad 100', 'Wasser'],
    ['aqua to 100', 'aqua'],
    ['Aqua ad 100 %', 'Aqua'],
    ['Aqua ad 100,0', 'Aqua'],
    ['Water (to 100%)', 'Water'],
    ['Water qs', 'Water'],
    ['q.s. water', 'water'],
    ['Distilled water: balance', 'Distilled water'],
    ['Wasser Rest', 'Wasser'],
    ['Wasser bis 100', 'Wasser'],
    ['Sunflower oil to 100', 'Sunflower oil'],
    ['| Aqua | q.s. to 100 | solvent |', 'Aqua'],
    ['Aqua\tq.s. 100', 'Aqua'],
  ])('takes %s as the line that fills up', (text, name) =>
    expect(one(text)).toMatchObject({ name, fills: true, share_percent: null }),
  )

  test.each([
    ['Glycerin', 'Glycerin', 'no-share'],
    ['Polysorbate 20', 'Polysorbate 20', 'no-share'],
    ['Citric acid q.s.', 'Citric acid', 'as-needed'],
    ['Citric acid q.s. to pH 5.5', 'Citric acid', 'as-needed'],
    ['Glycerin 2-3 %', 'Glycerin', 'range'],
    ['Glycerin 2 to 3 %', 'Glycerin', 'range'],
    ['2 tsp glycerin', 'glycerin', 'kitchen-unit'],
    ['Lavender oil 10 drops', 'Lavender oil', 'kitchen-unit'],
    ['Glycerin 0 %', 'Glycerin', 'zero'],
  ])('asks for the share of %s', (text, name, trouble) =>
    expect(one(text)).toMatchObject({ name, trouble, share_percent: null }),
  )

  test.each([
    ['Lactic acid 80 % 0.5 %', 'Lactic acid', 0.5, 80],
    ['Sodium hydroxide 10% solution 2 %', 'Sodium hydroxide', 2, 10],
    ['10 % sodium hydroxide solution 2 %', 'sodium hydroxide', 2, 10],
    ['3 % lactic acid (80 %)', 'lactic acid', 3, 80],
    ['D-panthenol 75% 2', 'D-panthenol', 2, 75],
  ])('parts share and strength of %s', (text, name, share_percent, strength_percent) =>
    expect(one(text)).toMatchObject({ name, share_percent, strength_percent }),
  )

  test('takes a stated maximum for no strength', () => {
    const line = one('3 % glycerin (max 20 %)')
    expect(line).toMatchObject({ name: 'glycerin', share_percent: 3 })
    expect(line).not.toHaveProperty('strength_percent')
  })
})

describe('whole recipes', () => {
  test('turns grams into per cent of their sum and keeps the batch size', () => {
    const recipe = parseRecipe('30 g shea butter\n15g beeswax\n55 g almond oil\n100 g olive oil')
    expect(recipe).toMatchObject({ basis: 'grams', total: 200, process: { batch_g: 200 } })
    expect(recipe.lines.map((line) => line.share_percent)).toEqual([15, 7.5, 27.5, 50])
  })
  test('reads kilograms, milligrams and thousands', () => {
    expect(brief('1,000 g water\n1 kg oil')).toEqual([
      ['water', 50],
      ['oil', 50],
    ])
    expect(brief('500 mg dye\n9.5 g oil')).toEqual([
      ['dye', 5],
      ['oil', 95],
    ])
  })
  test('takes grams against the stated total', () =>
    expect(brief('Glycerin 5 g\nWater ad 250 g')).toEqual([
      ['Glycerin', 2],
      ['Water', 'fills'],
    ]))
  test('says that grams without a total cannot be turned', () =>
    expect(parseRecipe('Glycerin 5 g\nWater q.s.').lines[0]).toMatchObject({ trouble: 'no-total' }))
  test('marks grams between per cents', () =>
    expect(parseRecipe('Glycerin 5 %\nScent 2 g').lines[1]).toMatchObject({ trouble: 'grams-among-percent' }))
  test('reads plain figures beyond 100 as parts', () =>
    expect(parseRecipe('Oil 150\nWax 50')).toMatchObject({ basis: 'parts', total: 200 }))
  test('lets one line fill up only', () =>
    expect(parseRecipe('Water to 100\nAloe juice to 100').lines[1]).toMatchObject({
      fills: false,
      trouble: 'second-filler',
    }))

  test('takes phases from named headings', () => {
    const text = 'Water phase:\nAqua 70\nOil phase (75 °C):\nOlive oil 20\nCool down:\nPreservative 1'
    expect(parseRecipe(text).lines.map((line) => line.phase)).toEqual(['water', 'oil', 'cool-down'])
    expect(parseRecipe(text).process).toEqual({ hottest_c: 75 })
  })
  test('takes phases from German headings', () =>
    expect(
      parseRecipe('Wasserphase\nWasser 70\nFettphase\nOlivenöl 20\nAbkühlphase\nDuft 1').lines.map((l) => l.phase),
    ).toEqual(['water', 'oil', 'cool-down']))
  test('works out what lettered headings mean from their lines', () => {
    const text = 'Phase A\nOlive oil 20\nPhase B\nWater 70\nPhase C\nPhenoxyethanol 1'
    expect(parseRecipe(text).lines.map((line) => line.phase)).toEqual(['oil', 'water', 'cool-down'])
  })
  test('leaves a letter open that says nothing', () =>
    expect(parseRecipe('Phase A\nNiacinamide 2').lines[0]).toMatchObject({ phase: null }))
  test('reads a heading with an ingredient behind it', () =>
    expect(parseRecipe('Oil phase: olive oil 20 %').lines[0]).toMatchObject({ name: 'olive oil', phase: 'oil' }))

  test('reads a pasted table with a head', () => {
    const text =
      'Phase\tIngredient\tINCI\t%\nA\tDistilled water\tAqua\tto 100\nA\tVegetable glycerine\tGlycerin\t3,0\nB\tOlive\tOlea Europaea Fruit Oil\t12'
    expect(brief(text)).toEqual([
      ['Aqua', 'fills'],
      ['Glycerin', 3],
      ['Olea Europaea Fruit Oil', 12],
    ])
    expect(parseRecipe(text).lines.map((line) => line.phase)).toEqual(['water', 'water', 'oil'])
  })
  test('reads a table of bars with rule lines', () =>
    expect(brief('| Ingredient | % |\n|---|---:|\n| Aqua | 97 |\n| Glycerin | 3 |')).toEqual([
      ['Aqua', 97],
      ['Glycerin', 3],
    ]))
  test('reads a column of grams', () =>
    expect(brief('Ingredient\tg\nOil\t30\nWax\t10')).toEqual([
      ['Oil', 75],
      ['Wax', 25],
    ]))

  test('takes over pH, heat and batch size', () => {
    const text = 'Water to 100\nHeat both phases to 75 C\nCool to 40 C, add the rest\nAdjust pH to 5,5\nMakes 250 g'
    expect(parseRecipe(text).process).toEqual({ ph: 5.5, hottest_c: 75, batch_g: 250 })
    expect(parseRecipe(text).lines).toHaveLength(1)
  })
  test('takes the middle of a pH range and says so', () =>
    expect(parseRecipe('pH 5.0 - 5.5').process).toEqual({ ph: 5.25, phRange: [5, 5.5] }))
  test('turns Fahrenheit into Celsius', () => expect(parseRecipe('Heat to 167 °F').process).toEqual({ hottest_c: 75 }))
  test('does not take vitamin C for a temperature', () =>
    expect(parseRecipe('Vitamin C 15 %')).toMatchObject({
      process: {},
      lines: [{ name: 'Vitamin C', share_percent: 15 }],
    }))
})

describe('a German recipe', () => {
  const TEXT = `Meine Handcreme (Rezept von Oma)
Zutaten für 250 g:
Wasserphase:
• Wasser ad 100
• Glycerin - 3,5 %
Ölphase
– Mandelöl 12,0
– Bienenwachs; 2,0 %
1 Messerspitze Vitamin E
2-3 Tropfen Lavendelöl
pH-Wert 5,2 mit Milchsäure einstellen
auf 75 °C erhitzen`
  const { lines, notes, process } = parseRecipe(TEXT)
  test('has its figures with decimal commas', () =>
    expect(lines.map((line) => line.kind === 'ingredient' && [line.name, line.share_percent])).toEqual([
      ['Wasser', null],
      ['Glycerin', 3.5],
      ['Mandelöl', 12],
      ['Bienenwachs', 2],
      ['Vitamin E', null],
      ['Lavendelöl', null],
    ]))
  test('asks to weigh what was given by spoon and drop', () =>
    expect(lines.slice(-2).map((line) => line.kind === 'ingredient' && line.trouble)).toEqual([
      'kitchen-unit',
      'kitchen-unit',
    ]))
  test('has title, head and steps among the notes', () => expect(notes).toHaveLength(6))
  test('states batch, pH and heat', () => expect(process).toEqual({ batch_g: 250, ph: 5.2, hottest_c: 75 }))
})

describe('nothing is lost', () => {
  const MESSY = [
    '# Hand cream for the winter',
    '',
    'Phase A',
    '- Aqua q.s. to 100',
    '???',
    '12345',
    '// check the scale',
    'Stir until it is smooth and leave it to stand over night.',
    '---',
    'Total 100 %',
    '\tGlycerin\t4',
    '1/2 cup rose water',
    '%',
    '|',
  ]
  test('every typed line comes back as a line or a note', () => {
    const { lines, notes } = parseRecipe(MESSY.join('\n'))
    const back = [...lines.map((line) => line.typed), ...notes]
    for (const typed of MESSY.map((line) => line.trim()).filter((line) => line !== '')) expect(back).toContain(typed)
  })
  test('keeps what has no name as an unread line', () =>
    expect(parseRecipe('???\n12345').lines.map((line) => line.kind)).toEqual(['unread', 'unread']))
  test('reads Windows and old Mac line ends', () => expect(brief('Oil 50\r\nWax 30\rButter 20')).toHaveLength(3))
  test('an empty text is an empty recipe', () =>
    expect(parseRecipe(' \n\t\n')).toEqual({ lines: [], notes: [], process: {}, basis: 'percent', total: null }))
})
