import { describe, expect, test } from 'vitest'
import { KINDS, makeQueries } from './name-queries.ts'
import { plainTrigrams } from './name-engines.ts'
import { graphEngine, scanEngine, screenEngine, traversalEngine } from './role-engines.ts'
import { makeGraph, makeQuestions } from './role-question.ts'
import { tableOf } from './section.ts'

const NAMES = [
  'glycerin',
  'xanthan gum',
  'sodium benzoate',
  'sodium lauryl sulfate',
  'cetearyl alcohol',
  'cetyl alcohol',
]

describe('questions about names', () => {
  const queries = makeQueries(NAMES, 60, 3)
  test('are the same for the same seed and others for another', () => {
    expect(makeQueries(NAMES, 60, 3)).toEqual(queries)
    expect(makeQueries(NAMES, 60, 4)).not.toEqual(queries)
  })
  test('are of six kinds, as many of each, and only exact ones are themselves a name', () => {
    for (const kind of KINDS) expect(queries.filter((query) => query.kind === kind)).toHaveLength(10)
    for (const { kind, text } of queries) expect(NAMES.includes(text)).toBe(kind === 'exact')
  })
  test('a plain search finds an exact name first', () => {
    const search = plainTrigrams(NAMES)
    for (const { kind, text, meant } of queries) if (kind === 'exact') expect(search(text)[0]).toBe(meant)
  })
})

describe('questions about roles', () => {
  const graph = makeGraph(400)
  const questions = makeQuestions(graph, 40)
  test('are about recipes whose lines do not clash', () => {
    for (const { missing, rest } of questions) {
      const classes = [missing, ...rest].map((id) => graph.ingredients[id]!.classes)
      for (const [n, one] of classes.entries()) {
        for (const other of classes.slice(n + 1)) {
          expect(one.some((a) => other.some((b) => graph.clashes[a]![b] === 1))).toBe(false)
        }
      }
    }
  })
  test('have one answer, whichever way it is sought', () => {
    const scan = questions.map(scanEngine(graph))
    expect(scan.flat().length).toBeGreaterThan(40)
    for (const engine of [screenEngine, graphEngine, traversalEngine])
      expect(questions.map(engine(graph))).toEqual(scan)
  })
})

test('a table shows heads of all rows, and a dash where a row has none', () => {
  expect(
    tableOf([
      { a: 'x', b: 1 },
      { a: 'yy', c: null },
    ]),
  ).toBe('a   b  c\nx   1  –\nyy  –  –')
})
