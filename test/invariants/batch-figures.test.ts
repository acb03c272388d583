import { describe, expect, test } from 'vitest'
import { batchSheet } from '#engine/index.ts'
import { FORMULAS } from '../formulas/read-formulas.ts'
import { realWorld } from '../helpers.ts'

const world = realWorld()

describe('temperatures and times', () => {
  const all = FORMULAS.flatMap(({ name, formula }) =>
    batchSheet(world, { formula, batch_g: 200 }).steps.map((done) => ({ name, done, formula })),
  )
  const claims = new Set(
    [...world.knowledge.ingredients.values()].flatMap(({ facts }) => [...facts.values()].flat().map(({ id }) => id)),
  )

  test('name a claim that exists, the recipe, a record, or usual practice', () => {
    for (const { name, done } of all)
      for (const { because } of [done.temp_c, done.time].filter((one) => one !== undefined))
        for (const { fact, claim } of because) {
          if (claim !== undefined) expect([name, done.id, claim, claims.has(claim)]).toContain(true)
          else
            expect(`${name} ${done.id}: ${fact}`).toMatch(/usual practice|the recipe states|not on record|above \d+ C/)
        }
  })

  test('stand nowhere in the text itself, so that none is without its reason', () => {
    for (const { done } of all) expect(done.text).not.toMatch(/\d\s*°C|\d+ (minutes|hours|days)\b/)
  })

  test('of what goes in late stay under every heat limit on record', () => {
    for (const { name, done } of all) {
      if (done.id !== 'cool-down' || done.temp_c === undefined) continue
      const limits = done.adds.flatMap((id) => {
        const claim = world
          .find(id.replace(/\/\d+$/, ''))
          ?.facts.get('heat_max_c')
          ?.find(({ used }) => used)
        return claim?.max ?? claim?.value ?? []
      })
      expect([name, done.temp_c.max! <= Math.min(Infinity, ...limits)]).toEqual([name, true])
    }
  })
})
