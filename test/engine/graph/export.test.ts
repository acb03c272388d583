import { DOMParser } from '@xmldom/xmldom'
import { MultiDirectedGraph } from 'graphology'
import * as gexf from 'graphology-gexf'
import * as graphml from 'graphology-graphml'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { csvOf } from '#engine/graph/csv.ts'
import { exportClaims } from '#engine/graph/export-claims.ts'
import { exportGraph } from '#engine/graph/export-graph.ts'
import type { Flat, FlatGraph } from '#engine/graph/export-graph.ts'
import { writeGraph } from '#engine/graph/write-graph.ts'
import { makeWorld, realWorld } from '../../helpers.ts'

/** What an XML parser has to say against a text. */
function faultsOf(xml: string): string[] {
  const faults: string[] = []
  const note = (message: string) => void faults.push(message)
  new DOMParser({ errorHandler: { warning: note, error: note, fatalError: note } }).parseFromString(xml, 'text/xml')
  return faults
}

const part = (): FlatGraph => exportGraph(realWorld(), { around: 'sodium-benzoate', steps: 1 })!

const attributesOf = (graph: FlatGraph): [string, Flat][] => [
  ...graph.mapNodes((id, attributes): [string, Flat] => [id, attributes]),
  ...graph.mapEdges((id, attributes): [string, Flat] => [id, attributes]),
]

describe('a graph to be read by others', () => {
  const graph = part()
  test('holds what the neighbourhood holds, with windows and evidence', () => {
    expect(graph.getNodeAttributes('sodium-benzoate')).toMatchObject({
      label: 'SODIUM BENZOATE',
      kind: 'ingredient',
      solubility: 'water',
      cas: '532-32-1',
    })
    const limited = graph.findEdge((_id, { relation }) => relation === 'limited-by')!
    expect(graph.getEdgeAttributes(limited)).toMatchObject({ evidence: 'law', access: 'read' })
  })
  test('carries version, licence and every attribution', () => {
    const { version, terms } = realWorld().knowledge
    const own = graph.getAttributes()
    expect(own).toMatchObject({ version, licence: 'CC BY 4.0', around: 'sodium-benzoate' })
    for (const { text } of terms.attributions) expect(own['attributions']).toContain(text)
  })
  test('as JSON is read back by the library as it was', () => {
    const back: FlatGraph = new MultiDirectedGraph()
    back.import(JSON.parse(writeGraph(graph, 'json')) as never)
    expect(back.export()).toEqual(graph.export())
  })
  test('as GEXF is well-formed and read back as it was, terms in its description', () => {
    const text = writeGraph(graph, 'gexf')
    expect(faultsOf(text)).toEqual([])
    const back = gexf.parse(MultiDirectedGraph as never, text, { respectInputGraphType: true }) as unknown as FlatGraph
    const named = attributesOf(graph).map(([id, { ...attributes }]) => [id, attributes])
    const read = new Map(attributesOf(back))
    expect(back.order).toBe(graph.order)
    expect(back.size).toBe(graph.size)
    for (const [id, attributes] of named) expect(read.get(id as string)).toMatchObject(attributes as Flat)
    expect(back.getAttribute('description')).toContain('CC BY 4.0')
  })
  test('as GraphML is well-formed and read back as it was', () => {
    const text = writeGraph(graph, 'graphml')
    expect(faultsOf(text)).toEqual([])
    const back = graphml.parse(MultiDirectedGraph as never, text) as unknown as FlatGraph
    expect(attributesOf(back)).toEqual(attributesOf(graph))
    expect(back.getAttributes()).toMatchObject(graph.getAttributes())
    expect(back.extremities(back.edges()[0]!)).toEqual(graph.extremities(graph.edges()[0]!))
  })
})

test('the whole graph has every node and every stated edge', () => {
  const world = realWorld()
  const whole = exportGraph(world)!
  expect(whole.order).toBe(world.graph.order)
  expect(whole.size).toBe(world.graph.size)
  expect(exportGraph(world, { around: 'no-such-thing' })).toBeNull()
})

