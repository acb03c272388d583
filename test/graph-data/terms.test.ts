import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { attributionFor, termsTexts } from '#engine/knowledge/expand-terms.ts'
import { realWorld } from '../helpers.ts'

const README = readFileSync(join(import.meta.dirname, '../../graph-data/README.md'), 'utf8')
const { terms, sources } = realWorld().knowledge

describe('terms of the data', () => {
  test('are the same in the file that downloads carry and in the one that people read', () => {
    const section = README.slice(README.indexOf('## Terms and attributions'))
    const written = section
      .split('\n')
      .slice(1)
      .flatMap((line) => (line.trim() === '' ? [] : [line.replace(/^- /, '')]))
    expect(termsTexts(terms)).toEqual(written)
  })
  test('name only sources that are listed', () => {
    const ids = terms.attributions.flatMap((one) => one.sources)
    expect(ids.filter((id) => !sources.has(id))).toEqual([])
  })
  test('are found for each of several sources, and the rest has none of its own', () => {
    expect(attributionFor(terms, 'CHITRE2024')?.id).toBe('mixtures')
    expect(attributionFor(terms, 'practice; IUPAC-PKA')).toMatchObject({ id: 'acid-constants', singleOnly: true })
    expect(attributionFor(terms, 'practice')).toBeUndefined()
    expect(attributionFor(terms, 'invented')).toBeUndefined()
  })
})
