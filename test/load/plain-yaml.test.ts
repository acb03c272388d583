import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parse, stringify } from 'yaml'
import { NOT_PLAIN, plainYaml } from '#load/plain-yaml.ts'

const ROOT = join(import.meta.dirname, '../../graph-data')
const files = readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .sort()
const textOf = (name: string): string => readFileSync(join(ROOT, name), 'utf8')

/** What the library reads, or the sign that it refuses the text. */
function byLibrary(text: string): unknown {
  try {
    return parse(text)
  } catch {
    return 'refused'
  }
}

test('nearly all files of the data are plain; every tenth is read as the library reads it', () => {
  const texts = files.map(textOf)
  const read = texts.map(plainYaml)
  const plain = read.filter((value) => value !== NOT_PLAIN)
  expect(plain.length / files.length).toBeGreaterThan(0.98)
  const misread = files
    .filter((_, n) => read[n] !== NOT_PLAIN && n % 10 === 0)
    .filter((name) => {
      const text = textOf(name)
      return JSON.stringify(plainYaml(text)) !== JSON.stringify(parse(text))
    })
  expect(misread).toEqual([])
})

describe('a text', () => {
  test.each([
    ['a: 5\nb: 4.210\nc: -0.5', { a: 5, b: 4.21, c: -0.5 }],
    [
      'date: 2026-11-25\ncas: 56-81-5\nnr: 12a\nword: no',
      { date: '2026-11-25', cas: '56-81-5', nr: '12a', word: 'no' },
    ],
    ["says: 'it''s so' # remark\nb: \"x, y\"", { says: "it's so", b: 'x, y' }],
    [
      'list:\n  - { a: [1, x y], b: null }\n  - c: 1\n    d: 2\n',
      {
        list: [
          { a: [1, 'x y'], b: null },
          { c: 1, d: 2 },
        ],
      },
    ],
    ['a:\n- x\n- y\nb:', { a: ['x', 'y'], b: null }],
    ['a: one\n  two\nb: [x,\n  y]', { a: 'one two', b: ['x', 'y'] }],
    ['a: >-\n  one; \n  two', { a: 'one;  two' }],
    ['a: &x [1]\nb: *x', { a: [1], b: [1] }],
    ['with: class:cationic', { with: 'class:cationic' }],
  ])('%j is read', (text, value) => {
    expect(plainYaml(text)).toEqual(value)
    expect(parse(text)).toEqual(value)
  })
  test.each([
    'a: 1\na: 2',
    'a: !!str 5',
    'a: |\n  x',
    'a: "x\\ty"',
    'a: 0x1f',
    'a: ~',
    'a: .5',
    'a: [x',
    'a: b: c',
    '__proto__: 1',
    '? x',
    '--- \na: 1',
    'a: 1\n  b: 2',
    'a:\tx',
    'a: x\u00a0',
    'just words',
    '',
  ])('%j is left to the library', (text) => {
    expect(plainYaml(text)).toBe(NOT_PLAIN)
  })
})

const scalar = fc.oneof(
  fc.string({ maxLength: 12 }),
  fc.constantFrom(
    'a: b',
    "it's",
    ' x',
    'y ',
    '# z',
    'null',
    '1e3',
    '0x1',
    '2026-11-25',
    '-',
    '[a]',
    'a, b',
    'é',
    '&a',
    '*a',
    '',
  ),
  fc.integer(),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.boolean(),
  fc.constant(null),
)
const value = fc.letrec((tie) => ({
  any: fc.oneof({ depthSize: 'small' }, scalar, fc.array(tie('any'), { maxLength: 4 }), tie('map')),
  map: fc.dictionary(fc.oneof(fc.stringMatching(/^[a-z_]{1,6}$/), fc.string({ maxLength: 5 })), tie('any'), {
    maxKeys: 4,
  }),
}))

test('whatever the library writes is read back the same or not at all', () => {
  let plain = 0
  const styles = fc.record({
    collectionStyle: fc.constantFrom('any', 'block', 'flow'),
    lineWidth: fc.constantFrom(0, 20, 80),
  })
  fc.assert(
    fc.property(value.map, styles, (data, style) => {
      const read = plainYaml(stringify(data, style))
      if (read === NOT_PLAIN) return
      plain++
      expect(read).toEqual(data)
    }),
    { numRuns: 1000 },
  )
  expect(plain).toBeGreaterThan(100)
})

test('a spoilt text is read as the library reads it or not at all', () => {
  const texts = files.filter((_, n) => n % 40 === 0).map(textOf)
  const lines = texts.flatMap((text) => text.split('\n'))
  const piece = fc
    .tuple(fc.constantFrom(...texts), fc.nat(), fc.integer({ min: 1, max: 9 }))
    .map(([text, from, count]) => {
      const all = text.split('\n')
      const start = from % all.length
      return all.slice(start, start + count).join('\n')
    })
  const change = fc.tuple(fc.nat(), fc.nat(2), fc.constantFrom(...':,-#\'"{}[]&*!|>%@` \n?~0ea', ...lines.slice(0, 60)))
  let plain = 0
  fc.assert(
    fc.property(piece, fc.array(change, { maxLength: 3 }), (text, changes) => {
      let spoilt = text
      for (const [at, cut, put] of changes) {
        const place = at % (spoilt.length + 1)
        spoilt = spoilt.slice(0, place) + put + spoilt.slice(place + cut)
      }
      const read = plainYaml(spoilt)
      if (read === NOT_PLAIN) return
      plain++
      expect(read).toEqual(byLibrary(spoilt))
    }),
    { numRuns: 2500 },
  )
  expect(plain).toBeGreaterThan(250)
})
