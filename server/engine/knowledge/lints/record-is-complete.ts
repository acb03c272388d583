import { isObject } from '#engine/knowledge/expand-claims.ts'
import { deciding } from './facts.ts'
import type { Lint } from './lint.ts'

/** Written in every record. */
const WRITTEN = ['seen', 'usual', 'roles']
/** Written, or follows from class, role or other values. */
const KNOWN = ['phase', 'solubility', 'form']

/** Guards against records of which phase, solubility, form, use or origin is missing: no search can place them. */
export const recordIsComplete: Lint = (raw, { ingredients }) =>
  raw.ingredients.flatMap(({ path, data }) => {
    if (!isObject(data)) return []
    const record = ingredients.get(String(data['id']))
    const missing = [
      ...WRITTEN.filter((key) => data[key] === undefined || data[key] === null),
      ...KNOWN.filter((property) => !record || !deciding(record, property)),
    ]
    return missing.map((key) => ({ path, message: `${key} is missing` }))
  })
