import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Lint } from './lint.ts'

const NEEDED = ['seen', 'phase', 'solubility', 'form', 'usual', 'roles']

/** Guards against records of which phase, solubility, form, use or origin is missing: no search can place them. */
export const recordIsComplete: Lint = (raw) =>
  raw.ingredients.flatMap(({ path, data }) => {
    if (!isObject(data)) return []
    const missing = NEEDED.filter((key) => data[key] === undefined || data[key] === null)
    return missing.map((key) => ({ path, message: `${key} is missing` }))
  })
