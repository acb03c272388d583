import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { CORE_SCHEMA, load } from 'js-yaml'
import { idOf } from '#engine/index.ts'
import type { InventoryRow, RawData, RawFile, RawTable } from '#engine/index.ts'
import { tableOf } from './read-table.ts'
import type { Row } from './read-table.ts'

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

/** Bytes of the files of a folder, each read once: they are parsed, and the version is made of them. */
class Files {
  private readonly known = new Map<string, Buffer>()

  constructor(private readonly root: string) {}

  bytes(path: string): Buffer {
    const known = this.known.get(path)
    if (known) return known
    const bytes = readFileSync(join(this.root, path))
    this.known.set(path, bytes)
    return bytes
  }

  /** @throws Error with the file name when a file is not YAML */
  yaml(path: string): RawFile {
    try {
      // Core schema: NO, dates and CAS numbers stay text.
      return { path, data: load(this.bytes(path).toString('utf8'), { schema: CORE_SCHEMA }) }
    } catch (error) {
      throw new Error(`${path}: ${error instanceof Error ? error.message : String(error)}`)
    }
  }

  table(path: string): Row[] {
    return tableOf(path, this.bytes(path))
  }

  hash(paths: readonly string[]): string {
    const hash = createHash('sha256')
    for (const path of paths) hash.update(path).update(this.bytes(path))
    return hash.digest('hex').slice(0, 16)
  }
}

function list(text: string | undefined): string[] {
  if (!text) return []
  return text.includes(';') ? text.split(/\s*;\s*/).filter((part) => part !== '') : [text]
}

const INVENTORY = 'tables/inventory.tsv.gz'

const inventoryOf = (rows: readonly Row[]): InventoryRow[] =>
  rows.map((row) => ({
    id: idOf(row['inci'] ?? ''),
    inci: row['inci'] ?? '',
    cas: list(row['cas']),
    functions: list(row['functions']),
  }))

const SINGLE = [
  'roles.yaml',
  'classes.yaml',
  'properties.yaml',
  'clashes.yaml',
  'relations.yaml',
  'names.yaml',
  'terms.yaml',
]

/** Reads all of graph-data. @param root folder of the data */
export function loadRaw(root: string): RawData {
  const files = new Files(root)
  const folders = {
    ingredients: namesIn(root, 'ingredients', /\.yaml$/),
    limits: namesIn(root, 'limits', /\.yaml$/),
    rules: namesIn(root, 'rules', /\.yaml$/),
    allergens: namesIn(root, 'allergens', /\.yaml$/),
    practice: namesIn(root, 'practice', /\.yaml$/),
    lessons: ['lessons/ideas', 'lessons/roles'].flatMap((folder) => namesIn(root, folder, /\.yaml$/)),
    german: namesIn(root, 'languages/de', /\.yaml$/),
    tables: namesIn(root, 'tables', /\.tsv$/),
    sources: namesIn(root, 'sources', /\.(tsv|csv)$/),
  }
  const all = (paths: readonly string[]): RawFile[] => paths.map((path) => files.yaml(path))
  const tables = (paths: readonly string[]): RawTable[] => paths.map((path) => ({ path, rows: files.table(path) }))
  return {
    version: files.hash([...SINGLE, ...Object.values(folders).flat(), INVENTORY]),
    roles: files.yaml('roles.yaml'),
    classes: files.yaml('classes.yaml'),
    properties: files.yaml('properties.yaml'),
    clashes: files.yaml('clashes.yaml'),
    relations: files.yaml('relations.yaml'),
    names: files.yaml('names.yaml'),
    terms: files.yaml('terms.yaml'),
    ingredients: all(folders.ingredients),
    limits: all(folders.limits),
    rules: all(folders.rules),
    allergens: all(folders.allergens),
    practice: all(folders.practice),
    lessons: all(folders.lessons),
    languages: {
      // Read when the first asks for it: the start should not wait for a language.
      get de() {
        return all(folders.german)
      },
    },
    tables: tables(folders.tables),
    sources: tables(folders.sources),
    inventory: inventoryOf(files.table(INVENTORY)),
  }
}
