import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { RawData, RawFile } from '#engine/knowledge/raw.ts'

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
    value.forEach((item: unknown, at) => collect(item, above, key === '' ? String(at) : `${key}/${at}`, found))
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

/** Files in which values and relations are written. */
export const writtenFiles = (raw: RawData): RawFile[] => [...raw.ingredients, ...raw.limits, raw.clashes]
