import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Lint } from './lint.ts'

const TOLERANCE_PERCENT = 0.5

/** Guards against a blend whose parts do not make up the whole: every re-dosing would inherit the error. */
export const blendAddsUp: Lint = (raw) =>
  raw.ingredients.flatMap(({ path, data }) => {
    const parts = isObject(data) && Array.isArray(data['made_of']) ? data['made_of'].filter(isObject) : []
    if (parts.length === 0) return []
    const total_percent = parts.reduce((sum, part) => sum + Number(part['share_percent']), 0)
    if (Math.abs(total_percent - 100) <= TOLERANCE_PERCENT) return []
    return [{ path: `${path}/made_of`, message: `parts add up to ${total_percent} %, expected 100` }]
  })
