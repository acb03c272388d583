import { isObject } from '#engine/knowledge/expand-claims.ts'

/** Every object inside a record with the path to it. */
export function* objectsIn(value: unknown, path: string): Generator<{ path: string; object: Record<string, unknown> }> {
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) yield* objectsIn(item, `${path}/${index}`)
  } else if (isObject(value)) {
    yield { path, object: value }
    for (const [key, item] of Object.entries(value)) yield* objectsIn(item, `${path}/${key}`)
  }
}
