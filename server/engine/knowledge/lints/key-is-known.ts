import type { RawFile } from '#engine/knowledge/raw.ts'
import type { Problem } from '#engine/model/records.ts'
import type { Lint } from './lint.ts'
import { CLASHES, CLASSES, INGREDIENT, LIMIT, PROPERTIES, ROLES, RULE } from './keys.ts'
import type { Shape } from './keys.ts'

function strangeKeys(value: unknown, shape: Shape | true, path: string): Problem[] {
  if (shape === true || typeof value !== 'object' || value === null) return []
  if (Array.isArray(value)) return value.flatMap((item, at) => strangeKeys(item, shape, `${path}/${at}`))
  const problems: Problem[] = []
  for (const [key, item] of Object.entries(value)) {
    const inner = shape[key] ?? shape['*']
    if (inner === undefined)
      problems.push({
        path: `${path}/${key}`,
        message: `the key "${key}" means nothing here; a text with a comma needs quotes`,
      })
    else if (inner !== true && typeof item === 'object') problems.push(...strangeKeys(item, inner, `${path}/${key}`))
  }
  return problems
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
