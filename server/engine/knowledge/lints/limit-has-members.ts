import { isObject } from '#engine/knowledge/expand-claims.ts'
import type { Lint } from './lint.ts'

/** Points out legal entries that count nothing: they look like a guard and never bite. Some laws are about no substance at all; those are excused. */
export const limitHasMembers: Lint = (raw) =>
  raw.limits.flatMap(({ path, data }) => {
    if (!isObject(data)) return []
    const count = isObject(data['members']) ? Object.keys(data['members']).length : 0
    const classes = Array.isArray(data['member_classes']) ? data['member_classes'].length : 0
    if (count + classes > 0) return []
    return [{ path: `${path}/members`, message: 'the entry counts nothing' }]
  })
