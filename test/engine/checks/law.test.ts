import { describe, expect, test } from 'vitest'
import { checkFormula } from '#engine/index.ts'
import type { Finding } from '#engine/model/finding.ts'
import type { Formula } from '#engine/model/formula.ts'
import { findingsOf, makeFormula, makeWorld } from '../../helpers.ts'

const PRINT = { source: 'S-1', locator: 'no. 1', access: 'read' }
const RULES = ['limit-by-law', 'limit-coming', 'law-ph', 'law-condition'].map((id) => ({ id, severity: 'stop' }))
const at = (id: string) => ({ id, inci: id.toUpperCase(), roles: [{ role: 'preservative' }] })

interface Row {
  scope: object
  strict?: 'percent' | 'ph'
  ph?: object
  condition?: string
  older_stock_until?: string
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

describe('what a finding says', () => {
  const stated = { act: 'Annex V', entry: '1', date: '2026-11-25', exported: '2026-09-09' }
  test('names entry, act, wording and state, and is no legal advice', () => {
    const row = { scope: {}, max_percent: 0.5, legal_act: '(EU) 2014/1' }
    const [finding] = found([row], makeFormula({ acid: 1 }), undefined, stated)
    expect(finding!.message).toContain('EU Annex V, entry 1 in the wording of (EU) 2014/1, export of 2026-09-09')
    expect(finding!.message).toContain('no legal advice')
  })
  test('an entry that counts only beside another substance is silent without it', () => {
    expect(severities(HALF, makeFormula({ acid: 1 }), undefined, { requires: ['salt'] })).toEqual([])
    expect(severities(HALF, makeFormula({ acid: 1, salt: 0.1 }), undefined, { requires: ['salt'] })).toEqual(['stop'])
  })
  test('a blend of which nobody states the shares is unknown where it could hold too much', () => {
    expect(severities(HALF, makeFormula({ 'acid-and-aqua': 2 }))).toEqual(['unknown'])
    expect(severities(HALF, makeFormula({ 'acid-and-aqua': 0.4 }))).toEqual([])
    expect(severities(HALF, makeFormula({ 'acid-and-aqua': 0.4, acid: 0.6 }))).toEqual(['stop'])
  })
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
  test('a use that nobody stated is unknown where it would be broken, and asks for that use', () => {
    const [finding] = found([{ scope: { only: 'hair dye' }, max_percent: 0.1 }], makeFormula({ acid: 5 }))
    expect(finding).toMatchObject({ severity: 'unknown', remedy: expect.stringContaining('hair dye') })
    expect(found([{ scope: { only: 'hair dye' }, max_percent: 6 }], makeFormula({ acid: 5 }))).toEqual([])
  })
  test('a use is possible only beside what makes it up', () => {
    const rows: Row[] = [{ scope: { only: 'soap', needs: ['salt'] }, max_percent: 0.1 }]
    expect(found(rows, makeFormula({ acid: 5 }))).toEqual([])
    expect(severities(rows, makeFormula({ acid: 5, salt: 1 }))).toEqual(['unknown'])
  })
  test('a use is possible only above the pH that it needs', () => {
    const rows: Row[] = [
      { scope: {}, ph: { max: 11 } },
      { scope: { only: 'cuticle softener', above_ph: 11 }, max_percent: 0.5 },
    ]
    const at = (ph: number | null) =>
      checkFormula(worldWith(rows), makeFormula({ acid: 5 }, { ph })).findings.map(
        ({ rule, severity }) => `${severity} ${rule}`,
      )
    expect(at(10)).toEqual([])
    expect(at(12)).toEqual(['stop law-ph'])
  })
  test('a pH that nobody stated is unknown where the law ties something to it', () => {
    const soap = makeFormula(
      { 'olea-europaea-fruit-oil': 60, 'sodium-hydroxide': 8 },
      { product: 'rinse-off', ph: null },
    )
    expect(findingsOf('law-ph', soap)).toMatchObject([{ severity: 'unknown', about: ['sodium-hydroxide'] }])
    expect(findingsOf('law-ph', { ...soap, ph: 10 })).toEqual([])
  })
  test('a more generous use that nobody stated turns a stop into a question, up to its own limit', () => {
    const rows: Row[] = [
      { scope: {}, max_percent: 0.5 },
      { scope: { areas: ['nail'], only: 'cuticle softener' }, max_percent: 5 },
    ]
    const onNails = (acid: number) => severities(rows, makeFormula({ acid }, { areas: ['nail'] }))
    expect(onNails(0.5)).toEqual([])
    expect(onNails(3)).toEqual(['unknown'])
    expect(onNails(6)).toEqual(['stop'])
    expect(severities(rows, makeFormula({ acid: 3 }, { areas: ['face'] }))).toEqual(['stop'])
  })
  test('a ban for sprays stops nothing, since nobody states how a product is dispensed', () =>
    expect(found([{ scope: { form: ['spray'] }, prohibited: true }], makeFormula({ acid: 1 }))).toEqual([]))
})

describe('a bound that must not even be reached', () => {
  const BELOW: Row[] = [{ scope: {}, max_percent: 0.5, strict: 'percent' }]
  test('is broken by the figure itself', () => {
    expect(severities(BELOW, makeFormula({ acid: 0.5 }))).toEqual(['stop'])
    expect(severities(BELOW, makeFormula({ acid: 0.499 }))).toEqual([])
  })
})

describe('a pH that the law asks for', () => {
  const ROWS: Row[] = [{ scope: {}, ph: { max: 11 } }]
  const phSeverities = (rows: Row[], ph: number | null) =>
    checkFormula(worldWith(rows), makeFormula({ acid: 1 }, { ph }))
      .findings.filter(({ rule }) => rule === 'law-ph')
      .map(({ severity }) => severity)
  test('stops outside, not at the figure', () => {
    expect(phSeverities(ROWS, 11)).toEqual([])
    expect(phSeverities(ROWS, 11.1)).toEqual(['stop'])
  })
  test('strictly below is below', () => expect(phSeverities([{ ...ROWS[0]!, strict: 'ph' }], 11)).toEqual(['stop']))
  test('a use with another window that nobody stated makes it unknown', () => {
    const rows: Row[] = [...ROWS, { scope: { only: 'depilatory' }, ph: { max: 12.7 } }]
    expect(phSeverities(rows, 12)).toEqual(['unknown'])
    expect(phSeverities(rows, 13)).toEqual(['stop'])
  })
})

describe('a limit with a day', () => {
  const ROWS: Row[] = [{ scope: {}, max_percent: 0.3, applies_from: '2027-01-01' }]
  const rulesOn = (placedOn?: string) => found(ROWS, makeFormula({ acid: 1 }), placedOn).map(({ rule }) => rule)
  test('is coming before that day', () => expect(rulesOn('2026-12-31')).toEqual(['limit-coming']))
  test('is coming when no day was given', () => expect(rulesOn()).toEqual(['limit-coming']))
  test('a wording of the past that is not on record is unknown, not fine', () => {
    const rows: Row[] = [{ scope: {}, max_percent: 0.3, applies_from: '2026-05-01' }]
    const asked = (day: string) =>
      found(rows, makeFormula({ acid: 1 }), day, { date: '2026-11-25' }).map(({ severity, rule }) => [severity, rule])
    expect(asked('2026-04-30')).toEqual([['unknown', 'limit-by-law']])
    expect(asked('2026-05-01')).toEqual([['stop', 'limit-by-law']])
  })
  test('tells until when goods placed before may be sold off', () => {
    const rows: Row[] = [{ scope: {}, max_percent: 0.3, applies_from: '2027-01-01', older_stock_until: '2028-06-30' }]
    const [finding] = found(rows, makeFormula({ acid: 1 }))
    expect(finding!.message).toContain('may be sold off until 2028-06-30')
  })
  test('binds from that day on', () => {
    expect(rulesOn('2027-01-01')).toEqual(['limit-by-law'])
    expect(rulesOn('2030-06-01')).toEqual(['limit-by-law'])
  })
})
