import { describe, expect, test } from 'vitest'
import { catalogueOf } from '#engine/words/catalogue.ts'
import { realRaw } from '../../helpers.ts'

interface Pair {
  en: string
  de: string
}

const files = realRaw().languages?.['de'] ?? []
const pairs = files.flatMap(({ path, data }) => (data as Pair[]).map((pair) => ({ path, ...pair })))
const places = (text: string): string[] => [...text.matchAll(/\{\d+\}/g)].map(([place]) => place).sort()

describe('the German catalogue', () => {
  test('gives one English sentence one German one, wherever it stands', () => {
    const german = new Map<string, string>()
    const differing = pairs.filter(({ en, de }) => {
      const known = german.get(en)
      german.set(en, known ?? de)
      return known !== undefined && known !== de
    })
    expect(differing).toEqual([])
  })

  test('names no value that the English sentence does not have', () => {
    const foreign = pairs.filter(({ en, de }) => places(de).some((place) => !places(en).includes(place)))
    expect(foreign).toEqual([])
  })

  test('leaves nothing empty', () => expect(pairs.filter(({ en, de }) => en === '' || de.trim() === '')).toEqual([]))

  test('promises nothing that nobody can know', () => {
    const promises = /\b(sicher|unbedenklich|zertifiziert|konform|garantiert)\b/i
    expect(pairs.filter(({ de }) => promises.test(de)).map(({ de }) => de)).toEqual([])
  })
})

test('a catalogue takes the first of two pairs and passes over what is none', () => {
  const catalogue = catalogueOf([[{ en: 'a', de: 'x' }, { en: 'a', de: 'y' }, { en: 'b' }, 3], 'no list', null])
  expect([...catalogue]).toEqual([['a', 'x']])
})
