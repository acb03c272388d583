import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { buildKnowledge, LINTS } from '#engine/index.ts'
import type { Problem } from '#engine/model/records.ts'
import { isCasNumber } from '#engine/knowledge/lints/cas-has-check-digit.ts'
import { hlbOfEthoxylate } from '#engine/knowledge/lints/hlb-near-worked-out.ts'
import { DOUBT_LINTS, FAULT_LINTS } from '#engine/knowledge/lints/index.ts'
import { isDay } from '#engine/knowledge/lints/is-day.ts'
import { realRaw, realWorld } from '../helpers.ts'
import { EXCUSED } from './known-gaps.ts'
import { EXAMPLES_A_TO_K } from './lint-examples-a-to-k.ts'
import { EXAMPLES_L_TO_Z } from './lint-examples-l-to-z.ts'
import { rawOf } from './small-worlds.ts'
import type { Small } from './small-worlds.ts'

const EXAMPLES = { ...EXAMPLES_A_TO_K, ...EXAMPLES_L_TO_Z }

const problemsWith = (lint: string, small: Small): Problem[] => {
  const raw = rawOf(small)
  return LINTS[lint]!(raw, buildKnowledge(raw))
}

test('there are thirty lints and more, each with its pair of worlds and a file of its own', () => {
  expect(Object.keys(LINTS).length).toBeGreaterThanOrEqual(30)
  expect(Object.keys(EXAMPLES).sort()).toEqual(Object.keys(LINTS).sort())
  const files = readdirSync(fileURLToPath(new URL('../../server/engine/knowledge/lints', import.meta.url)))
  expect(Object.keys(LINTS).filter((id) => !files.includes(`${id}.ts`))).toEqual([])
})

test('a lint tells faults or doubts, not both', () => {
  expect(Object.keys(FAULT_LINTS).filter((id) => id in DOUBT_LINTS)).toEqual([])
  expect(Object.keys(LINTS)).toHaveLength(Object.keys(FAULT_LINTS).length + Object.keys(DOUBT_LINTS).length)
})

describe.each(Object.keys(LINTS))('%s', (id) => {
  const { good, bad, at, says } = EXAMPLES[id]!
  test('lets the good world pass', () => {
    expect(problemsWith(id, good)).toEqual([])
  })

  test('names place and fault of the bad one', () => {
    const problems = problemsWith(id, bad)
    expect(problems).toHaveLength(1)
    expect(problems[0]!.path).toMatch(at)
    expect(problems[0]!.message).toMatch(says)
  })
})

/** Sources that calculations of the program and tests against print name in their text. */
function namedInCode(): string {
  const root = fileURLToPath(new URL('../..', import.meta.url))
  const filesBelow = (folder: string): string[] =>
    readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
      entry.isDirectory() ? filesBelow(`${folder}/${entry.name}`) : [`${folder}/${entry.name}`],
    )
  const files = [`${root}server/engine`, `${root}test/published`, `${root}graph-data/lessons`].flatMap((folder) => {
    try {
      return filesBelow(folder)
    } catch {
      return []
    }
  })
  return files.map((file) => readFileSync(file, 'utf8')).join('\n')
}

describe('the real data', () => {
  const { knowledge } = realWorld()
  const isUnder = ({ path }: Problem, at: string): boolean =>
    path === at || (path.startsWith(at) && /^[/.]/.test(path.slice(at.length)))
  const excusesOf = (lint: string): string[] => EXCUSED.filter((one) => one.lint === lint).flatMap(({ at }) => at)
  const code = namedInCode()
  const problemsOf = (id: string): Problem[] => {
    const problems = LINTS[id]!(realRaw(), knowledge)
    if (id !== 'source-is-used') return problems
    return problems.filter(({ message }) => !code.includes(message.replace('nothing cites ', '')))
  }

  test.each(Object.keys(FAULT_LINTS))('are without fault: %s', (id) => {
    expect(problemsOf(id)).toEqual([])
    expect(excusesOf(id)).toEqual([])
  })

  test.each(Object.keys(DOUBT_LINTS))('meet no doubt that is not excused: %s', (id) => {
    const open = problemsOf(id).filter((problem) => !excusesOf(id).some((at) => isUnder(problem, at)))
    expect(open).toEqual([])
  })

  test('every excuse is still needed', () => {
    const stale = EXCUSED.flatMap(({ lint, at }) => {
      const problems = problemsOf(lint)
      return at.filter((place) => !problems.some((problem) => isUnder(problem, place))).map((place) => [lint, place])
    })
    expect(stale).toEqual([])
  })

  test('excuses give a reason, and there are no more of them than there were', () => {
    expect(EXCUSED.filter(({ reason }) => reason.length < 40)).toEqual([])
    const MOST = 110 // lower it with every gap that is closed; never raise it
    expect(EXCUSED.reduce((sum, { at }) => sum + at.length, 0)).toBe(MOST)
  })

  test('what the server runs at its start takes no longer than a blink', () => {
    const lints = Object.values(FAULT_LINTS)
    for (const lint of lints) lint(realRaw(), knowledge) // compiled and walked once, as at the start
    const before = process.cpuUsage()
    for (const lint of lints) lint(realRaw(), knowledge)
    const { user } = process.cpuUsage(before)
    expect(user / 1000).toBeLessThan(1000) // [ms]; 100 to 200 alone on the machine
  })
})

