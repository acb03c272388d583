import { describe, expect, test } from 'vitest'
import { describeIngredient } from '#engine/index.ts'
import { makeWorld, realWorld } from '../../helpers.ts'

const SEEN = { source: 'practice', access: 'common-practice', date: '2026-01-31' }
const table = (...rows: Record<string, string>[]) => [
  {
    path: 'tables/by-hand.tsv',
    rows: rows.map((row) => ({ inci: 'Glycerin', property: 'ph_stability', unit: 'pH', source_id: 'S-1', ...row })),
  },
]
const describeWith = (facts: object, ...rows: Record<string, string>[]) =>
  describeIngredient(
    makeWorld({
      ingredients: [{ id: 'glycerin', inci: 'GLYCERIN', roles: [], seen: SEEN, facts }],
      tables: table(...rows),
    }),
    'glycerin',
  )!

describe('where claims disagree, a reader is told', () => {
  test('that the record chose', () => {
    const { decisions, claims } = describeWith({ ph_stability: [3, 4] }, { min: '6', max: '8', access: 'read' })
    expect(decisions).toEqual([
      {
        property: 'ph_stability',
        claim: 'glycerin#ph_stability/0',
        why: 'Put first in the record when it was reviewed (common practice), before the other one.',
      },
    ])
    expect(claims).toHaveLength(2)
  })

  test('that the best seen of the tables goes first', () => {
    const rows = [
      { min: '2', max: '3', access: 'memory' },
      { min: '6', max: '8', access: 'read' },
    ]
    expect(describeWith({}, ...rows).decisions).toEqual([
      {
        property: 'ph_stability',
        claim: 'by-hand/1',
        why: expect.stringContaining('the one best seen (read in its source)'),
      },
    ])
  })

  test('that a figure of other circumstances, which no rule reads, is no disagreement', () => {
    const rows = [
      { property: 'inhibitory_level', min: '0.1', max: '0.1', access: 'read', conditions: 'mould' },
      { property: 'inhibitory_level', min: '0.5', max: '0.5', access: 'read', conditions: 'yeast' },
    ]
    expect(describeWith({}, ...rows).contested).toEqual([])
    expect(describeWith({}, ...rows.map((row) => ({ ...row, conditions: 'mould' }))).contested).toEqual([
      'inhibitory_level',
    ])
  })

  test('that another grade is no disagreement', () => {
    const rows = [
      { min: '2', max: '3', access: 'read', conditions: 'grade high oleic' },
      { min: '6', max: '8', access: 'read' },
    ]
    expect(describeWith({}, ...rows).contested).toEqual([])
  })
})

test('every contested property of the real data names a claim of the reply, or says that none decides', () => {
  const world = realWorld()
  const wrong = world.subjects.flatMap(({ id }) => {
    const { contested, decisions, claims } = describeIngredient(world, id)!
    const ids = new Set(claims.filter(({ used }) => used).map((claim) => claim.id))
    const told = decisions.filter(({ claim, why }) => why.length > 20 && (claim === null || ids.has(claim)))
    return told.map(({ property }) => property).join() === contested.join() ? [] : [id]
  })
  expect(wrong).toEqual([])
})
