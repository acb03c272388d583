import { describe, expect, test } from 'vitest'
import { EMPTY } from '#web/state/bench.ts'
import { setSettings } from '#web/state/edit.ts'
import { ticksOf, usesOf, withComplete, withFact, withFigure, withoutFigure } from '#web/state/facts.ts'
import { isBench } from '#web/state/storage.ts'
import { toFormula } from '#web/state/to-formula.ts'

const LINE = {
  ...{ key: 'l1', kind: 'ingredient' as const, typed: '', name: 'lavender oil', chosen: 'lavandula-angustifolia-oil' },
  ...{ share_percent: 100, fills: false, phase: null, aside: false, missing: false },
}
const asked = (settings: object) => {
  const found = toFormula(setSettings({ ...EMPTY, lines: [LINE] }, settings), ({ chosen }) => chosen)
  return 'formula' in found ? found.formula : null
}

describe('uses', () => {
  test('nothing ticked is not said, and differs from none of them', () => {
    expect(ticksOf(undefined)).toEqual([])
    expect(ticksOf([])).toEqual(['none'])
    expect(usesOf([], ['soap'])).toBeUndefined()
    expect(usesOf(['soap', 'none'], ['soap'])).toEqual([])
  })
  test('a use ticked after none takes its place', () => expect(usesOf(['none', 'soap'], [])).toEqual(['soap']))
})

test('a fact taken back is left out', () => {
  const sprayed = withFact(EMPTY.settings, 'dispensing', 'aerosol')
  expect(sprayed.dispensing).toBe('aerosol')
  expect(withFact(sprayed, 'dispensing', undefined)).toEqual(EMPTY.settings)
})

describe('figures of suppliers', () => {
  const one = withFigure([], 'lavandula-angustifolia-oil', { substance: 'linalool', percent: 30 })
  test('a new figure of the same substance gives way to none', () =>
    expect(withFigure(one, 'lavandula-angustifolia-oil', { substance: 'linalool', percent: 31 })).toEqual([
      { ingredient: 'lavandula-angustifolia-oil', holds: [{ substance: 'linalool', percent: 31 }] },
    ]))
  test('a paper without figures goes, unless it is complete: then nothing was found', () => {
    expect(withoutFigure(one, 'lavandula-angustifolia-oil', 'linalool')).toEqual([])
    const complete = withComplete(one, 'lavandula-angustifolia-oil', true)
    expect(withoutFigure(complete, 'lavandula-angustifolia-oil', 'linalool')).toHaveLength(1)
    expect(withComplete(complete, 'lavandula-angustifolia-oil', false)).toEqual(one)
  })
})

describe('the question to the server', () => {
  test('holds what was said and nothing that was not', () => {
    expect(asked({})).not.toHaveProperty('dispensing')
    expect(asked({ dispensing: 'pump-spray', professional: false, uses: [] })).toMatchObject({
      ...{ dispensing: 'pump-spray', professional: false, uses: [] },
    })
  })
  test('holds papers only on what is in the recipe', () => {
    const paper = (ingredient: string) => ({ ingredient, holds: [{ substance: 'linalool', percent: 30 }] })
    const analyses = [paper('lavandula-angustifolia-oil'), paper('parfum')]
    expect(asked({ analyses })?.analyses).toEqual([paper('lavandula-angustifolia-oil')])
  })
})

test('a kept bench of before is read, one with broken facts is not', () => {
  expect(isBench(EMPTY)).toBe(true)
  expect(isBench(setSettings(EMPTY, { analyses: [{ ingredient: 'parfum', holds: [] }], uses: ['soap'] }))).toBe(true)
  expect(isBench({ ...EMPTY, settings: { ...EMPTY.settings, uses: [1] } })).toBe(false)
  expect(isBench({ ...EMPTY, settings: { ...EMPTY.settings, analyses: [{ ingredient: 'x' }] } })).toBe(false)
})
