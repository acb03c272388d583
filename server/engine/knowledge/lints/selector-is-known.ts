import { isObject } from '#engine/knowledge/expand-claims.ts'
import { namesIn } from '#engine/knowledge/selector.ts'
import type { Lint } from './lint.ts'
import { objectsOf } from './walk.ts'

const SINGLE = ['with', 'for']
const MANY = ['any_of', 'with', 'without', 'between']

function selectorsIn(object: Record<string, unknown>): string[] {
  const found: string[] = []
  for (const key of SINGLE) if (typeof object[key] === 'string') found.push(object[key])
  for (const key of MANY) {
    const value: unknown = object[key]
    if (Array.isArray(value)) for (const item of value) if (typeof item === 'string') found.push(item)
  }
  return found
}

/** Guards against relations that point at nothing: a misspelt id would silently never match. */
export const selectorIsKnown: Lint = (raw, { roles, classes, inventory }) => {
  const ids = new Set(raw.ingredients.map(({ data }) => (isObject(data) ? String(data['id']) : '')))
  const unknown = new Map<string, readonly string[]>() // the same few selectors stand in many records
  const unknownIn = (selector: string): readonly string[] => {
    const known = unknown.get(selector)
    if (known) return known
    const named = namesIn(selector)
    const missing = [
      ...named.classes.filter((name) => !classes.has(name)),
      ...named.roles.filter((name) => !roles.has(name)),
      ...named.ids.filter((name) => !ids.has(name) && !inventory.has(name)),
    ]
    unknown.set(selector, missing)
    return missing
  }
  return [...raw.ingredients, raw.clashes].flatMap((file) =>
    objectsOf(file).flatMap((found) =>
      selectorsIn(found.object).flatMap((selector) =>
        unknownIn(selector).map((name) => ({ path: found.path, message: `${name} in "${selector}" is not known` })),
      ),
    ),
  )
}
