import { describe, expect, test } from 'vitest'
import type { Claim } from '#engine/model/records.ts'
import { makeKnowledge } from '../../helpers.ts'
import type { Parts } from '../../helpers.ts'

const SEEN = { kind: 'rule-of-thumb', source: 'practice', access: 'common-practice', date: '2026-01-31' }
const factsOf = (facts: Record<string, unknown>, more: Parts = {}, record: Record<string, unknown> = {}) => {
  const knowledge = makeKnowledge({
    ingredients: [{ id: 'glycerin', inci: 'GLYCERIN', roles: [], seen: SEEN, facts, ...record }],
    ...more,
  })
  return knowledge.ingredients.get('glycerin')!.facts
}
const body = ({ value, min, max, is, spectrum }: Claim) =>
  JSON.parse(JSON.stringify({ value, min, max, is, spectrum })) as object

describe('the short ways of writing a value', () => {
  test.each([
    ['a number', 5, { value: 5 }],
    ['a pair', [3, 5], { min: 3, max: 5 }],
    ['a pair with an open end', [null, 5], { max: 5 }],
    ['an object', { min: 3, max: 5 }, { min: 3, max: 5 }],
  ])('%s', (_name, written, expected) => {
    const claims = factsOf({ ph_stability: written }).get('ph_stability')!
    expect(claims.map(body)).toEqual([expected])
    expect(claims[0]).toMatchObject({ ...SEEN, used: true, unit: 'pH' })
  })

  test('a word', () => expect(factsOf({ solubility: 'water' }).get('solubility')!.map(body)).toEqual([{ is: 'water' }]))

  test('a spectrum by its four groups', () => {
    const written = { gramPositive: 'strong', gramNegative: 'weak', yeast: 'none', mould: 'moderate' }
    expect(factsOf({ spectrum: written }).get('spectrum')!.map(body)).toEqual([{ spectrum: written }])
  })

  test('phase, solubility and form may stand beside the facts', () => {
    const facts = factsOf({}, {}, { phase: 'water', solubility: 'water', form: 'liquid', usual: 4 })
    expect(['phase', 'solubility', 'form'].map((key) => facts.get(key)?.[0]?.is)).toEqual(['water', 'water', 'liquid'])
    expect(facts.get('usual')?.[0]?.value).toBe(4)
  })

  test('of several claims the first decides and all are kept', () => {
    const claims = factsOf({
      ph_stability: [
        { min: 3, max: 8 },
        { min: 4, max: 7, source: 'S-1', access: 'read' },
      ],
    })
    expect(claims.get('ph_stability')!.map(({ min, used }) => [min, used])).toEqual([
      [3, true],
      [4, false],
    ])
  })

  test('a claim with a source of its own is an assertion unless it says more', () => {
    const own = factsOf({ ph_stability: { min: 3, max: 8, source: 'S-1', locator: 'p. 4', access: 'read' } })
    expect(own.get('ph_stability')![0]).toMatchObject({ kind: 'assertion', source: 'S-1', access: 'read' })
    const measured = factsOf({ ph_stability: { min: 3, max: 8, source: 'S-1', access: 'read', kind: 'measured' } })
    expect(measured.get('ph_stability')![0]).toMatchObject({ kind: 'measured' })
  })

  test('a record that says nothing of its origin is common practice and a rule of thumb', () => {
    const facts = factsOf({ ph_stability: 5 }, {}, { seen: undefined })
    expect(facts.get('ph_stability')![0]).toMatchObject({ kind: 'rule-of-thumb', access: 'common-practice' })
  })
})

