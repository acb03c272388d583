import { describe, expect, test } from 'vitest'
import { LINTS } from '#engine/index.ts'
import type { RawData } from '#engine/index.ts'
import type { Vocabulary } from '#engine/knowledge/lints/lint.ts'
import { makeKnowledge, makeRaw, realRaw, realWorld } from '../helpers.ts'
import type { Parts } from '../helpers.ts'

const AROUND: Parts = {
  roles: { humectant: { label: 'Humectant' } },
  classes: { polyol: { group: 'chemistry' } },
  inventory: [{ id: 'glycerin', inci: 'GLYCERIN', cas: [], functions: [] }],
  sources: [{ source_id: 'S-1', title: 'A book' }],
}

const GOOD = { id: 'glycerin', inci: 'GLYCERIN', roles: [{ role: 'humectant' }] }

/** One good and one bad record for every lint; the words that the fault has to name. */
const EXAMPLES: Record<string, { good: object; bad: object; names: RegExp; part?: keyof Parts }> = {
  'blend-adds-up': {
    good: {
      ...GOOD,
      made_of: [
        { ingredient: 'a', share_percent: 60 },
        { ingredient: 'b', share_percent: 40 },
      ],
    },
    bad: {
      ...GOOD,
      made_of: [
        { ingredient: 'a', share_percent: 60 },
        { ingredient: 'b', share_percent: 20 },
      ],
    },
    names: /80 %, expected 100/,
  },
  'id-matches-name': { good: GOOD, bad: { ...GOOD, inci: 'GLYCEROL' }, names: /GLYCEROL gives the id glycerol/ },
  'range-is-ordered': {
    good: { ...GOOD, facts: { ph_stability: [3, 8] } },
    bad: { ...GOOD, facts: { ph_stability: [8, 3] } },
    names: /8 is above 3/,
  },
  'selector-is-known': {
    good: { ...GOOD, clashes: [{ with: 'class:polyol' }] },
    bad: { ...GOOD, clashes: [{ with: 'class:poliol' }] },
    names: /poliol in "class:poliol" is not known/,
  },
  'source-is-listed': {
    good: { ...GOOD, facts: { ph_stability: { min: 3, max: 8, source: 'S-1', access: 'read' } } },
    bad: { ...GOOD, facts: { ph_stability: { min: 3, max: 8, source: 'S-2', access: 'read' } } },
    names: /S-2 is in no list of sources/,
  },
  'word-is-known': {
    good: { ...GOOD, classes: ['polyol'], facts: { solubility: 'water' } },
    bad: { ...GOOD, classes: ['polyol'], facts: { solubility: 'watery' } },
    names: /watery is not one of/,
  },
}

const problemsWith = (lint: string, ingredient: object) => {
  const parts = { ...AROUND, ingredients: [ingredient as Record<string, unknown>] }
  return LINTS[lint]!(makeRaw(parts), makeKnowledge(parts) as Vocabulary)
}

test('every lint has its pair of records', () => {
  expect(Object.keys(EXAMPLES).sort()).toEqual(Object.keys(LINTS).sort())
})

describe.each(Object.keys(LINTS))('%s', (id) => {
  test('lets the good record pass', () => {
    expect(problemsWith(id, EXAMPLES[id]!.good)).toEqual([])
  })

  test('names file and fault of the bad record', () => {
    const problems = problemsWith(id, EXAMPLES[id]!.bad)
    expect(problems).toHaveLength(1)
    expect(problems[0]!.path).toMatch(/^ingredients\/glycerin\.yaml/)
    expect(problems[0]!.message).toMatch(EXAMPLES[id]!.names)
  })

  test('has nothing to say of the real data', () => {
    expect(LINTS[id]!(realRaw(), realWorld().knowledge as Vocabulary)).toEqual([])
  })
})

describe('further faults', () => {
  const problems = (parts: Parts): string[] =>
    makeKnowledge({ ...AROUND, ...parts }).problems.map(({ message }) => message)

  test('a name that the inventory does not have has to say why', () => {
    const ingredient = { id: 'moonstone-water', inci: 'MOONSTONE WATER', roles: [{ role: 'humectant' }] }
    expect(problems({ ingredients: [ingredient] })).toEqual([expect.stringMatching(/not in the inventory/)])
    expect(problems({ ingredients: [{ ...ingredient, not_in_inventory: 'a reason' }] })).toEqual([])
  })

  test('a file name that differs from the id is a fault', () => {
    const raw: RawData = makeRaw({ ...AROUND, ingredients: [GOOD] })
    raw.ingredients[0]!.path = 'ingredients/glycerol.yaml'
    const found = LINTS['id-matches-name']!(raw, makeKnowledge(AROUND) as Vocabulary)
    expect(found.map(({ message }) => message)).toEqual(['file name and id glycerin differ'])
  })

  test('a record without a role and one with an unknown role are faults', () => {
    expect(problems({ ingredients: [{ ...GOOD, roles: [] }] })).toEqual(['a record needs at least one role'])
    expect(problems({ ingredients: [{ ...GOOD, roles: [{ role: 'humektant' }] }] })).toEqual([
      'role humektant is not known',
    ])
  })

  test('a property, an access word and a level outside the vocabulary are faults', () => {
    expect(problems({ ingredients: [{ ...GOOD, facts: { colour_depth: 3 } }] })).toEqual([
      'property colour_depth is not known',
    ])
    expect(problems({ ingredients: [{ ...GOOD, seen: { source: 'practice', access: 'rumour' } }] })).toEqual([
      'access rumour is not a known word',
    ])
    expect(
      problems({ ingredients: [{ ...GOOD, roles: [{ role: 'humectant', level_percent: { min: 1, max: 120 } }] }] }),
    ).toEqual(['above 100 %'])
  })

  test('min above max is a fault in limits too', () => {
    const limit = { id: 'x', market: 'eu', rows: [{ scope: {}, ph: { min: 9, max: 7 } }] }
    expect(problems({ limits: [limit] })).toEqual(['min 9 is above max 7'])
  })
})
