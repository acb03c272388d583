import { expect, test } from 'vitest'
import { changedRecipe, recipeWith } from '#engine/learn/lesson-change.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const formula = makeFormula({ glycerin: 4, urea: 5 })

test('a change touches what it names and nothing else', () => {
  expect(changedRecipe(formula, { ph: 7 })).toEqual({ ...formula, ph: 7 })
  expect(changedRecipe(formula, { remove: 'urea' })).toEqual(makeFormula({ glycerin: 4 }))
  expect(changedRecipe(formula, { level: { ingredient: 'urea', share_percent: 9 } })).toEqual(
    makeFormula({ glycerin: 4, urea: 9 }),
  )
  expect(changedRecipe(formula, { replace: { ingredient: 'urea', by: 'sorbitol' } })).toEqual(
    makeFormula({ glycerin: 4, sorbitol: 5 }),
  )
  expect(changedRecipe(formula, { add: { ingredient: 'sorbitol', share_percent: 1 } })).toEqual(
    makeFormula({ glycerin: 4, urea: 5, sorbitol: 1 }),
  )
  expect(changedRecipe(formula)).toEqual(formula)
})

test('what is not in the recipe cannot be changed', () => {
  expect(() => changedRecipe(formula, { remove: 'sorbitol' })).toThrow(/recipe: holds no sorbitol/)
  expect(() => changedRecipe(formula, { replace: { ingredient: 'sorbitol', by: 'urea' } })).toThrow(RangeError)
})

test('a recipe that does not add up and one that nobody wrote are refused', () => {
  expect(() => recipeWith(realWorld(), formula, { level: { ingredient: 'urea', share_percent: 99 } })).toThrow(
    /recipe: /,
  )
  expect(() => recipeWith(realWorld(), 'moon-cream')).toThrow(/there is no practice recipe moon-cream/)
})