describe('claims of printed tables', () => {
  const table = (rows: Record<string, string>[]): Parts => ({
    tables: [{ path: 'tables/by-hand.tsv', rows: rows.map((row) => ({ inci: 'Glycerin', ...row })) }],
  })
  const ROW = {
    property: 'ph_stability',
    min: '3',
    max: '8',
    unit: 'pH',
    source_id: 'S-1',
    locator: 'p. 9',
    access: 'read',
  }

  test('decide where the record is silent', () => {
    const [claim] = factsOf({}, table([ROW])).get('ph_stability')!
    expect(claim).toMatchObject({ min: 3, max: 8, used: true, source: 'S-1', locator: 'p. 9', kind: 'assertion' })
  })

  test('stand behind the claim of the record', () => {
    const claims = factsOf({ ph_stability: [4, 7] }, table([ROW])).get('ph_stability')!
    expect(claims.map(({ min, used }) => [min, used])).toEqual([
      [4, true],
      [3, false],
    ])
  })

  test('the best seen one decides among them', () => {
    const rows = [{ ...ROW, min: '2', access: 'memory' }, ROW, { ...ROW, min: '5', access: 'secondary' }]
    const used = factsOf({}, table(rows))
      .get('ph_stability')!
      .filter((claim) => claim.used)
    expect(used.map(({ min }) => min)).toEqual([3])
  })

  test('a standard that another quotes goes before a seller who was read, and both before a remembered standard', () => {
    const sources = ['A', 'D'].map((grade) => ({ source_id: grade, title: grade, locator: 'p. 1', grade }))
    const row = (source_id: string, access: string, min: string) => ({ ...ROW, source_id, access, min })
    const order = (rows: Record<string, string>[]) =>
      factsOf({}, { ...table(rows), sources })
        .get('ph_stability')!
        .map(({ min }) => min)
    expect(order([row('D', 'read', '3'), row('A', 'memory', '5'), row('A', 'secondary', '4')])).toEqual([4, 3, 5])
    expect(order([row('A', 'secondary', '4'), row('A', 'read', '2')])).toEqual([2, 4])
  })

  test('from memory are a rule of thumb', () => {
    expect(factsOf({}, table([{ ...ROW, access: 'memory' }])).get('ph_stability')![0]!.kind).toBe('rule-of-thumb')
  })

  test('a table says heat_max where a record says heat_max_c', () => {
    const facts = factsOf({}, table([{ ...ROW, property: 'heat_max', min: '', max: '80', unit: 'C' }]))
    expect(facts.get('heat_max_c')![0]).toMatchObject({ max: 80, used: true })
  })

  test('active matter counts only in per cent', () => {
    const rows = [{ ...ROW, property: 'active_matter', unit: 'meq/g' }]
    expect(factsOf({}, table(rows)).get('active_percent')).toBeUndefined()
  })

  const inWords = (value_text: string, more: Record<string, string> = {}) =>
    table([{ ...ROW, property: 'solubility', min: '', max: '', unit: '', value_text, ...more }])

  test('in words are shown and never decide', () => {
    const facts = factsOf({}, inWords('freely in water, 1 in 3'))
    expect(facts.get('solubility')).toBeUndefined()
    expect(facts.get('solubility_in_words')![0]).toMatchObject({ is: 'freely in water, 1 in 3', used: false })
  })

  test('by a word of the vocabulary decide like a number: where the record is silent', () => {
    expect(factsOf({}, inWords('water')).get('solubility')![0]).toMatchObject({ is: 'water', used: true })
    const beside = factsOf({ solubility: 'both' }, inWords('water')).get('solubility')!
    expect(beside.map(({ is, used }) => [is, used])).toEqual([
      ['both', true],
      ['water', false],
    ])
  })

  const graded = (value_text: string) =>
    factsOf({}, table([{ ...ROW, property: 'spectrum', min: '', max: '', unit: '', value_text }]))

  test('that grade a spectrum group by group are a spectrum; what they do not know is left out, never "none"', () => {
    const [claim] = graded('gram-positive: strong; gram-negative: unknown; yeast: weak; mould: none').get('spectrum')!
    expect(claim).toMatchObject({ spectrum: { gramPositive: 'strong', yeast: 'weak', mould: 'none' }, used: true })
    expect(claim!.spectrum).not.toHaveProperty('gramNegative')
    expect(claim!.is).toBeUndefined()
  })

  test.each(['broad', 'yeast: fair', 'yeast: strong; all else: weak', 'mould: unknown'])(
    'that tell a spectrum in other words are for people to read: %s',
    (words) => {
      expect(graded(words).get('spectrum')).toBeUndefined()
      expect(graded(words).get('spectrum_in_words')![0]).toMatchObject({ is: words, used: false })
    },
  )

  test('that the record itself chose stand once, and lend it their circumstances', () => {
    const own = { min: 3, max: 8, source: 'S-1', locator: 'p. 9', access: 'read' }
    const chosen = factsOf({ ph_stability: own }, table([{ ...ROW, conditions: 'in the dark' }])).get('ph_stability')!
    expect(chosen).toHaveLength(1)
    expect(chosen[0]).toMatchObject({ min: 3, max: 8, conditions: 'in the dark', used: true })
    const other = factsOf({ ph_stability: own }, table([{ ...ROW, source_id: 'S-2' }])).get('ph_stability')!
    expect(other.map(({ source }) => source)).toEqual(['S-1', 'S-2'])
  })

  test('an empty row says nothing', () =>
    expect(factsOf({}, table([{ ...ROW, min: '', max: '', value_text: ' ' }])).size).toBe(0))
})

describe('derived values', () => {
  const OIL = { classes: ['triglyceride'], seen: SEEN }
  const acids = { fatty_acids: { shares: { 'C18:1': 100 }, source: 'S-1', locator: 'p. 2', access: 'read' } }

  test('a triglyceride with fatty acids gets iodine and saponification value, marked derived', () => {
    const claim = factsOf(acids, {}, OIL).get('iodine_value')![0]!
    expect(claim).toMatchObject({ kind: 'derived', source: 'S-1', used: true })
    expect(claim.locator).toContain('glycerin#fatty_acids/0')
  })

  test('a stated value goes before the derived one', () => {
    const claims = factsOf({ ...acids, iodine_value: 84 }, {}, OIL).get('iodine_value')!
    expect(claims.map(({ kind, used }) => [kind, used])).toEqual([
      ['rule-of-thumb', true],
      ['derived', false],
    ])
  })

  test('a wax ester or hydrocarbon does not go through the formula of triglycerides', () =>
    expect(factsOf(acids, {}, { classes: ['wax-ester'] }).has('iodine_value')).toBe(false))
})
