import { describe, expect, test } from 'vitest'
import { findSwaps } from '#engine/index.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { realWorld } from '../../helpers.ts'

const world = realWorld()
const formulaOf = (wanted: string) => FORMULAS.find(({ name }) => name === wanted)!.formula
const about = (formula: string, missing: string, one: string, wishes = {}) =>
  findSwaps(world, { formula: formulaOf(formula), missing: [missing], about: [one], wishes }).about?.[0]

describe('an ingredient that a person names', () => {
  test('is told its place when it is proposed', () => {
    const [best] = findSwaps(world, { formula: formulaOf('carbomer-gel'), missing: ['carbomer'] }).swaps
    const answer = about('carbomer-gel', 'carbomer', best!.lines[0]!.ingredient)
    expect(answer).toMatchObject({ place: 1, text: 'Proposed, place 1' })
    expect(answer?.swap?.formula).toEqual(best!.formula)
  })
  test('is told that it does another job', () =>
    expect(about('carbomer-gel', 'carbomer', 'kaolin')).toMatchObject({
      place: null,
      refusal: { conflict: [{ rule: 'role-not-played' }] },
    }))
  test('is told which wish it does not fulfil', () =>
    expect(
      about('carbomer-gel', 'carbomer', 'xanthan-gum', { without: ['xanthan-gum'] })?.refusal?.conflict,
    ).toMatchObject([{ rule: 'wish' }]))
  test('is told that it is what is missing', () =>
    expect(about('carbomer-gel', 'carbomer', 'carbomer')?.refusal?.conflict).toMatchObject([{ rule: 'missing' }]))
})
