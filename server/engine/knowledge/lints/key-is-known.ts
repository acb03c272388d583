import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { RawFile } from '#engine/knowledge/raw.ts'
import type { Problem } from '#engine/model/records.ts'
import type { Lint } from './lint.ts'
import { CLASHES, CLASSES, INGREDIENT, LIMIT, PROPERTIES, ROLES, RULE } from './keys.ts'
import type { Shape } from './keys.ts'

function strangeKeys(value: unknown, shape: Shape | true, path: string): Problem[] {
  if (shape === true) return []
  if (Array.isArray(value)) return value.flatMap((item, at) => strangeKeys(item, shape, `${path}/${at}`))
  if (!isObject(value)) return []
  return Object.entries(value).flatMap(([key, item]) => {
    const inner = shape[key] ?? shape['*']
    if (inner !== undefined) return strangeKeys(item, inner, `${path}/${key}`)
    return [
      { path: `${path}/${key}`, message: `the key "${key}" means nothing here; a text with a comma needs quotes` },
    ]
  })
}

const inFile = (shape: Shape) => (file: RawFile) => strangeKeys(file.data, shape, file.path)

/** Guards against keys that nothing reads: a misspelt key, or half a sentence that YAML took for one. */
export const keyIsKnown: Lint = (raw) => [
  ...raw.ingredients.flatMap(inFile(INGREDIENT)),
  ...raw.limits.flatMap(inFile(LIMIT)),
  ...raw.rules.flatMap(inFile(RULE)),
  ...inFile(ROLES)(raw.roles),
  ...inFile(CLASSES)(raw.classes),
  ...inFile(PROPERTIES)(raw.properties),
  ...inFile(CLASHES)(raw.clashes),
]
