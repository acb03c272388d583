import { describe, expect, test } from 'vitest'
import { buildContext } from '#engine/formula/build-context.ts'
import { holdsHere } from '#engine/formula/when.ts'
import type { When } from '#engine/model/records.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const glycerin = world.find('glycerin')!
const here = (more: Parameters<typeof makeFormula>[1] = {}) =>
  buildContext(
    makeFormula({ glycerin: 3, carbomer: 0.4, 'sodium-hydroxide': 0.15 }, { ph: 6, form: 'gel', ...more }),
    world,
  )

const CASES: [string, When | undefined, boolean][] = [
  ['no circumstances always hold', undefined, true],
  ['the form', { form: ['gel', 'solution'] }, true],
  ['another form', { form: ['bar'] }, false],
  ['the product', { product: 'leave-on' }, true],
  ['another product', { product: 'rinse-off' }, false],
  ['a pH inside the range', { ph: { min: 5, max: 7 } }, true],
  ['a pH outside', { ph: { max: 5 } }, false],
  ['at least this much', { min_percent: 3 }, true],
  ['more than there is', { min_percent: 3.1 }, false],
  ['at most this much', { max_percent: 3 }, true],
  ['beside a named one', { with: ['carbomer'] }, true],
  ['beside one of a class', { with: ['class:acrylic-polymer', 'urea'] }, true],
  ['beside what is not there', { with: ['urea'] }, false],
  ['beside itself only', { with: ['glycerin'] }, false],
  ['without what is not there', { without: ['urea'] }, true],
  ['without what is there', { without: ['carbomer'] }, false],
  ['an area that nobody stated', { areas: ['face'] }, false],
  ['all have to hold', { form: ['gel'], product: 'rinse-off' }, false],
]

describe('circumstances', () => {
  test.each(CASES)('%s', (_name, when, holds) => expect(holdsHere(when, glycerin, here(), 3)).toBe(holds))

  test('a pH that is not known fulfils no pH', () =>
    expect(holdsHere({ ph: { min: 0, max: 14 } }, glycerin, here({ ph: null }), 3)).toBe(false))

  test('one of the stated areas is enough', () =>
    expect(holdsHere({ areas: ['face'] }, glycerin, here({ areas: ['body', 'face'] }), 3)).toBe(true))
})
