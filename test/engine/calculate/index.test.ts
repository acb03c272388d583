import { Value } from 'typebox/value'
import { describe, expect, test } from 'vitest'
import { calculate, CALCULATIONS } from '#engine/index.ts'
import { Worked } from '#engine/model/calculation.ts'
import { CALCULATION_INPUTS } from '#engine/model/inputs/index.ts'
import type { CalculationName } from '#engine/model/inputs/index.ts'
import { deepFrozen, realWorld } from '../../helpers.ts'
import { SAMPLES } from './samples.ts'

const names = Object.keys(CALCULATIONS) as CalculationName[]
const world = realWorld()
const run = (name: CalculationName): Worked => calculate(world, name, SAMPLES[name] as never)

test('every schema has its calculation and every calculation a usual question', () => {
  expect(names.toSorted()).toEqual(Object.keys(CALCULATION_INPUTS).toSorted())
  expect(Object.keys(SAMPLES).toSorted()).toEqual(names.toSorted())
})

describe.each(names)('%s', (name) => {
  const worked = run(name)

  test('takes its usual question and refuses a key that it does not know', () => {
    expect([...Value.Errors(CALCULATION_INPUTS[name], SAMPLES[name])]).toEqual([])
    expect(Value.Check(CALCULATION_INPUTS[name], { ...SAMPLES[name], colour: 1 })).toBe(false)
  })

  test('answers in the promised shape, with a title that asks', () => {
    expect([...Value.Errors(Worked, worked)]).toEqual([])
    expect(CALCULATIONS[name].title).toMatch(/\?$/)
  })

  test('gives finite values named with their quantity', () => {
    expect(Object.keys(worked.values).length).toBeGreaterThan(0)
    for (const [value, number] of Object.entries(worked.values)) {
      expect(value).toMatch(/^[a-z0-9]+(_[a-z0-9]+)*$/)
      expect(Number.isFinite(number), `${value} ${number}`).toBe(true)
    }
  })

  test('shows its steps, each with numbers filled in', () => {
    expect(worked.steps.length).toBeGreaterThan(0)
    for (const { text, expression, value } of worked.steps) {
      expect(text.length).toBeGreaterThan(2)
      expect(expression).not.toBe('')
      expect(`${text} ${expression}`).not.toMatch(/NaN|undefined|Infinity|\bnull\b/)
      expect(Number.isFinite(value), `${text}: ${value}`).toBe(true)
    }
    const shown = worked.steps.map(({ value }) => value)
    const missing = Object.entries(worked.values).filter(([, number]) => !shown.some((one) => Object.is(one, number)))
    expect(missing.length, `no step ends in ${missing.join()}`).toBeLessThan(Object.keys(worked.values).length)
  })

  test('says where it holds and on what it rests', () => {
    expect(worked.range.length).toBeGreaterThan(20)
    expect(worked.range).not.toMatch(/\b(safe|compliant|certified|preserved)\b/)
    expect(worked.sources.length).toBeGreaterThan(0)
    expect(worked.sources.filter((source) => !world.knowledge.sources.has(source))).toEqual([])
  })

  test('changes nothing that it is given and always says the same', () => {
    const frozen = deepFrozen(structuredClone(SAMPLES[name]))
    expect(calculate(world, name, frozen as never)).toEqual(worked)
  })

  // Typical calls take well under 0.2 ms; the bound is loose because other work shares the machine.
  test('is quick', () => {
    for (let i = 0; i < 50; i++) run(name)
    const times_ms = Array.from({ length: 101 }, () => {
      const start = performance.now()
      run(name)
      return performance.now() - start
    }).sort((a, b) => a - b)
    expect(times_ms[50]!).toBeLessThan(2)
  })
})
