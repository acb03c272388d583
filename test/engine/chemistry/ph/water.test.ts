import { expect, test } from 'vitest'
import { activitySlope } from '#engine/chemistry/ph/activity.ts'
import { debyeHueckelA, pkw } from '#engine/chemistry/ph/water.ts'

// PHREEQC-DAT: pKw from the printed analytic expression of temperature (seen quoted).
const PRINTED_PKW = [
  [0, 14.938],
  [5, 14.73],
  [10, 14.531],
  [15, 14.343],
  [20, 14.165],
  [25, 13.995],
  [30, 13.833],
  [35, 13.68],
  [40, 13.533],
  [45, 13.394],
  [50, 13.262],
  [60, 13.015],
] as const

test.each(PRINTED_PKW)('the ion product of water at %f °C is that of the printed expression', (temp_c, printed) => {
  expect(Math.abs(pkw(temp_c) - printed)).toBeLessThan(0.025)
})

// Bates, Determination of pH (1973), appendix table 4, from memory; molar scale.
const PRINTED_A = [
  [0, 0.4918],
  [10, 0.4989],
  [20, 0.507],
  [25, 0.5115],
  [30, 0.5161],
  [40, 0.5262],
  [50, 0.5373],
  [60, 0.5494],
] as const

test.each(PRINTED_A)('the Debye-Hückel factor at %f °C is that of the handbook', (temp_c, printed) => {
  expect(Math.abs(debyeHueckelA(temp_c) - printed)).toBeLessThan(0.005)
})

test('no salt, no activity; more salt, more of it', () => {
  expect(activitySlope(0, 0.51)).toBe(0)
  expect(activitySlope(0.1, 0.51)).toBeCloseTo(0.1094, 4) // 0.51 · 0.31623 / 1.47434, by hand
  expect(activitySlope(0.5, 0.51)).toBeGreaterThan(activitySlope(0.1, 0.51))
})

test('water outside of 0 to 100 °C is refused by name', () => {
  expect(() => pkw(-1)).toThrow(/^temp_c: expected 0 to 100, got -1$/)
  expect(() => debyeHueckelA(Number.NaN)).toThrow(RangeError)
})
