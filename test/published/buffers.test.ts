import { describe, expect, test } from 'vitest'
import { calculate } from '#engine/index.ts'
import { realWorld } from '../helpers.ts'
import { buffers } from '../reference/ph/cases.ts'
import type { Buffer } from '../reference/ph/cases.ts'

// test/reference/ph/buffers.csv: published recipes with their pH (source_id and locator in each row, list in
// test/reference/ph/sources.csv). Standing "use": printed to 0.1 or 0.01, fit to test against.

const phOf = ({ mixture }: Buffer): number =>
  calculate(realWorld(), 'buffer-ph', { ...mixture, systems: [...mixture.systems], ions: [...mixture.ions] }).values[
    'ph'
  ] ?? NaN

const errorOf = (buffer: Buffer): number => phOf(buffer) - buffer.expected_ph
/** Errors to two decimals: most tables print one, the standards two or three. */
const said = (error: number): number => Math.round(Math.abs(error) * 100) / 100

const all = buffers()
const used = all.filter(({ standing }) => standing === 'use')
const isStandard = ({ family }: Buffer): boolean => /^NBS/.test(family)
const isLimeWater = ({ family }: Buffer): boolean => /calcium hydroxide/.test(family)

describe('published buffers', () => {
  test.each(used)('$id $family: $recipe ($mixture.temp_c °C) has pH $expected_ph ($source)', (buffer) => {
    expect(said(errorOf(buffer))).toBeLessThanOrEqual(0.1)
  })
  test('are met within 0.03 on average', () => {
    expect(used.length).toBe(89)
    expect(used.reduce((sum, buffer) => sum + Math.abs(errorOf(buffer)), 0) / used.length).toBeLessThan(0.03)
  })
})

describe('primary standards from 0 to 60 °C', () => {
  const standards = used.filter(isStandard)
  test.each(standards.filter((one) => !isLimeWater(one)))('$family, $mixture.temp_c °C, pH $expected_ph', (buffer) => {
    expect(Math.abs(errorOf(buffer))).toBeLessThanOrEqual(0.05)
  })
  // Calcium pairs with hydroxide (CaOH+, log K about 1.3), which the model leaves out: it reads 0.05 to 0.08 high.
  test.fails.each(standards.filter(isLimeWater))('lime water at $mixture.temp_c °C', (buffer) => {
    expect(Math.abs(errorOf(buffer))).toBeLessThanOrEqual(0.05)
  })
  test('are met within 0.02 on average', () => {
    const rest = standards.filter((one) => !isLimeWater(one))
    expect(rest.length).toBeGreaterThan(30)
    expect(rest.reduce((sum, buffer) => sum + Math.abs(errorOf(buffer)), 0) / rest.length).toBeLessThan(0.02)
  })
})

describe('contested tables', () => {
  // A re-typed citrate table lies 0.15 to 0.4 above any calculation with activities that fits the standard for citrate;
  // one pharmacopoeia recipe prints 11.94 mL where its pattern gives 29.85. Kept, not bent.
  test.fails.each(all.filter(({ standing }) => standing === 'contested'))('$id $family: $recipe', (buffer) => {
    expect(Math.abs(errorOf(buffer))).toBeLessThanOrEqual(0.1)
  })
})

test('without activities the same buffers would be far off: 0.3 for the phosphate standard', () => {
  const [standard] = used.filter(({ family }) => family.includes('phosphate equimolal'))
  const ideal = 7.198 // half and half: the pH is the second constant
  expect(Math.abs(ideal - standard!.expected_ph)).toBeGreaterThan(0.25)
  expect(Math.abs(errorOf(standard!))).toBeLessThan(0.03)
})
