import { isObject } from '#engine/knowledge/expand-claims.ts'
import { namesIn } from '#engine/knowledge/selector.ts'
import type { Lint } from './lint.ts'
import { objectsIn } from './walk.ts'

const SINGLE = ['with', 'for']
const MANY = ['any_of', 'with', 'without', 'between']

function selectorsIn(object: Record<string, unknown>): string[] {
  const single = SINGLE.flatMap((key) => (typeof object[key] === 'string' ? [object[key]] : []))
  const many = MANY.flatMap((key) => {
    const value: unknown = object[key]
    return Array.isArray(value) ? value.filter((item): item is string => typeof item === 'string') : []
  })
  return [...single, ...many]
}

/** Guards against relations that point at nothing: a misspelt id would silently never match. */
export const selectorIsKnown: Lint = (raw, { roles, classes, inventory }) => {
  const ids = new Set(raw.ingredients.map(({ data }) => (isObject(data) ? String(data['id']) : '')))
  return [...raw.ingredients, raw.clashes].flatMap(({ path, data }) =>
    [...objectsIn(data, path)].flatMap(({ path: at, object }) =>
      selectorsIn(object).flatMap((selector) => {
        const named = namesIn(selector)
        const missing = [
          ...named.classes.filter((name) => !classes.has(name)),
          ...named.roles.filter((name) => !roles.has(name)),
          ...named.ids.filter((name) => !ids.has(name) && !inventory.has(name)),
        ]
        return missing.map((name) => ({ path: at, message: `${name} in "${selector}" is not known` }))
      }),
    ),
  )
}
