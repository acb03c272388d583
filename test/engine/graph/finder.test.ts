import { describe, expect, test } from 'vitest'
import { realWorld } from '../../helpers.ts'

const world = realWorld()

describe('looking an ingredient up', () => {
  test('a blend is found whatever the order of its parts', () => {
    const id = 'cetearyl-olivate-and-sorbitan-olivate'
    expect(world.find('sorbitan-olivate-and-cetearyl-olivate')?.id).toBe(id)
    expect(world.find(id)?.id).toBe(id)
  })

  test('every alias leads to a record', () => {
    for (const [alias, id] of world.knowledge.aliases) expect(world.find(alias)?.id).toBe(id)
  })

  test('a name of the inventory comes with what its name and functions say, marked derived', () => {
    const found = world.find('artemisia-montana-leaf-extract')
    expect(found?.tier).toBe('inventory')
    expect(found?.roles.every(({ kind }) => kind === 'derived')).toBe(true)
  })

  test('a blend that nobody recorded takes roles and classes of its parts and no figures', () => {
    const found = world.find('glycerin-and-panthenol')!
    expect(found.parts.map(({ subject }) => subject.id)).toEqual(['glycerin', 'panthenol'])
    expect([...found.classes]).toEqual(expect.arrayContaining([...world.find('glycerin')!.classes]))
    expect(found.facts.has('ph_stability')).toBe(false)
  })

  test('what no list knows is not found', () => {
    expect(world.find('unobtainium')).toBeNull()
    expect(world.find('glycerin-and-unobtainium')).toBeNull()
    expect(world.find('')).toBeNull()
  })

  test('every record finds itself, and its parts make up the whole', () => {
    for (const subject of world.subjects) {
      expect(world.find(subject.id)).toBe(subject)
      const whole = subject.parts.reduce((sum, { share }) => sum + share, 0)
      expect(Math.abs(whole - 1)).toBeLessThan(0.006)
    }
  })

  test('players of a role are those that play it or a narrower one', () => {
    for (const role of ['emollient', 'surfactant', 'thickener']) {
      const below = new Set(world.roles.below(role))
      const expected = world.subjects.filter((s) => s.roles.some((claim) => below.has(claim.role)))
      expect(world.players(role).map(({ id }) => id)).toEqual(expected.map(({ id }) => id))
    }
  })
})