describe('CAS numbers', () => {
  // Printed on every bottle: glycerol, water, ethanol, sodium hydroxide, citric acid, cholesterol.
  test.each(['56-81-5', '7732-18-5', '64-17-5', '1310-73-2', '77-92-9', '57-88-5'])('%s holds', (cas) =>
    expect(isCasNumber(cas)).toBe(true),
  )
  test.each(['56-81-4', '7732-81-5', '56815', '056-81-5', '56-81-5 ', ''])('"%s" does not', (cas) =>
    expect(isCasNumber(cas)).toBe(false),
  )
})

describe('days', () => {
  test.each(['2024-02-29', '2000-02-29', '2026-12-31', '1900-01-01'])('%s is one', (day) =>
    expect(isDay(day)).toBe(true),
  )
  test.each(['2026-02-29', '1900-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '25.11.2026', '2026-1-1', 20260101])(
    '%s is none',
    (day) => expect(isDay(day)).toBe(false),
  )
})

describe('HLB by oxyethylene', () => {
  // hlb-guide-page and iupac-goldbook-15196 in graph-data/sources: printed values of grades with these names.
  test.each([
    ['steareth-2', 4.9],
    ['steareth-20', 15.3],
    ['ceteth-20', 15.7],
    ['laureth-23', 16.9],
    ['peg-8-stearate', 11.1],
    ['peg-40-stearate', 16.9],
  ] as const)('%s comes near the printed %d', (id, printed) =>
    expect(Math.abs(hlbOfEthoxylate(id)! - printed)).toBeLessThan(0.6),
  )
  test.each(['glycerin', 'polysorbate-20', 'peg-8', 'laureth', 'cetearyl-alcohol'])('%s is no such name', (id) =>
    expect(hlbOfEthoxylate(id)).toBeNull(),
  )
})

describe('further faults', () => {
  const problems = (lint: string, ingredient: Record<string, unknown>): string[] =>
    problemsWith(lint, { ...EXAMPLES['id-matches-name']!.good, ingredients: [ingredient] }).map(
      ({ message }) => message,
    )

  test('a name that the inventory does not have has to say why', () => {
    const ingredient = { id: 'moonstone-water', inci: 'MOONSTONE WATER', roles: [{ role: 'humectant' }] }
    expect(problems('id-matches-name', ingredient)).toEqual([expect.stringMatching(/not in the inventory/)])
    expect(problems('id-matches-name', { ...ingredient, not_in_inventory: 'a reason' })).toEqual([])
  })

  test('a file name that differs from the id is a fault', () => {
    const raw = rawOf(EXAMPLES['id-matches-name']!.good)
    raw.ingredients[0]!.path = 'ingredients/glycerol.yaml'
    const found = LINTS['id-matches-name']!(raw, buildKnowledge(raw))
    expect(found.map(({ message }) => message)).toEqual(['file name and id glycerin differ'])
  })

  test('a record without a role and one with an unknown role are faults', () => {
    const record = { id: 'glycerin', inci: 'GLYCERIN' }
    expect(problems('word-is-known', { ...record, roles: [] })).toEqual(['a record needs at least one role'])
    expect(problems('word-is-known', { ...record, roles: [{ role: 'humektant' }] })).toEqual([
      'role humektant is not known',
    ])
  })

  test('a caution names a step of the work that the batch sheet has', () => {
    const record = { id: 'glycerin', inci: 'GLYCERIN', roles: [{ role: 'humectant' }] }
    const caution = { says: 'dissolve warm', at: 'desolving' }
    expect(problems('word-is-known', { ...record, cautions: ['keep cool', caution] })).toEqual([
      'desolving is not one of dissolving, thickening',
    ])
    expect(problems('word-is-known', { ...record, cautions: [{ ...caution, at: 'dissolving' }] })).toEqual([])
  })

  test('a property, an access word and a level outside the vocabulary are faults', () => {
    const record = { id: 'glycerin', inci: 'GLYCERIN', roles: [{ role: 'humectant' }] }
    expect(problems('word-is-known', { ...record, facts: { colour_depth: 3 } })).toEqual([
      'property colour_depth is not known',
    ])
    expect(problems('source-is-listed', { ...record, seen: { source: 'practice', access: 'rumour' } })).toEqual([
      'access rumour is not a known word',
    ])
    const roles = [{ role: 'humectant', level_percent: { min: 1, max: 120 } }]
    expect(problems('level-is-in-order', { ...record, roles })).toEqual(['a level lies above 0 and at most at 100 %'])
  })

  test('practice that was read, and common practice with a source, cannot be', () => {
    const record = { id: 'glycerin', inci: 'GLYCERIN', roles: [{ role: 'humectant' }] }
    const seen = (source: string, access: string, kind = 'assertion') => ({
      ...record,
      facts: { ph_stability: { min: 3, max: 8, source, access, kind, locator: 'p. 1' } },
    })
    expect(problems('source-suits-access', seen('practice', 'read'))).toHaveLength(1)
    expect(problems('source-suits-access', seen('S-1', 'common-practice'))).toHaveLength(1)
    expect(problems('source-suits-access', seen('practice', 'common-practice', 'measured'))).toHaveLength(1)
    expect(problems('source-suits-access', seen('S-1', 'memory', 'law'))).toHaveLength(1)
    expect(problems('source-suits-access', seen('S-1', 'memory', 'measured'))).toEqual([])
  })
})
