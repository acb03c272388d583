import { Value } from 'typebox/value'
import { describe, expect, test } from 'vitest'
import { checkFormula, faultsOf } from '#engine/index.ts'
import { Formula } from '#engine/model/formula.ts'
import { realRaw, realWorld } from '../helpers.ts'

const world = realWorld()

test('every file of practice recipes is one, named by its id', () => {
  const ids = (realRaw().practice ?? []).map(({ path }) => path.replace(/^practice\/|\.yaml$/g, ''))
  expect(world.knowledge.practice.map(({ id }) => id)).toEqual(ids.sort())
  expect(ids.length).toBeGreaterThan(8)
  expect(new Set(world.knowledge.practice.map(({ title }) => title)).size).toBe(ids.length)
})

describe.each(world.knowledge.practice)('$title', ({ formula }) => {
  test('is a formula of known ingredients with one line that fills up', () => {
    expect([...Value.Errors(Formula, formula)]).toEqual([])
    expect(faultsOf(formula, world)).toEqual([])
    expect(formula.lines.filter(({ fills }) => fills === true).length).toBe(1)
  })
  test('holds together: nothing stops it and nothing in it is unknown', () => {
    expect(['clear', 'attention']).toContain(checkFormula(world, formula).verdict)
  })
})
