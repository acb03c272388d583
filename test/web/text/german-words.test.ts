import { readdirSync, readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { ENGLISH, GERMAN } from './all-words.ts'
import { leavesOf, wordsIn } from './leaves.ts'

test('every group of English words has a German one, and the other way round', () => {
  const groups = readdirSync('web/text').flatMap((name) => /^en-(.+)\.ts$/.exec(name)?.[1] ?? [])
  expect(Object.keys(ENGLISH)).toHaveLength(groups.length)
  expect(Object.keys(GERMAN).sort()).toEqual([...Object.keys(ENGLISH), 'demos'].sort())
})

const groups = Object.keys(ENGLISH)

/** Alike in both languages: names, ids, and words that one has taken from the other. */
const ALIKE: Readonly<Record<string, readonly string[]>> = {
  batch: ['batch.weigh.phase'],
  bench: ['app.name', 'recipe.phase'],
  calculations: ['oils.source'],
  explorer: [0, 1, 2, 3, 4, 5].map((at) => `starts.${at}`).concat('whole.name'),
  facts: ['useNames.make-up'],
  label: ['allergens.name', 'positions.name'],
  learn: ['review.file'],
  lessons: ['seen'],
  records: ['ingredient.markets.eu', 'title'],
  swaps: Array.from({ length: 11 }, (_, at) => `wishes.classes.${at}.0`),
  teach: ['name', 'results.file', 'results.progressFault'],
}

/** Functions that take a code: what they say to codes is tested apart. */
const BY_CODE = ['batch.steps.time', 'fault']

const pathOf = (leaf: string): string => leaf.replace(/\(\d\)$/, '')

test.each(groups)('%s: the German says something wherever the English does', (group) => {
  const spoken = (words: unknown) =>
    new Set(leavesOf(words).flatMap(([path, said]) => (said === '' ? [] : [pathOf(path)])))
  const german = spoken(GERMAN[group])
  expect([...spoken(ENGLISH[group])].filter((path) => !german.has(path) && !BY_CODE.includes(path))).toEqual([])
})

test.each(groups)('%s: no German words are the English ones, but for those that are alike', (group) => {
  const english = new Map(leavesOf(ENGLISH[group]))
  const same = leavesOf(GERMAN[group])
    .filter(([path, said]) => wordsIn(said).length > 0 && english.get(path) === said)
    .map(([path]) => pathOf(path))
  expect([...new Set(same)].sort()).toEqual([...(ALIKE[group] ?? [])].sort())
})

test('German files share nothing but types with the rest of the page, so that they are one file of their own', () => {
  const german = readdirSync('web/text').filter((name) => /^de(-.+)?\.ts$/.test(name))
  const wrong = german.flatMap((name) => {
    const lines = readFileSync(`web/text/${name}`, 'utf8').match(/^(?:import|export) (?!type\b).* from .*$/gm) ?? []
    return lines.filter((line) => !/ from '\.\/de-[a-z-]+\.ts'$/.test(line)).map((line) => `${name}: ${line}`)
  })
  expect(german.length).toBeGreaterThan(20)
  expect(wrong).toEqual([])
})

test('nothing is promised that the English does not promise', () => {
  const promises = groups.flatMap((group) =>
    leavesOf(GERMAN[group]).filter(([, said]) => /\b(?:sicher(?:e[rsnm]?)?|zertifiziert|konform)\b/i.test(said)),
  )
  expect(promises).toEqual([])
})