test('any text survives both forms of XML', () => {
  const text = fc.string({ unit: 'binary', maxLength: 20 }).map((one) => `${one}<&"'>]]>\t\n\r=`)
  fc.assert(
    fc.property(text, (says) => {
      const roles = { humectant: { label: says.trim() || 'x', says } }
      const world = makeWorld({ roles, ingredients: [{ id: 'urea', inci: 'UREA', roles: [{ role: 'humectant' }] }] })
      const graph = exportGraph(world)!
      const label = graph.getNodeAttribute('role:humectant', 'label')
      for (const format of ['gexf', 'graphml'] as const) expect(faultsOf(writeGraph(graph, format))).toEqual([])
      const back = graphml.parse(MultiDirectedGraph as never, writeGraph(graph, 'graphml')) as unknown as FlatGraph
      expect(back.getNodeAttribute('role:humectant', 'label')).toBe(label)
    }),
    { numRuns: 100 },
  )
})

/** Reads comma-separated text as RFC 4180 has it. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]]
  for (let at = 0; at < text.length; at++) {
    let cell = ''
    if (text[at] === '"') {
      for (at++; text[at] !== '"' || text[at + 1] === '"'; at++) {
        if (text[at] === '"') at++
        cell += text[at]
      }
      at++
    } else for (; at < text.length && text[at] !== ',' && text[at] !== '\r'; at++) cell += text[at]
    rows.at(-1)!.push(cell)
    if (text[at] === '\r') {
      at++
      if (at + 1 < text.length) rows.push([])
    }
  }
  return rows
}

describe('a table for spreadsheets', () => {
  test('quotes what needs it and ends lines as RFC 4180 has it', () => {
    expect(
      csvOf(
        ['a', 'b'],
        [
          ['x, "y"', 2],
          ['line\nend', undefined],
        ],
      ),
    ).toBe('a,b\r\n"x, ""y""",2\r\n"line\nend",\r\n')
  })
  test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '＝1'])('%j does not run as a formula', (text) => {
    expect(readCsv(csvOf(['a'], [[text]]))[1]![0]).toBe(`'${text}`)
  })
  test('a negative number stays a number', () => {
    expect(csvOf(['a'], [[-5.5]])).toBe('a\r\n-5.5\r\n')
  })
  test('any text is read back as it went out, but for the apostrophe', () => {
    const cell = fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom('=x', 'a,b', '"', '\r\n'))
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 4 }), (rows) => {
        const read = readCsv(csvOf(['a', 'b'], rows)).slice(1)
        const bare = read.map((row, n) => row.map((text, m) => (text === `'${rows[n]![m]!}` ? text.slice(1) : text)))
        expect(bare).toEqual(rows)
        for (const text of read.flat()) expect(text).not.toMatch(/^[=+\-@\t\r]/)
      }),
    )
  })
})

describe('claims as a table', () => {
  const world = realWorld()
  const all = readCsv(exportClaims(world))
  const column = (name: string) => all[0]!.indexOf(name)
  test('have a row a statement, each with origin, licence, attribution and version', () => {
    const rows = all.slice(1)
    expect(rows.length).toBeGreaterThan(10_000)
    expect(rows.every((row) => row.length === all[0]!.length)).toBe(true)
    for (const name of ['ingredient', 'property', 'source', 'access', 'licence', 'attribution', 'graph_version'])
      expect(
        rows.filter((row) => row[column(name)] === ''),
        name,
      ).toEqual([])
  })
  test('of one ingredient are those of its record', () => {
    const subject = world.find('xanthan-gum')!
    const rows = readCsv(exportClaims(world, subject)).slice(1)
    expect(rows.map((row) => row[column('claim')])).toEqual([...subject.facts.values()].flat().map(({ id }) => id))
  })
  // The collection is for non-commercial use: single constants are cited as facts, no table of it is given out.
  test('of a collection that may be given singly only stand with their ingredient and in no table of all', () => {
    const restricted = world.subjects.find(({ facts }) =>
      [...facts.values()].flat().some(({ source }) => source.includes('IUPAC-PKA')),
    )!
    expect(exportClaims(world, restricted)).toContain('IUPAC-PKA')
    expect(all.some((row) => row[column('source')]!.includes('IUPAC-PKA'))).toBe(false)
  })
})
