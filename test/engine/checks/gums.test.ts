import { describe, expect, test } from 'vitest'
import { findingsOf, makeFormula } from '../../helpers.ts'

const gel = (shares: Record<string, number>, ph = 6) => makeFormula(shares, { ph, hottest_c: 85 })

describe('gums that set together', () => {
  // PMC6961714 (read): xanthan with locust bean gum gives a soft elastic gel, neither gels alone.
  test('xanthan and locust bean gum are told once, with the source', () => {
    const found = findingsOf(
      'gums-set-together',
      gel({ 'xanthan-gum': 0.3, 'ceratonia-siliqua-gum': 0.3, glycerin: 4 }),
    )
    expect(found).toHaveLength(1)
    expect(found[0]).toMatchObject({ severity: 'note', about: ['ceratonia-siliqua-gum', 'xanthan-gum'] })
    expect(found[0]?.message).toMatch(/set together: .*elastic gel/)
  })

  test.each(['cyamopsis-tetragonoloba-gum', 'hydroxyethylcellulose', 'sclerotium-gum'])(
    'xanthan and %s do not set',
    (id) => expect(findingsOf('gums-set-together', gel({ 'xanthan-gum': 0.3, [id]: 0.3, glycerin: 4 }))).toEqual([]),
  )
})

describe('wetting a gum', () => {
  test('glycerin, a diol, alcohol or oil wets it; a trace of it does not', () => {
    const found = (shares: Record<string, number>) =>
      findingsOf('gum-not-wetted', gel({ 'xanthan-gum': 0.5, ...shares }))
    expect(found({})).toHaveLength(1)
    expect(found({ glycerin: 0.3 })).toHaveLength(1)
    expect(found({ glycerin: 2 })).toEqual([])
    expect(found({ propanediol: 3 })).toEqual([])
    expect(found({ 'alcohol-denat': 20 })).toEqual([])
    expect(found({ 'helianthus-annuus-seed-oil': 8, 'cetearyl-olivate-and-sorbitan-olivate': 4 })).toEqual([])
  })
})

test('a coated gum, which swells only once a base is added, need not be wetted first', () => {
  // Record of hydroxyethylcellulose: surface-treated grades wait until the pH is raised above 7 to 8 (tds-mem, memory).
  expect(findingsOf('gum-not-wetted', gel({ hydroxyethylcellulose: 1 }))).toEqual([])
})

describe('acid and the chain of a gum', () => {
  test.each(['hydroxyethylcellulose', 'cellulose-gum', 'cyamopsis-tetragonoloba-gum'])(
    '%s is cut at pH 2.5, not at pH 4',
    (id) => {
      const peel = { [id]: 1, 'glycolic-acid': 8, glycerin: 3 }
      expect(findingsOf('gum-in-acid', gel(peel, 2.5))[0]?.about).toEqual([id, 'glycolic-acid'].sort())
      expect(findingsOf('gum-in-acid', gel(peel, 4))).toEqual([])
    },
  )

  test('xanthan and sclerotium gum bear it', () => {
    for (const id of ['xanthan-gum', 'sclerotium-gum'])
      expect(findingsOf('gum-in-acid', gel({ [id]: 1, 'glycolic-acid': 8, glycerin: 3 }, 2.5))).toEqual([])
  })

  test('nothing is told where the pH is not known', () => {
    const formula = { ...gel({ hydroxyethylcellulose: 1, 'glycolic-acid': 8 }), ph: null }
    expect(findingsOf('gum-in-acid', formula)).toEqual([])
  })
})
