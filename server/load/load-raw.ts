import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { idOf } from '#engine/index.ts'
import type { InventoryRow, RawData, RawFile, RawTable } from '#engine/index.ts'
import { NOT_PLAIN, plainYaml } from './plain-yaml.ts'
import { readTable } from './read-table.ts'

/** Files of a folder below the root that end as given, by name. A folder that is not there holds none. */
function namesIn(root: string, folder: string, end: RegExp): string[] {
  try {
    return readdirSync(join(root, folder))
      .filter((name) => end.test(name))
      .sort()
      .map((name) => `${folder}/${name}`)
  } catch {
    return []
  }
}

/** @throws Error with the file name when a file is not YAML */
function readYaml(root: string, path: string): RawFile {
  try {
    const text = readFileSync(join(root, path), 'utf8')
    const data = plainYaml(text)
    return { path, data: data === NOT_PLAIN ? (parse(text) as unknown) : data }
  } catch (error) {
    throw new Error(`${path}: ${error instanceof Error ? error.message : String(error)}`)
  }
}

const list = (text: string | undefined): string[] => (text ? text.split(/\s*;\s*/).filter((part) => part !== '') : [])

function readInventory(root: string): InventoryRow[] {
  return readTable(join(root, 'tables/inventory.tsv.gz')).map((row) => ({
    id: idOf(row['inci'] ?? ''),
    inci: row['inci'] ?? '',
    cas: list(row['cas']),
    functions: list(row['functions']),
  }))
}

function hashOf(root: string, paths: readonly string[]): string {
  const hash = createHash('sha256')
  for (const path of paths) hash.update(path).update(readFileSync(join(root, path)))
  return hash.digest('hex').slice(0, 16)
}

/** Reads all of graph-data. @param root folder of the data */
export function loadRaw(root: string): RawData {
  const folders = {
    ingredients: namesIn(root, 'ingredients', /\.yaml$/),
    limits: namesIn(root, 'limits', /\.yaml$/),
    rules: namesIn(root, 'rules', /\.yaml$/),
    allergens: namesIn(root, 'allergens', /\.yaml$/),
    tables: namesIn(root, 'tables', /\.tsv$/),
    sources: namesIn(root, 'sources', /\.(tsv|csv)$/),
  }
  const single = [
    'roles.yaml',
    'classes.yaml',
    'properties.yaml',
    'clashes.yaml',
    'relations.yaml',
    'names.yaml',
  ] as const
  const [roles, classes, properties, clashes, relations, names] = single.map((path) => readYaml(root, path)) as [
    RawFile,
    RawFile,
    RawFile,
    RawFile,
    RawFile,
    RawFile,
  ]
  const all = (paths: readonly string[]): RawFile[] => paths.map((path) => readYaml(root, path))
  const tables = (paths: readonly string[]): RawTable[] =>
    paths.map((path) => ({ path, rows: readTable(join(root, path)) }))
  return {
    version: hashOf(root, [...single, ...Object.values(folders).flat(), 'tables/inventory.tsv.gz']),
    roles,
    classes,
    properties,
    clashes,
    relations,
    names,
    ingredients: all(folders.ingredients),
    limits: all(folders.limits),
    rules: all(folders.rules),
    allergens: all(folders.allergens),
    tables: tables(folders.tables),
    sources: tables(folders.sources),
    inventory: readInventory(root),
  }
}
