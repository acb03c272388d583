import { describe, expect, test } from 'vitest'
import { catalogueOf } from '#engine/words/catalogue.ts'
import { english, german, templateOf } from '#engine/words/say.ts'
import type { Say } from '#engine/words/say.ts'

const say = german(
  catalogueOf([
    [
      { en: '{1} is used up to about {2} %', de: 'bis etwa {2} % verwendet: {1}' },
      { en: 'lip', de: 'Lippen' },
      { en: 'pH {1}', de: 'pH {1}' },
    ],
    [{ en: 'lip', de: 'ein zweites Wort' }, { en: 'a line without German' }, 'no pair'],
  ]),
)

const level = (speak: Say, name: string, most: number): string =>
  speak`${name} is used up to about ${speak.short(most)} %`

describe('a marked sentence', () => {
  test('is English as it stands where it belongs', () =>
    expect(level(english, 'Carbomer', 0.75)).toBe('Carbomer is used up to about 0.75 %'))
  test('takes its values in the order of the German sentence', () =>
    expect(level(say, 'Carbomer', 0.75)).toBe('bis etwa 0,75 % verwendet: Carbomer'))
  test('is said in English where the catalogue has nothing', () =>
    expect(say`nothing for ${'Carbomer'} yet`).toBe('nothing for Carbomer yet'))
  test('says a second value of the same sentence anew', () =>
    expect([1, 2].map((most) => level(say, 'Algin', most))).toEqual([
      'bis etwa 1 % verwendet: Algin',
      'bis etwa 2 % verwendet: Algin',
    ]))
  test('keeps a value that looks like a place for one', () =>
    expect(level(say, '{2}', 3)).toBe('bis etwa 3 % verwendet: {2}'))
  test('is known to catalogues by its text with numbered places', () => {
    expect(templateOf(['', ' is used up to about ', ' %'])).toBe('{1} is used up to about {2} %')
    expect(templateOf(['no value'])).toBe('no value')
  })
})

describe('figures', () => {
  test('have a point in English and a comma in German', () => {
    expect([english`pH ${5.5}`, say`pH ${5.5}`]).toEqual(['pH 5.5', 'pH 5,5'])
    expect([english.short(12.345), say.short(12.345)]).toEqual(['12.3', '12,3'])
  })
  test('of a thousand and more keep their digits together', () => expect(say.short(12345)).toBe('12300'))
  test.each([
    [{ min: 3, max: 5.5 }, '3 to 5.5', '3 bis 5,5'],
    [{ max: 5.5 }, 'at most 5.5', 'höchstens 5,5'],
    [{ min: 3.5 }, 'from 3.5', 'ab 3,5'],
    [{ min: 4.5, max: 4.5 }, '4.5', '4,5'],
  ])('%o is a range in words', (range, inEnglish, inGerman) => {
    expect([english.range(range), say.range(range)]).toEqual([inEnglish, inGerman])
  })
  test('a range without an end says that it has none', () =>
    expect([english.range({}), say.range({})]).toEqual(['at most ?', 'höchstens ?']))
})

describe('words', () => {
  test('of the data are looked up, the first of two equal entries counts', () => {
    expect([english.text('lip'), say.text('lip')]).toEqual(['lip', 'Lippen'])
    expect(say.text('eye')).toBe('eye')
    expect(say.text('a line without German')).toBe('a line without German')
  })
  test('have an article in English, none for what is many, and none in German, which would need the gender', () => {
    expect(['emulsifier', 'base', 'ions', 'glass'].map(english.article)).toEqual([
      'an emulsifier',
      'a base',
      'ions',
      'a glass',
    ])
    expect(say.article('Emulgator')).toBe('Emulgator')
  })
  test.each([
    [[], '', ''],
    [['a'], 'a', 'a'],
    [['a', 'b'], 'a and b', 'a und b'],
    [['a', 'b', 'c'], 'a, b and c', 'a, b und c'],
  ])('%j is a list', (words, inEnglish, inGerman) => {
    expect([english.list(words, 'and'), say.list(words, 'and')]).toEqual([inEnglish, inGerman])
  })
  test('of a choice are joined by or', () =>
    expect([english.list(['a', 'b'], 'or'), say.list(['a', 'b'], 'or')]).toEqual(['a or b', 'a oder b']))
})

test('each language says which it is', () => expect([english.language, say.language]).toEqual(['en', 'de']))
