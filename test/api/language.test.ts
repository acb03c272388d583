import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { buildApp } from '#api/app.ts'
import { languageOf } from '#api/plugins/language.ts'
import type { App } from '#api/routes/shared.ts'
import type { Finding } from '#engine/model/finding.ts'
import { makeFormula, realWorld } from '../helpers.ts'

// Weights and ranges as in RFC 9110, 12.5.4.
describe('the language a caller likes best', () => {
  test.each([
    [undefined, 'en'],
    ['*', 'en'],
    ['de', 'de'],
    ['de-AT, en;q=0.5', 'de'],
    ['en, de', 'en'],
    ['en;q=0.4, de;q=0.8', 'de'],
    ['fr, de;q=0.3', 'de'],
    ['fr', 'en'],
    ['de;q=0, fr', 'en'],
    ['DE-ch', 'de'],
    [';;,q=,de;q=x', 'en'],
  ])('of %s is %s', (header, language) => expect(languageOf(header)).toBe(language))
})

describe('POST /api/check', () => {
  let app: App
  beforeAll(async () => {
    app = await buildApp({ world: realWorld(), rateLimit: false })
  }, 120_000)
  afterAll(() => app.close())

  // pKa 4.20: one part in 630 is acid at pH 7.
  const formula = makeFormula({ 'sodium-benzoate': 0.5, glycerin: 3 }, { ph: 7 })
  const ask = (language?: string) =>
    app.inject({
      method: 'POST',
      url: '/api/check',
      headers: { ...(language !== undefined && { 'accept-language': language }) },
      payload: { formula },
    })
  const findingsOf = (reply: Awaited<ReturnType<typeof ask>>) => reply.json<{ findings: Finding[] }>().findings

  test('answers in German where that is asked for, and says so', async () => {
    const [plain, german] = [await ask(), await ask('de')]
    expect(plain.headers['content-language']).toBe('en')
    expect(german.headers['content-language']).toBe('de')
    const message = (findings: Finding[]) => findings.find(({ rule }) => rule === 'preservative-window')?.message
    expect(message(findingsOf(plain))).toMatch(/preserves at pH 2 to 5; at pH 7 only 0\.16 % of the benzoic acid/)
    expect(message(findingsOf(german))).toMatch(/konserviert bei pH 2 bis 5; bei pH 7 ist nur 0,16 % von Benzoic acid/)
  })

  test('finds the same in both', async () => {
    const bare = (findings: Finding[]) =>
      findings.map(({ rule, severity, about, sources }) => ({ rule, severity, about, sources }))
    expect(bare(findingsOf(await ask('de')))).toEqual(bare(findingsOf(await ask('en'))))
  })

  test('tells what stands between that replies differ by language and packing', async () => {
    const { headers } = await app.inject({
      method: 'GET',
      url: '/api/roles',
      headers: { 'accept-language': 'de', 'accept-encoding': 'gzip' },
    })
    expect(headers['content-encoding']).toBe('gzip')
    expect(String(headers['vary']).toLowerCase()).toMatch(/accept-language/)
    expect(String(headers['vary']).toLowerCase()).toMatch(/accept-encoding/)
  })
})
