import { describe, expect, test } from 'vitest'
import { matches, namesIn } from '#engine/knowledge/selector.ts'

const SLES = {
  id: 'sodium-laureth-sulfate',
  classes: new Set(['anionic', 'ether-sulfate']),
  allRoles: new Set(['primary-surfactant', 'surfactant']),
}

describe('a selector', () => {
  test.each([
    ['sodium-laureth-sulfate', true],
    ['sodium-laureth', false],
    ['class:anionic', true],
    ['class:cationic', false],
    ['role:surfactant', true],
    ['role:emulsifier', false],
    ['class:anionic&role:surfactant', true],
    ['class:anionic & role:surfactant', true],
    ['class:anionic&role:emulsifier', false],
    ['!class:cationic', true],
    ['class:anionic&!class:ether-sulfate', false],
    ['class:anionic&!sodium-lauryl-sulfate', true],
  ])('%s: %s', (selector, holds) => expect(matches(selector, SLES)).toBe(holds))

  test('names what it mentions, whether wanted or not', () => {
    expect(namesIn('class:anionic&!role:emulsifier&!aqua')).toEqual({
      classes: ['anionic'],
      roles: ['emulsifier'],
      ids: ['aqua'],
    })
  })
})
