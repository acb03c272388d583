import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { realWorld } from '../../helpers.ts'
import { templatesIn } from './templates.ts'

const german = realWorld().knowledge.languages.get('de') ?? new Map<string, string>()

/** Places for values in a text, each once, in order. */
const placesOf = (text: string): string[] => [...new Set(text.match(/\{\d+\}/g) ?? [])].sort()

describe.each(['checks', 'formula'])('sentences of %s', (folder) => {
  const templates = templatesIn(fileURLToPath(new URL(`../../../server/engine/${folder}`, import.meta.url)))

  test('are found', () => expect(templates.length).toBeGreaterThan(0))
  test('all have German', () => {
    expect(templates.filter(({ text }) => !german.has(text))).toEqual([])
  })
})

test('German has the places of its English, and says each value', () => {
  const wrong = [...german].filter(([en, de]) => placesOf(en).join() !== placesOf(de).join())
  expect(wrong).toEqual([])
})

test('German ends with a full stop where its English does, and only there', () => {
  const ends = (text: string): boolean => text.endsWith('.') && !text.endsWith('DENAT.') // a short form
  expect([...german].filter(([en, de]) => ends(en) !== ends(de))).toEqual([])
})
