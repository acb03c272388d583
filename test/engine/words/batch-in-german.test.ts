import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { blendName, titleCase } from '#engine/label/label-names.ts'
import { batchSheet, buildLabel, inLanguage } from '#engine/index.ts'
import type { World } from '#engine/index.ts'
import type { Formula } from '#engine/model/formula.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { makeFormula, realWorld } from '../../helpers.ts'
import { pseudoWorld } from './pseudo.ts'
import { templatesIn } from './templates.ts'
import { leftover, namesIn } from './unmarked.ts'

const world = realWorld()
const german = inLanguage(world, 'de')
const pseudo = pseudoWorld(world)

/** Recipes for what the others do not have: gums wetted hot, lye, scents, blends, colours, words of the law. */
const own: readonly (readonly [string, Formula])[] = [
  ['methylcellulose gel', makeFormula({ methylcellulose: 2, glycerin: 3, phenoxyethanol: 0.9 }, { hottest_c: null })],
  ['hypromellose gel', makeFormula({ 'hydroxypropyl-methylcellulose': 2, 'sodium-benzoate': 0.5, 'citric-acid': 0.3 })],
  ['wash thickened by salt', makeFormula({ 'sodium-laureth-sulfate': 30, 'sodium-chloride': 2, parfum: 0.5 })],
  [
    'alkaline callus gel',
    makeFormula({ 'potassium-hydroxide': 1, 'xanthan-gum': 1 }, { ph: 12, product: 'rinse-off' }),
  ],
  ['retinol cream', makeFormula({ retinol: 0.2, 'caprylic-capric-triglyceride': 10, 'cetearyl-alcohol': 4 })],
  ['lavender spray', makeFormula({ 'lavandula-angustifolia-oil': 1, 'alcohol-denat': 60, 'titanium-dioxide': 1 })],
]

const recipes: readonly (readonly [string, Formula])[] = [
  ...FORMULAS.map(({ name, formula }) => [name, formula] as const),
  ...world.knowledge.practice.map(({ id, formula }) => [`practice: ${id}`, formula] as const),
  ...own,
]

/** Where sentences stand in a sheet and in a label; all else is the same in every language. */
const SPOKEN: ReadonlySet<string> = new Set([
  ...['steps.title', 'steps.text', 'steps.why', 'steps.cautions', 'phases.title', 'looks.look', 'lines.cautions'],
  ...['because.fact', 'reasons.fact', 'remarks.message', 'remarks.remedy', 'findings.message', 'findings.remedy'],
  ...['positions.why', 'allergens.why', 'label.warnings', 'questions.text', 'questions.why', 'rules.text'],
  ...['notCovered.list', 'notCovered.why'],
])

type Heard = (text: string, path: string) => void

/** An answer without its sentences, which are handed to `heard`; a path names the last list and the key in it. */
function bones(answer: unknown, heard: Heard, path = 'label'): unknown {
  if (typeof answer === 'string' && SPOKEN.has(path)) return void heard(answer, path)
  if (Array.isArray(answer)) return answer.map((one) => bones(one, heard, path))
  if (typeof answer !== 'object' || answer === null) return answer
  const under = path.split('.').at(-1) ?? ''
  return Object.fromEntries(Object.entries(answer).map(([key, value]) => [key, bones(value, heard, `${under}.${key}`)]))
}

const quiet = (): void => undefined

/** A sheet with all told, one of few grams on a coarse scale, and the label of both markets. */
const answersIn = (where: World, formula: Formula) => ({
  sheet: batchSheet(where, { formula, batch_g: 250, date: '2026-02-27', batchCode: '27-3' }),
  open: batchSheet(where, { formula: { ...formula, ph: null }, batch_g: 33.33, step_g: 0.5, overage_percent: 3 }),
  label: buildLabel(where, formula),
  other: { label: buildLabel(where, { ...formula, market: formula.market === 'eu' ? 'us' : 'eu' }, '2026-01-01') },
})

const told = (where: World, formula: Formula): Map<string, string> => {
  const texts = new Map<string, string>()
  bones(answersIn(where, formula), (text, path) => void texts.set(text, path))
  return texts
}

describe.each(['batch', 'label'])('sentences of %s', (folder) => {
  const templates = templatesIn(fileURLToPath(new URL(`../../../server/engine/${folder}`, import.meta.url)))
  const known = world.knowledge.languages.get('de')

  test('are found and all have German', () => {
    expect(templates.length).toBeGreaterThan(40)
    expect(templates.filter(({ text }) => known?.has(text) !== true)).toEqual([])
  })
})

describe('sheet and label in German', () => {
  test.each(recipes)('weigh, order and place as in English: %s', (_, formula) => {
    expect(bones(answersIn(german, formula), quiet)).toEqual(bones(answersIn(world, formula), quiet))
  })

  test('say each thing in other words', () => {
    const same = new Map<string, string>()
    let count = 0
    for (const [, formula] of recipes) {
      const english = told(world, formula)
      for (const [text, path] of told(german, formula)) {
        count += 1
        if (english.has(text) && path !== 'label.warnings') same.set(text, path)
      }
    }
    expect(count).toBeGreaterThan(5000)
    expect([...same]).toEqual([])
  })

  test('leave no sentence unmarked', () => {
    const left = new Map<string, string>()
    for (const [, formula] of recipes) {
      const names = namesIn(formula, pseudo)
      for (const [text, path] of told(pseudo, formula)) {
        if (path !== 'label.warnings')
          left.set(text, leftover(text, [...names, ...names.map(titleCase), ...names.map(blendName)]))
      }
    }
    expect(left.size).toBeGreaterThan(1000)
    expect([...left].filter(([, rest]) => rest !== '')).toEqual([])
  })
})
