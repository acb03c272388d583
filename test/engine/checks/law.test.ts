import { describe, expect, test } from 'vitest'
import { checkFormula } from '#engine/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import { makeFormula, makeWorld } from '../../helpers.ts'

const PRINT = { source: 'S-1', locator: 'no. 1', access: 'read' }
const RULES = ['limit-by-law', 'limit-coming', 'law-ph', 'law-condition'].map((id) => ({ id, severity: 'stop' }))
const at = (id: string) => ({ id, inci: id.toUpperCase(), roles: [{ role: 'preservative' }] })

interface Row {
  scope: object
  max_percent?: number
  prohibited?: boolean
  applies_from?: string
}
const worldWith = (rows: Row[], limit: object = {}) =>
  makeWorld({
    roles: { preservative: { label: 'Preservative' } },
    rules: RULES,
    ingredients: [at('acid'), at('salt'), at('aqua')],
    limits: [
      {
        id: 'l',
        market: 'eu',
        title: 'Acid',
        members: { acid: 1, salt: 0.8 },
        rows: rows.map((row) => ({ ...PRINT, ...row })),
        ...limit,
      },
    ],
  })

const found = (rows: Row[], formula: Formula, placedOn?: string, limit?: object): Finding[] =>
  checkFormula(worldWith(rows, limit), formula, placedOn).findings.filter(({ rule }) => rule.startsWith('limit'))
const severities = (...asked: Parameters<typeof found>) => found(...asked).map(({ severity }) => severity)

const HALF: Row[] = [{ scope: {}, max_percent: 0.5 }]

describe('what the law counts', () => {
  test('acid and salt together, the salt by the acid in it', () => {
    const [finding] = found(HALF, makeFormula({ acid: 0.3, salt: 0.3 }))
    expect(finding).toMatchObject({ severity: 'stop', about: ['acid', 'salt'], sources: ['S-1'] })
    expect(finding!.message).toContain('0.54 %')
  })
  test('0.6 % of the salt alone is 0.48 % of the acid', () =>
    expect(found(HALF, makeFormula({ salt: 0.6 }))).toEqual([]))
  test('the limit itself is allowed', () => expect(found(HALF, makeFormula({ acid: 0.5 }))).toEqual([]))
  test('two lines of one ingredient are one', () => {
    const formula = makeFormula({ acid: 0.3 })
    const twice = { ...formula, lines: [...formula.lines, { ingredient: 'acid', share_percent: 0.3 }] }
    expect(severities(HALF, twice)).toEqual(['stop'])
  })
  test('another market is not concerned', () =>
    expect(found(HALF, makeFormula({ acid: 5 }, { market: 'us' }))).toEqual([]))
  test('an expert opinion warns and does not stop', () =>
    expect(severities(HALF, makeFormula({ acid: 1 }), undefined, { kind: 'opinion' })).toEqual(['warn']))
})

describe('which row governs', () => {
  const ROWS: Row[] = [
    { scope: {}, max_percent: 2 },
    { scope: { product: 'leave-on', areas: ['body'] }, max_percent: 0.5 },
    { scope: { product: 'rinse-off', areas: ['hair'] }, max_percent: 3 },
    { scope: { areas: ['under-3'] }, prohibited: true },
  ]
  test('the narrow one before the wide one, whether stricter or not', () => {
    expect(severities(ROWS, makeFormula({ acid: 1 }, { areas: ['body'] }))).toEqual(['stop'])
    expect(severities(ROWS, makeFormula({ acid: 2.5 }, { product: 'rinse-off', areas: ['hair'] }))).toEqual([])
    expect(severities(ROWS, makeFormula({ acid: 2.5 }, { areas: ['face'] }))).toEqual(['stop'])
  })
  test('a row for an area that nobody stated is unknown, never no', () => {
    expect(severities(ROWS, makeFormula({ acid: 1 }))).toEqual(['unknown'])
    expect(severities(ROWS, makeFormula({ acid: 1 }, { areas: ['face'] }))).toEqual([])
  })
  test('an empty list of areas states nothing', () =>
    expect(severities(ROWS, makeFormula({ acid: 1 }, { areas: [] }))).toEqual(['unknown']))
  test('what breaks the widest row and no exception could lift stops without areas', () =>
    expect(severities(ROWS, makeFormula({ acid: 4 }))).toEqual(['stop']))
  test('what an exception for an unstated area could lift is unknown', () =>
    expect(severities(ROWS, makeFormula({ acid: 2.5 }, { product: 'rinse-off' }))).toEqual(['unknown']))
  test('any of several areas binds', () =>
    expect(severities(ROWS, makeFormula({ acid: 0.4 }, { areas: ['face', 'under-3'] }))).toEqual(['stop']))
  test('a use that no formula can state does not bind', () =>
    expect(found([{ scope: { only: 'toothpaste' }, max_percent: 0.1 }], makeFormula({ acid: 5 }))).toEqual([]))
})

describe('a limit with a day', () => {
  const ROWS: Row[] = [{ scope: {}, max_percent: 0.3, applies_from: '2027-01-01' }]
  const rulesOn = (placedOn?: string) => found(ROWS, makeFormula({ acid: 1 }), placedOn).map(({ rule }) => rule)
  test('is coming before that day', () => expect(rulesOn('2026-12-31')).toEqual(['limit-coming']))
  test('is coming when no day was given', () => expect(rulesOn()).toEqual(['limit-coming']))
  test('binds from that day on', () => {
    expect(rulesOn('2027-01-01')).toEqual(['limit-by-law'])
    expect(rulesOn('2030-06-01')).toEqual(['limit-by-law'])
  })
})
