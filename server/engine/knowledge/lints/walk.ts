import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { RawData, RawFile } from '#engine/knowledge/raw.ts'
import type { Problem } from '#engine/model/records.ts'

export interface Found {
  /** file and path inside it, put together only where a fault is told */
  path: string
  object: Record<string, unknown>
}

/** Where an object hangs: told as a path only when somebody asks, for most never do. */
class Place implements Found {
  constructor(
    readonly object: Record<string, unknown>,
    private readonly above: Place | string,
    private readonly key: string,
  ) {}

  get path(): string {
    const above = typeof this.above === 'string' ? this.above : this.above.path
    return this.key === '' ? above : `${above}/${this.key}`
  }
}

function collect(value: unknown, above: Place | string, key: string, found: Place[]): void {
  if (Array.isArray(value)) {
    for (let at = 0; at < value.length; at++) {
      const item: unknown = value[at]
      if (typeof item === 'object' && item !== null)
        collect(item, above, key === '' ? String(at) : `${key}/${at}`, found)
    }
  } else if (isObject(value)) {
    const place = new Place(value, above, key)
    found.push(place)
    for (const inner in value) {
      const item = value[inner]
      if (typeof item === 'object' && item !== null) collect(item, place, inner, found)
    }
  }
}

/** Every object inside a record with the path to it. */
export function objectsIn(value: unknown, path: string): Found[] {
  const found: Place[] = []
  collect(value, path, '', found)
  return found
}

const memo = new WeakMap<RawFile, readonly Found[]>()

/** Every object of a file. Half of the lints ask, so each file is walked once. */
export function objectsOf(file: RawFile): readonly Found[] {
  const known = memo.get(file)
  if (known) return known
  const found = objectsIn(file.data, file.path)
  memo.set(file, found)
  return found
}

type Report = (message: string, key?: string) => void

/** Faults of every object of some files; most objects have none, so nothing is made for them. */
export function problemsIn(
  files: readonly RawFile[],
  visit: (object: Record<string, unknown>, report: Report) => void,
): Problem[] {
  const problems: Problem[] = []
  let at: Found | undefined
  const report: Report = (message, key) =>
    problems.push({ path: key === undefined ? (at?.path ?? '') : `${at?.path}/${key}`, message })
  for (const file of files) {
    for (const found of objectsOf(file)) {
      at = found
      visit(found.object, report)
    }
  }
  return problems
}

/** Files in which values and relations are written. */
export const writtenFiles = (raw: RawData): RawFile[] => [
  ...raw.ingredients,
  ...raw.limits,
  raw.clashes,
  raw.classes,
  raw.roles,
]
