import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { loadRaw } from '#load/load-raw.ts'

const REAL = fileURLToPath(new URL('../../graph-data', import.meta.url))

let root: string
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'understudy-data-'))
  cpSync(REAL, root, { recursive: true, filter: (path) => path === REAL || /graph-data[\\/][^\\/]+\.yaml$/.test(path) })
  for (const folder of ['ingredients', 'tables']) mkdirSync(join(root, folder))
  writeFileSync(join(root, 'tables/inventory.tsv.gz'), gzipSync('inci\tcas\tfunctions\nAQUA\t7732-18-5\tSOLVENT; X\n'))
  writeFileSync(join(root, 'ingredients/aqua.yaml'), 'id: aqua\ninci: AQUA\ncas: ["7732-18-5"]\n')
})
afterEach(() => rmSync(root, { recursive: true }))

test('files come parsed, with their path, by name', () => {
  writeFileSync(join(root, 'ingredients/agar.yaml'), 'id: agar\n')
  writeFileSync(join(root, 'ingredients/notes.txt'), 'not a record')
  const raw = loadRaw(root)
  expect(raw.ingredients).toEqual([
    { path: 'ingredients/agar.yaml', data: { id: 'agar' } },
    { path: 'ingredients/aqua.yaml', data: { id: 'aqua', inci: 'AQUA', cas: ['7732-18-5'] } },
  ])
  expect(raw.inventory).toEqual([{ id: 'aqua', inci: 'AQUA', cas: ['7732-18-5'], functions: ['SOLVENT', 'X'] }])
})

test('a folder that is not there holds nothing', () => {
  expect(loadRaw(root)).toMatchObject({ limits: [], rules: [], allergens: [], sources: [] })
})

test('the version changes with any file and is the same for the same files', () => {
  const before = loadRaw(root).version
  expect(before).toMatch(/^[0-9a-f]{16}$/)
  expect(loadRaw(root).version).toBe(before)
  writeFileSync(join(root, 'ingredients/aqua.yaml'), 'id: aqua\ninci: AQUA\n')
  expect(loadRaw(root).version).not.toBe(before)
})

test('a file that is no YAML is named', () => {
  writeFileSync(join(root, 'ingredients/bad.yaml'), 'id: [unclosed')
  expect(() => loadRaw(root)).toThrow(/^ingredients\/bad\.yaml: /)
})
