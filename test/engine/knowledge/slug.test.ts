import { describe, expect, test } from 'vitest'
import { idOf } from '#engine/index.ts'
import { realWorld } from '../../helpers.ts'

describe('the id of a name', () => {
  test.each([
    ['AQUA', 'aqua'],
    ['PEG-40 HYDROGENATED CASTOR OIL', 'peg-40-hydrogenated-castor-oil'],
    ['CI 77891', 'ci-77891'],
    ['1,2-HEXANEDIOL', '1-2-hexanediol'],
    ['CAPRYLIC/CAPRIC TRIGLYCERIDE', 'caprylic-capric-triglyceride'],
    ['Cetearyl Olivate (and) Sorbitan Olivate', 'cetearyl-olivate-and-sorbitan-olivate'],
    ['CETEARYL OLIVATE + SORBITAN OLIVATE', 'cetearyl-olivate-and-sorbitan-olivate'],
  ])('%s is %s', (inci, id) => expect(idOf(inci)).toBe(id))

  test('of an id is the id', () => {
    for (const id of ['aqua', 'ci-77891', 'cetearyl-olivate-and-sorbitan-olivate']) expect(idOf(id)).toBe(id)
  })

  test('no two names of the inventory share an id', () => {
    const { inventory } = realWorld().knowledge
    for (const row of inventory.values()) expect(idOf(row.inci)).toBe(row.id)
  })
})
