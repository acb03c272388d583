import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { readTable } from '#load/read-table.ts'

let folder: string
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'understudy-load-'))
})
afterAll(() => rmSync(folder, { recursive: true }))

function tableOf(name: string, content: string | Buffer) {
  const path = join(folder, name)
  writeFileSync(path, content)
  return readTable(path)
}

test('cells stand under their column heads', () => {
  expect(tableOf('a.tsv', 'id\ttitle\nS-1\tA handbook\nS-2\t\n')).toEqual([
    { id: 'S-1', title: 'A handbook' },
    { id: 'S-2', title: '' },
  ])
})

test('a row that stops early has empty cells, not missing ones', () => {
  expect(tableOf('b.tsv', 'id\ttitle\tnote\nS-1\tA\n')).toEqual([{ id: 'S-1', title: 'A', note: '' }])
})

test('packed tables are unpacked', () => {
  expect(tableOf('c.tsv.gz', gzipSync('inci\nAQUA\n'))).toEqual([{ inci: 'AQUA' }])
})

test('a quoted cell holds commas, quotes and line ends', () => {
  const text = 'id,title\r\nS-1,"A, ""B""\nand C"\r\nS-2,plain\r\n'
  expect(tableOf('d.csv', text)).toEqual([
    { id: 'S-1', title: 'A, "B"\nand C' },
    { id: 'S-2', title: 'plain' },
  ])
})

test('a table that is not there is an error', () => {
  expect(() => readTable(join(folder, 'gone.tsv'))).toThrow(/gone\.tsv/)
})
