import { describe, expect, test } from 'vitest'
import { buildKnowledge } from '#engine/index.ts'
import { isByProgram } from '#engine/model/evidence.ts'
import type { Claim } from '#engine/model/records.ts'
import { makeRaw, realWorld } from '../../helpers.ts'
import type { Parts } from '../../helpers.ts'

const SEEN = { source: 'memory', locator: 'formulating knowledge', access: 'memory', date: '2026-01-31' }
const READ = { source: 'S-1', locator: 'p. 7', access: 'read', kind: 'measured', date: '2026-02-01' }

interface About {
  classes?: object
  roles?: object
}

/** One record in a small world whose classes and roles state things about their members. */
function recordIn(about: About, change: Record<string, unknown> = {}, parts: Parts = {}) {
  const roles = { surfactant: { label: 'Surfactant' }, wash: { label: 'Wash', broader: 'surfactant' } }
  const raw = makeRaw({
    ...parts,
    ingredients: [
      {
        id: 'sodium-lauryl-sulfate',
        inci: 'SODIUM LAURYL SULFATE',
        seen: SEEN,
        classes: ['alkyl-sulfate', 'anionic'],
        roles: [{ role: 'wash' }],
        ...change,
      },
    ],
  })
  const classes = { 'alkyl-sulfate': { group: 'chemistry' }, anionic: { group: 'charge' } }
  const built = buildKnowledge({
    ...raw,
    classes: { path: 'classes.yaml', data: { seen: SEEN, classes, facts: about.classes ?? {} } },
    roles: { path: 'roles.yaml', data: { seen: SEEN, roles, facts: about.roles ?? {} } },
  })
  return built.ingredients.get('sodium-lauryl-sulfate')!
}
const claimsOf = (record: ReturnType<typeof recordIn>, property: string): Claim[] => record.facts.get(property) ?? []

describe('what a class states about its members', () => {
  test('holds of a member that states none of its own, which says by which class', () => {
    const [claim, ...others] = claimsOf(
      recordIn({ classes: { 'alkyl-sulfate': { solubility: 'water' } } }),
      'solubility',
    )
    expect(others).toEqual([])
    expect(claim).toMatchObject({
      id: 'sodium-lauryl-sulfate#solubility/class',
      is: 'water',
      kind: 'derived',
      used: true,
      source: 'memory',
      access: 'memory',
      date: '2026-01-31',
      locator: 'as a member of class alkyl-sulfate (formulating knowledge)',
    })
    expect(isByProgram(claim!)).toBe(true)
  })
  test('gives way to the own statement of a member', () => {
    const record = recordIn({ classes: { 'alkyl-sulfate': { solubility: 'water' } } }, { solubility: 'both' })
    expect(claimsOf(record, 'solubility').map(({ is }) => is)).toEqual(['both'])
  })
  test('gives way to a figure of a table about the member itself', () => {
    const tables = [
      {
        path: 'tables/by-hand.tsv',
        rows: [
          { inci: 'SODIUM LAURYL SULFATE', property: 'ph_stability', min: '5', max: '9', unit: 'pH', access: 'read' },
        ],
      },
    ]
    const record = recordIn({ classes: { 'alkyl-sulfate': { ph_stability: [4, 11] } } }, {}, { tables })
    expect(claimsOf(record, 'ph_stability').map(({ min, max }) => [min, max])).toEqual([[5, 9]])
  })
  test('is not taken over where two classes disagree, and is where they agree', () => {
    const differ = { 'alkyl-sulfate': { ph_stability: [4, 11] }, anionic: { ph_stability: [5, 9] } }
    expect(claimsOf(recordIn({ classes: differ }), 'ph_stability')).toEqual([])
    const same = { 'alkyl-sulfate': { ph_stability: [4, 11] }, anionic: { ph_stability: { min: 4, max: 11 } } }
    expect(claimsOf(recordIn({ classes: same }), 'ph_stability')).toHaveLength(1)
  })
  test('comes from the better seen of two that agree, with its source', () => {
    const facts = {
      'alkyl-sulfate': { ph_stability: [4, 11] },
      anionic: { ph_stability: { min: 4, max: 11, ...READ } },
    }
    expect(claimsOf(recordIn({ classes: facts }), 'ph_stability')[0]).toMatchObject({
      source: 'S-1',
      access: 'read',
      locator: 'as a member of class anionic (p. 7)',
    })
  })
  test('may be several claims, of which the first decides', () => {
    const facts = { 'alkyl-sulfate': { heat_max_c: [{ value: 90 }, { value: 80, ...READ }] } }
    expect(
      claimsOf(recordIn({ classes: facts }), 'heat_max_c').map(({ id, value, used }) => [id, value, used]),
    ).toEqual([
      ['sodium-lauryl-sulfate#heat_max_c/class', 90, true],
      ['sodium-lauryl-sulfate#heat_max_c/class-2', 80, false],
    ])
  })
  test('may hold of members of one form or solubility only', () => {
    const facts = { 'alkyl-sulfate': { active_percent: { min: 28, max: 30, only: { form: 'liquid' } } } }
    expect(claimsOf(recordIn({ classes: facts }, { form: 'liquid' }), 'active_percent')).toHaveLength(1)
    expect(claimsOf(recordIn({ classes: facts }, { form: 'powder' }), 'active_percent')).toEqual([])
    expect(claimsOf(recordIn({ classes: facts }), 'active_percent')).toEqual([])
  })
  test('of a mixture is its form and where it dissolves, not what depends on the other parts', () => {
    const facts = { 'alkyl-sulfate': { solubility: 'water', ph_stability: [4, 11] } }
    const record = recordIn({ classes: facts }, { inci: 'SODIUM LAURYL SULFATE (and) CETEARYL ALCOHOL' })
    expect([claimsOf(record, 'solubility').length, claimsOf(record, 'ph_stability').length]).toEqual([1, 0])
  })
})

