import { describe, expect, test } from 'vitest'
import { checkFormula } from '#engine/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import { realWorld } from '../../helpers.ts'
import { formulaOfCase, windowCases } from './window-case.ts'
import type { WindowCase } from './window-case.ts'

const world = realWorld()

/** Rules that answer a question of this type. */
const RULES: Record<WindowCase['question_type'], readonly string[]> = {
  'ph-window': ['preservative-window'],
  incompatible: [
    ...['charge-clash', 'binding-clash', 'reaction-clash', 'ion-clash'],
    ...['inactivated', 'preservative-ion-and-cationic'],
  ],
  'cool-down': ['heat-too-hot'],
  survives: ['ph-keeps', 'paraben-hydrolysis', 'heat-too-hot'],
  sufficient: ['water-without-preservative', 'spectrum-open', 'unproven-preservative'],
  formaldehyde: ['law-condition'],
  role: ['water-without-preservative', 'ph-works'],
}

/** What the program says about the question; findings on other matters are left out. */
function answersTo(one: WindowCase): Finding[] {
  const formula = formulaOfCase(one)
  const agents = new Set(formula.lines.slice(1, 1 + one.agents.length).map((line) => world.find(line.ingredient)?.id))
  return checkFormula(world, formula).findings.filter(
    ({ rule, about }) =>
      RULES[one.question_type].includes(rule) && (about.length === 0 || about.some((id) => agents.has(id))),
  )
}

describe.each(windowCases())('$id: $question_type, $product_type at pH $ph', (one) => {
  test(one.finding_expected ? `is answered: ${one.expected}` : `raises no false alarm: ${one.expected}`, () => {
    const answers = answersTo(one)
    if (one.finding_expected) expect(answers).not.toEqual([])
    else expect(answers).toEqual([])
  })
})

test('what a note would do is not called a stop, and a fault that matters is more than a note', () => {
  const milder = windowCases()
    .filter(({ severity }) => severity === 'warn' || severity === 'stop')
    .filter((one) => answersTo(one).every(({ severity }) => severity === 'note'))
  // Known to be milder than the practitioner's word: how much is taken is not known in numbers.
  expect(milder.map(({ id }) => id)).toEqual(['pw-d-18', 'pw-d-30', 'pw-d-31'])
})
