import { describe, expect, test } from 'vitest'
import { checkFormula, phWindow } from '#engine/index.ts'
import { FORMULAS } from '../../formulas/read-formulas.ts'
import { makeFormula, realWorld } from '../../helpers.ts'

const world = realWorld()
const WASH = { 'decyl-glucoside': 12, 'sodium-benzoate': 0.5, glycerin: 3 }

describe('a wash with benzoate', () => {
  const reply = phWindow(world, makeFormula(WASH, { ph: 4.5 }))
  test('is held from below by what keeps and from above by what works', () => {
    expect(reply.window).toEqual({ min: 4, max: 5 })
    expect(reply.low!.setBy.map(({ ingredient, kind }) => [ingredient, kind])).toEqual([['decyl-glucoside', 'keeps']])
    expect(reply.high!.setBy.map(({ ingredient, kind }) => [ingredient, kind])).toEqual([['sodium-benzoate', 'works']])
  })
  test('keeps what keeps and what works apart', () => {
    expect(reply.keeps.window).toEqual({ min: 4, max: 12 })
    expect(reply.works.window).toEqual({ min: 2, max: 5 })
  })
  test('shows the claim behind each end, with source and how it was seen', () => {
    const [end] = reply.high!.setBy
    expect(end!.claim).toMatchObject({ property: 'ph_effective', max: 5, source: 'HPE_SB', access: 'read' })
    expect(reply.sources).toContain('HPE_SB')
  })
  test('names the lines of which no window is known, water aside', () => {
    expect(reply.unknown).toEqual(['glycerin'])
    expect(reply.notes.join(' ')).toMatch(/not known/)
  })
  test('has its own pH inside', () => expect(reply.ph).toEqual({ value: 4.5, verdict: 'inside', objections: [] }))
})

test('a pH outside is told with who objects and by how much', () => {
  const { ph } = phWindow(world, makeFormula(WASH, { ph: 6 }))
  expect(ph.verdict).toBe('outside')
  expect(ph.objections.map(({ ingredient, kind, distance_ph }) => [ingredient, kind, distance_ph])).toEqual([
    ['sodium-benzoate', 'works', 1],
  ])
})

test('a pH that nobody stated is not known, and so is one that no line speaks about', () => {
  expect(phWindow(world, makeFormula(WASH, { ph: null })).ph.verdict).toBe('not-known')
  const bare = phWindow(world, makeFormula({ glycerin: 3 }, { ph: 5 }))
  expect(bare.ph.verdict).toBe('not-known')
  expect(bare.window).toEqual({})
})

test('lines that exclude each other leave a gap and are named', () => {
  const reply = phWindow(world, makeFormula({ 'sodium-benzoate': 0.5, carbomer: 0.3 }, { ph: 5 }))
  const soap = phWindow(world, makeFormula({ 'sodium-benzoate': 0.5, 'sodium-cocoate': 20 }, { ph: 9 }))
  for (const { window, excludes, low, high, gap } of [soap]) {
    expect(window).toBeNull()
    expect(excludes[0]!.lower.ingredient).toBe('sodium-benzoate')
    expect(excludes[0]!.upper.ingredient).toBe('sodium-cocoate')
    expect(gap).toEqual({ min: high!.ph, max: low!.ph })
    expect(excludes[0]!.gap).toEqual(gap)
  }
  expect(reply.window).toEqual({ min: 5, max: 5 })
})

test('without water there is no pH, and that is said', () => {
  expect(phWindow(world, makeFormula({ 'caprylic-capric-triglyceride': 100 }, { fill: null })).notes[0]).toMatch(
    /no water phase/,
  )
})

test.each(FORMULAS.map(({ name, formula }) => [name, formula] as const))(
  '%s: the check reports the same common window',
  (_, formula) => {
    expect(phWindow(world, formula).window).toEqual(checkFormula(world, formula).common_ph)
  },
)