describe('what a role states about its players', () => {
  test('holds of those whose first role is below it', () => {
    expect(claimsOf(recordIn({ roles: { surfactant: { solubility: 'water' } } }), 'solubility')[0]).toMatchObject({
      is: 'water',
      locator: 'as a member of role surfactant (formulating knowledge)',
    })
  })
  test('gives way to what a nearer role states', () => {
    const facts = { surfactant: { form: 'liquid' }, wash: { form: 'powder' } }
    expect(claimsOf(recordIn({ roles: facts }), 'form').map(({ is }) => is)).toEqual(['powder'])
  })
  test('does not hold of who plays it beside another', () => {
    const record = recordIn({ roles: { surfactant: { form: 'liquid' } } }, { roles: [{ role: 'x' }, { role: 'wash' }] })
    expect(claimsOf(record, 'form')).toEqual([])
  })
  test('and a class that says otherwise cancel each other', () => {
    const about = { roles: { wash: { form: 'liquid' } }, classes: { anionic: { form: 'solid' } } }
    expect(claimsOf(recordIn(about), 'form')).toEqual([])
  })
})

describe('the real records', () => {
  const { knowledge } = realWorld()
  const decided = (id: string, property: string) =>
    knowledge.ingredients
      .get(id)!
      .facts.get(property)!
      .find(({ used }) => used)!

  test('say by which class or role they take a value over', () => {
    for (const one of knowledge.ingredients.values()) {
      const taken = [...one.facts.values()].flat().filter(({ id }) => /\/class(-\d+)?$/.test(id))
      for (const claim of taken) {
        const [, kind, group] = /^as a member of (class|role) ([a-z0-9-]+)/.exec(claim.locator) ?? []
        expect([one.id, kind === 'class' ? one.classes.has(group!) : knowledge.roles.has(group!)]).toEqual([
          one.id,
          true,
        ])
        expect([one.id, claim.kind]).toEqual([one.id, 'derived'])
      }
    }
  })
  // Any formulary: soap is a salt of a weak acid and clots below pH 9; esters of acids of two bases keep acid.
  test('soaps keep alkaline only, ester quats acid only', () => {
    expect(decided('sodium-cocoate', 'ph_stability').min).toBeGreaterThanOrEqual(8.5)
    expect(decided('distearoylethyl-hydroxyethylmonium-methosulfate', 'ph_stability').max).toBeLessThanOrEqual(6)
  })
})
