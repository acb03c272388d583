import { describe, expect, test } from 'vitest'
import { euName, titleCase, usName } from '#engine/label/label-names.ts'
import { realWorld } from '../../helpers.ts'

const { knowledge } = realWorld()
const of = (id: string) => realWorld().find(id)!

describe('a name on a label', () => {
  test.each([
    ['PEG-40 HYDROGENATED CASTOR OIL', 'PEG-40 Hydrogenated Castor Oil'],
    ['CAPRYLIC/CAPRIC TRIGLYCERIDE', 'Caprylic/Capric Triglyceride'],
    ['C12-15 ALKYL BENZOATE', 'C12-15 Alkyl Benzoate'],
    ['TETRASODIUM EDTA', 'Tetrasodium EDTA'],
    ['1,2-HEXANEDIOL', '1,2-Hexanediol'],
    ['COCO-GLUCOSIDE', 'Coco-Glucoside'],
    ['ROSE FLOWER OIL/EXTRACT', 'Rose Flower Oil/Extract'],
    ['ETHYL LAUROYL ARGINATE HCL', 'Ethyl Lauroyl Arginate HCl'],
  ])('%s is written %s', (inci, written) => expect(titleCase(inci)).toBe(written))
})

describe('the EU name', () => {
  test('is the common name of the glossary', () => {
    expect(euName(of('aqua'), knowledge)).toBe('Aqua')
    expect(euName(of('parfum'), knowledge)).toBe('Parfum')
    expect(euName(of('cera-alba'), knowledge)).toBe('Cera Alba')
    expect(euName(of('simmondsia-chinensis-seed-oil'), knowledge)).toBe('Simmondsia Chinensis Seed Oil')
  })
  test('of a colour is its number, of a lake the same', () => {
    expect(euName(of('ci-77491'), knowledge)).toBe('CI 77491')
    expect(euName(of('ci-16035-lake'), knowledge)).toBe('CI 16035')
    expect(euName(of('titanium-dioxide'), knowledge, true)).toBe('CI 77891')
    expect(euName(of('titanium-dioxide'), knowledge)).toBe('Titanium Dioxide')
  })
})

describe('the US name', () => {
  test('is the English common name', () => {
    expect(usName(of('aqua'), knowledge)).toBe('Water')
    expect(usName(of('parfum'), knowledge)).toBe('Fragrance')
    expect(usName(of('cera-alba'), knowledge)).toBe('Beeswax')
  })
  test('of a plant has the common name behind the Latin one, the longest Latin name first', () => {
    expect(usName(of('simmondsia-chinensis-seed-oil'), knowledge)).toBe('Simmondsia Chinensis (Jojoba) Seed Oil')
    expect(usName(of('citrus-aurantium-bergamia-peel-oil'), knowledge)).toBe(
      'Citrus Aurantium Bergamia (Bergamot) Peel Oil',
    )
    expect(usName(of('euphorbia-cerifera-cera'), knowledge)).toBe('Euphorbia Cerifera (Candelilla) Wax')
  })
  test('of a colour is that of the colour additive list', () => {
    expect(usName(of('ci-77491'), knowledge)).toBe('Iron Oxides')
    expect(usName(of('ci-19140-lake'), knowledge)).toBe('FD&C Yellow No. 5 Aluminum Lake')
  })
  test('is given for every record, and no name is empty', () => {
    const bad = realWorld().subjects.filter((subject) => usName(subject, knowledge).trim() === '')
    expect(bad).toEqual([])
  })
  test('stands in the table only for what is on record or begins a recorded name', () => {
    const rows = knowledge.tables.get('label-names') ?? []
    const ids = realWorld().subjects.map(({ id }) => id)
    const odd = rows
      .filter((row) =>
        row['kind'] === 'latin'
          ? !ids.some((id) => id.startsWith(`${row['of']?.replaceAll(' ', '-')}-`))
          : !ids.includes(row['of'] ?? ''),
      )
      .map((row) => row['of'])
    expect(odd).toEqual([])
  })
})
